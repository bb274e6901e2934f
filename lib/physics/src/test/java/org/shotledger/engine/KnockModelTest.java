package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.shotledger.curve.Bracket;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Blend;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Octane;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.fuel.Part;

class KnockModelTest {
    private static final Fuel PETROL_98 =
            Fuels.gasoline("RON 98", 2.1, 720, 44e6, Optional.of(new Octane(98, 90)), "paraffinic test fuel");
    private static final Fuel E30_98 = Fuels.ethanolBlend(
            0.3, 0, Fuels.gasoline("base", 2.0, 720, 44e6, Optional.of(new Octane(88, 82)), "base of the test fuel"));

    /** Slopes {@code d ln CR / d ln p} of the published table, by fuel, first against last point. */
    private static Map<String, Double> publishedSlopes() {
        Map<String, double[]> first = new TreeMap<>();
        Map<String, Double> slopes = new TreeMap<>();
        for (String[] c : ResearchEngine.rows("knock-limited-compression.csv")) {
            double[] now = {Double.parseDouble(c[4]), Double.parseDouble(c[5])};
            double[] from = first.putIfAbsent(c[0], now);
            if (from != null) {
                slopes.put(c[0], Math.log(now[1] / from[1]) / Math.log(now[0] / from[0]));
            }
        }
        return slopes;
    }

    /** SAE 2023-01-0251, ten fuels, lambda 1.0, intake air 52 C: knock-limited compression ratio against intake pressure. */
    @Test
    void the_knock_limited_compression_ratio_falls_with_boost_as_measured() {
        Map<String, Double> published = publishedSlopes();
        assertEquals(10, published.size());
        double least = published.values().stream().mapToDouble(d -> d).min().orElseThrow();
        double most = published.values().stream().mapToDouble(d -> d).max().orElseThrow();
        double slope = slope(KnockModel.BEST);
        assertTrue(least <= slope && slope <= most, slope + " against " + published);
        assertTrue(slope(KnockModel.HIGH) < least, "the unsafe end must knock sooner than measured");
    }

    private static double slope(KnockModel model) {
        double base = ResearchEngine.knock(model, PETROL_98, 7.6, 101.3e3, 325, 1);
        double ratio =
                Bracket.root(r -> ResearchEngine.knock(model, PETROL_98, r, 150e3, 325, 1) - base, 5.05, 9, 1e-4);
        return Math.log(ratio / 7.6) / Math.log(150 / 101.3);
    }

    /** Kolodziej and Wallner 2017: knock is strongest at lambda 0.89 for petrol, 0.93 for 30 % ethanol, weaker on both sides. */
    @Test
    void knock_is_strongest_a_little_rich() {
        assertEquals(0.89, strongest(PETROL_98), 0.03);
        assertEquals(0.93, strongest(E30_98), 0.04);
        for (Fuel fuel : List.of(PETROL_98, E30_98)) {
            double peak = ResearchEngine.knock(KnockModel.BEST, fuel, 7.7, 101.3e3, 315, strongest(fuel));
            assertTrue(ResearchEngine.knock(KnockModel.BEST, fuel, 7.7, 101.3e3, 315, 0.75) < 0.99 * peak);
            assertTrue(ResearchEngine.knock(KnockModel.BEST, fuel, 7.7, 101.3e3, 315, 1.05) < 0.95 * peak);
        }
    }

    private static double strongest(Fuel fuel) {
        double best = 0;
        double at = 0;
        for (double lambda = 0.75; lambda < 1.1; lambda += 0.01) {
            double index = ResearchEngine.knock(KnockModel.BEST, fuel, 7.7, 101.3e3, 315, lambda);
            if (index > best) {
                best = index;
                at = lambda;
            }
        }
        return at;
    }

    /** The published table itself: the lambda of the strongest reading of each fuel with a full sweep. */
    @Test
    void the_measured_peak_lies_where_the_paper_says() {
        Map<String, double[]> peak = new TreeMap<>();
        for (String[] c : ResearchEngine.rows("knock-over-lambda.csv")) {
            double[] now = {Double.parseDouble(c[1]), Double.parseDouble(c[2])};
            peak.merge(c[0], now, (a, b) -> a[1] >= b[1] ? a : b);
        }
        assertEquals(0.89, peak.get("RON98Alk")[0], 0.01);
        assertEquals(0.92, peak.get("RON98E30")[0], 0.02);
    }

    /** Measured drop behind the carburettor over that of complete evaporation: the share that the best estimate credits. */
    @Test
    void the_credited_cooling_is_the_measured_one() {
        double sum = 0;
        int count = 0;
        for (String[] c : ResearchEngine.rows("charge-cooling.csv")) {
            double heat = Double.parseDouble(c[4]) * 1e3;
            double airFuel = Double.parseDouble(c[6]) * Double.parseDouble(c[7]);
            // Air and fuel vapour together, 1.005 and 1.7 kJ/(kg K).
            double full = heat / airFuel / (1005 + 1700 / airFuel);
            sum += Double.parseDouble(c[10]) / full;
            count++;
        }
        assertEquals(KnockModel.BEST.cooling(), sum / count, 0.06);
        assertTrue(KnockModel.HIGH.cooling() < sum / count && sum / count < KnockModel.LOW.cooling());
    }

    private record Shot(double index, double retard) {}

    private static Shot shot(KnockModel model, Fuel fuel, double rpm, double nitrous, double base) {
        Engine engine = CylinderTest.ENGINE;
        double lambda = 0.8;
        var supplied = new Intake.FuelSupplied(fuel, 298.15, 0.3);
        double extra = nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / (lambda * fuel.oxygenDemand());
        double enthalpy = NitrousOxide.saturatedLiquid(290).enthalpy();
        Intake intake = new Intake(2e5, 320, 0.008, nitrous, enthalpy, supplied, lambda, supplied, extra);
        Charge charge = ChargeMixing.mix(intake, engine.breathedVolume(rpm));
        var inside = new TrappedCharge.Inside(2.4e5, 1100, 0);
        TrappedCharge trapped = TrappedCharge.reacting(engine, rpm, charge, inside);
        CycleInput input = trapped.cycle(rpm, BurnPhasing.USUAL.burning(0, nitrous > 0 ? 0.9 : 1), 450, 2.4e5, 95);
        EndGas gas = EndGas.of(intake, charge, trapped);
        Cylinder cylinder = Cylinder.of(engine);
        double index = model.index(cylinder, gas, input);
        return new Shot(index, base > 0 ? model.retard(cylinder, gas, input, base) : Double.NaN);
    }

    /** Order that octane data and the trade agree on: petrol, E30, E85, methanol. */
    @Test
    void fuels_come_out_in_order() {
        for (KnockModel model : List.of(KnockModel.LOW, KnockModel.BEST)) {
            double before = Double.POSITIVE_INFINITY;
            for (Fuel fuel :
                    List.of(Fuels.GASOLINE, Fuels.ethanolBlend(0.3), Fuels.ethanolBlend(0.85), Fuels.METHANOL)) {
                double index = shot(model, fuel, 6000, 0, 0).index;
                assertTrue(index < 0.97 * before, fuel.name() + " " + index + " after " + before);
                before = index;
            }
        }
    }

    /** At an unchanged spark a shot never makes knock less likely than the best estimate of the same engine without it. */
    @Test
    void nitrous_oxide_raises_knock_and_asks_for_retard() {
        for (double rpm : new double[] {3600, 6000}) {
            double base = shot(KnockModel.BEST, Fuels.GASOLINE, rpm, 0, 0).index;
            double before = 0;
            for (double nitrous : new double[] {0.02, 0.04, 0.08}) {
                Shot now = shot(KnockModel.BEST, Fuels.GASOLINE, rpm, nitrous, base);
                assertTrue(now.index > base && now.retard > before, now + " at " + nitrous);
                before = now.retard;
                assertTrue(shot(
                                        KnockModel.HIGH,
                                        Fuels.GASOLINE,
                                        rpm,
                                        nitrous,
                                        shot(KnockModel.HIGH, Fuels.GASOLINE, rpm, 0, 0).index)
                                .retard
                        > now.retard);
            }
        }
    }

    /** 1 to 2 degrees for each 50 hp: common practice, no source. 0.04 kg/s gives near 100 hp, 0.08 near 200. */
    @Test
    void the_retard_on_petrol_has_the_trade_s_size() {
        double base = shot(KnockModel.BEST, Fuels.GASOLINE, 6000, 0, 0).index;
        double hundred = shot(KnockModel.BEST, Fuels.GASOLINE, 6000, 0.04, base).retard;
        double twoHundred = shot(KnockModel.BEST, Fuels.GASOLINE, 6000, 0.08, base).retard;
        assertTrue(hundred >= 2 && hundred <= 6, "100 hp: " + hundred);
        assertTrue(twoHundred >= 4 && twoHundred <= 10, "200 hp: " + twoHundred);
    }

    /**
     * A published blend (Kolodziej and Wallner 2017, table 5): 70 % of a reference fuel of octane 71 and 30 % ethanol by volume
     * has RON 97.8. Blending by moles must not promise more, and not less than a test fuel's usual bonus of ten numbers.
     */
    @Test
    void octane_by_moles_stays_below_a_measured_blend() {
        Fuel blend = Blend.byVolume(
                "71 with ethanol",
                List.of(
                        new Part(Fuels.ISO_OCTANE, 0.7 * 0.71),
                        new Part(Fuels.N_HEPTANE, 0.7 * 0.29),
                        new Part(Fuels.ETHANOL, 0.3)));
        double octane = blend.octane().orElseThrow().research();
        assertTrue(octane < 97.8 && octane > 87.8, "octane " + octane);
    }

    /** Two streams are one blend: the same moles give the same octane number. */
    @Test
    void two_streams_count_as_their_blend() {
        double ethanol = 0.01;
        double petrol = 0.02;
        Octane streams = Octane.of(new Mixture(1, 0, 0, Fuels.GASOLINE, petrol, Fuels.ETHANOL, ethanol))
                .orElseThrow();
        double volume = ethanol / Fuels.ETHANOL.density() + petrol / Fuels.GASOLINE.density();
        double share = ethanol / Fuels.ETHANOL.density() / volume;
        Octane blend = Fuels.ethanolBlend(share).octane().orElseThrow();
        assertEquals(blend.research(), streams.research(), 1e-9);
    }
}
