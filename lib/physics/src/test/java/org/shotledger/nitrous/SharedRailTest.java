package org.shotledger.nitrous;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;

/**
 * The rail that injectors and nitrous system share. Both pass orifices into one plenum, so both go with the root of the drop (Bernoulli,
 * any textbook of fluid mechanics); with a pump whose flow falls in a straight line over pressure the rail then solves a quadratic.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SharedRailTest {
    private static final double AMBIENT = 1e5;
    private static final double PLENUM = 1.6e5;
    private static final double REGULATED = 4.6e5;
    private static final double DENSITY = 745;
    private static final Pressures AT = new Pressures(AMBIENT, PLENUM, PLENUM);
    /** Flow of the pump without pressure, m3/s, and the pressure at which it gives none, Pa. */
    private static final double FREE = 1e-4;

    private static final double SHUT_OFF = 8e5;

    private static SharedRail rail(double free) {
        Curve flow = Curve.of("pump flow", new double[] {0, SHUT_OFF}, new double[] {free, 0});
        Curve current = Curve.of("pump current", new double[] {0, SHUT_OFF}, new double[] {5, 12});
        Pump pump = new Pump("pump", List.of(new Pump.Line(8, flow, current), new Pump.Line(16, flow, current)));
        return new SharedRail(
                new PumpGroup("one", List.of(pump), PumpGroup.Arrangement.PARALLEL, 0), REGULATED, DENSITY, 13.5);
    }

    private static FuelFlow offered(double flow) {
        return new FuelFlow(flow, REGULATED, REGULATED - 0.3e5, Double.POSITIVE_INFINITY, false);
    }

    @Test
    void a_pump_that_gives_both_holds_the_rail() {
        double capacity = DENSITY * FREE * (1 - (REGULATED - AMBIENT) / SHUT_OFF);
        FuelFlow settled = rail(FREE).settled(0.7 * capacity, offered(0.25 * capacity), AT);
        assertFalse(settled.pumpLimited());
        assertEquals(REGULATED, settled.railPressure());
        assertEquals(0.25 * capacity, settled.massFlow());
        assertEquals(0.3 * capacity, settled.pumpCapacity(), 1e-9 * capacity);
    }

    @Test
    void a_pump_that_gives_either_but_not_both_takes_from_both() {
        double capacity = DENSITY * FREE * (1 - (REGULATED - AMBIENT) / SHUT_OFF);
        double injectors = 0.9 * capacity;
        double shot = 0.6 * capacity;
        FuelFlow settled = rail(FREE).settled(injectors, offered(shot), AT);
        // (m_i + m_k) sqrt(d / d0) = rho q0 (1 - (d + p_m - p_a) / p_0), a quadratic in sqrt(d) with d = p - p_m
        double a = DENSITY * FREE / SHUT_OFF;
        double b = (injectors + shot) / Math.sqrt(REGULATED - PLENUM);
        double c = -DENSITY * FREE * (1 - (PLENUM - AMBIENT) / SHUT_OFF);
        double root = (-b + Math.sqrt(b * b - 4 * a * c)) / (2 * a);
        assertTrue(settled.pumpLimited());
        assertEquals(PLENUM + root * root, settled.railPressure(), 1e-3);
        double share = root / Math.sqrt(REGULATED - PLENUM);
        assertTrue(share < 0.95, "share " + share);
        assertEquals(share * shot, settled.massFlow(), 1e-9 * shot);
        assertEquals(share, SharedRail.share(settled.railPressure(), REGULATED, PLENUM), 1e-9);
        // the drop over the solenoid goes with the square of the flow
        assertEquals(share * share * 0.3e5, settled.railPressure() - settled.jetPressure(), 1e-3);
    }

    @Test
    void what_has_settled_stays_where_it_is() {
        SplittableRandom random = new SplittableRandom(15);
        for (int i = 0; i < 500; i++) {
            SharedRail rail = rail(random.nextDouble(2e-5, 2e-4));
            double injectors = random.nextDouble(0, 0.06);
            FuelFlow offered = offered(random.nextDouble(1e-4, 0.03));
            FuelFlow once = rail.settled(injectors, offered, AT);
            FuelFlow again = rail.settled(injectors, once, AT);
            assertEquals(once.railPressure(), again.railPressure(), 1e-3);
            assertEquals(once.massFlow(), again.massFlow(), 1e-9);
            double drawn = injectors * SharedRail.share(once.railPressure(), REGULATED, PLENUM) + once.massFlow();
            assertTrue(drawn <= rail.capacity(once.railPressure(), AMBIENT) * (1 + 1e-9), "more than the pumps give");
            FuelFlow weaker = rail(0.8
                            * rail.pumps().pumps().get(0).lines().get(0).flow().at(0))
                    .settled(injectors, offered, AT);
            assertTrue(weaker.massFlow() <= once.massFlow() && weaker.railPressure() <= once.railPressure());
        }
    }

    @Test
    void a_regulator_that_holds_less_takes_from_both() {
        FuelFlow low = offered(0.01).at(PLENUM + 0.25 * (REGULATED - PLENUM), PLENUM);
        assertEquals(0.005, low.massFlow(), 1e-12);
        assertEquals(0.5, SharedRail.share(low.railPressure(), REGULATED, PLENUM), 1e-12);
        assertEquals(0, SharedRail.share(PLENUM - 1, REGULATED, PLENUM));
        assertEquals(0, offered(0.01).at(PLENUM - 1, PLENUM).massFlow());
    }
}
