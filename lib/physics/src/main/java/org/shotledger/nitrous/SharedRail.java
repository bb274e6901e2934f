package org.shotledger.nitrous;

import org.shotledger.curve.Bracket;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.supply.PumpGroup;
import org.shotledger.units.Require;

/**
 * The main rail while it feeds the injectors and the nitrous system: one pressure, one pump limit.
 *
 * <p>The injectors are held open for the time their table has for the regulated pressure, and both streams pass holes into the plenum,
 * so both go with the root of the pressure drop (Bernoulli):
 * {@code m(p) = m(p_0) sqrt((p - p_m)/(p_0 - p_m))}. The rail stands where the regulator holds it, or lower, where the pumps give
 * {@code m_injectors(p) + m_nitrous(p)}. The controller is taken not to lengthen its openings for a fallen rail: one that does keeps the
 * engine's own fuel right for a while, the nitrous fuel never.
 *
 * @param pumps the main pumps
 * @param regulated pressure for which the injectors' times are made, Pa absolute, above the plenum
 * @param density of the fuel, kg/m3
 * @param voltage supply voltage at the pumps' wiring, V
 */
public record SharedRail(PumpGroup pumps, double regulated, double density, double voltage) {
    public SharedRail {
        Require.given("main pumps", pumps);
        Require.positive("regulated rail pressure", regulated, "Pa");
        Require.positive("fuel density", density, "kg/m3");
    }

    /**
     * Share of the fuel asked for that the injectors pass.
     *
     * @param rail pressure at the rail, Pa absolute
     * @param regulated pressure for which the injectors' times are made, Pa absolute, above the plenum
     * @param plenum plenum pressure, Pa absolute
     * @return 1 at the regulated pressure, 0 at or below the plenum's
     */
    public static double share(double rail, double regulated, double plenum) {
        return Math.sqrt(Math.max(0, rail - plenum) / (regulated - plenum));
    }

    /**
     * What the pumps can give at a pressure.
     *
     * @param rail Pa absolute
     * @param ambient Pa absolute
     * @return kg/s, for both streams together
     */
    public double capacity(double rail, double ambient) {
        return density * pumps.capacity(rail - ambient, voltage);
    }

    /**
     * The nitrous fuel with the rail where the pumps hold it.
     *
     * @param injectors fuel the injectors pass at the regulated pressure, kg/s, not negative
     * @param offered nitrous fuel at the pressure the regulator would hold, kg/s and Pa absolute
     * @param at the pressures around both; the nozzle stands at plenum pressure
     * @return the nitrous fuel at the pressure there is; {@code pumpCapacity} is what the injectors leave of the pumps at the offered pressure
     */
    public FuelFlow settled(double injectors, FuelFlow offered, Pressures at) {
        double rail = offered.railPressure();
        double left = Math.max(0, capacity(rail, at.ambient()) - injectors * share(rail, regulated, at.plenum()));
        if (offered.massFlow() <= left) {
            return new FuelFlow(offered.massFlow(), rail, offered.jetPressure(), left, false);
        }
        double held = Bracket.root(
                p -> injectors * share(p, regulated, at.plenum())
                        + offered.at(p, at.nozzle()).massFlow()
                        - capacity(p, at.ambient()),
                at.plenum(),
                rail,
                FuelCircuit.SETTLED);
        FuelFlow settled = offered.at(held, at.nozzle());
        return new FuelFlow(settled.massFlow(), held, settled.jetPressure(), left, true);
    }
}
