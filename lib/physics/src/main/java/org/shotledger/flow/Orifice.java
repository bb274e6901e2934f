package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A hole inside the path: solenoid seat, valve bore, filter throat, restrictor.
 *
 * <p>Flow by the law of {@link NitrousJet}; behind it the stream spreads to the line and regains pressure by the momentum
 * balance {@code p3 - p2 = G3 (u2 - u3)} (Borda-Carnot).
 *
 * @param hole the hole
 * @param lineBore bore of the passage behind, m; zero or the hole's bore for no regain
 */
public record Orifice(NitrousJet hole, double lineBore) implements FeedElement {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when the line bore is negative
     */
    public Orifice {
        Checks.notNegative("Orifice " + hole.name(), "line bore", lineBore, "m");
    }

    /**
     * A solenoid seat: the flow turns around a plunger on its way in, so edge and length count as not known.
     *
     * @param name name in reports
     * @param bore diameter of the seat's hole, m
     * @param lineBore bore of the passage behind, m
     * @return the part
     */
    public static Orifice solenoid(String name, double bore, double lineBore) {
        return new Orifice(new NitrousJet(name, bore, Double.NaN, Edge.UNKNOWN, Double.NaN), lineBore);
    }

    @Override
    public String name() {
        return hole.name();
    }

    @Override
    public double volume() {
        return hole.volume();
    }

    @Override
    public double outletPressure(FluidState inlet, double massFlow) {
        double throat = hole.outletPressure(inlet, massFlow);
        if (Double.isNaN(throat) || lineBore <= hole.bore() || massFlow == 0) {
            return throat;
        }
        double lineFlux = massFlow / (Math.PI / 4 * lineBore * lineBore);
        // the contracted jet is as narrow as its flux says: G_jet = ideal flux = sqrt(2 (p0 - p2) / v) nearly
        double volume = new Stream().to(throat, inlet.enthalpy()).volume();
        double jetFlux = Math.sqrt(2 * (inlet.pressure() - throat) / volume);
        // at most half of what was lost, where the line's flux is half of the jet's
        return throat + lineFlux * volume * Math.max(0, jetFlux - lineFlux);
    }

    @Override
    public double shortfall(FluidState inlet, double massFlow) {
        return hole.shortfall(inlet, massFlow);
    }

    @Override
    public String blocked() {
        return hole.bore() > 0 ? "" : name() + " has no hole.";
    }
}
