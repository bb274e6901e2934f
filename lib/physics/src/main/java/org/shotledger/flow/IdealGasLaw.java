package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * Vapour as an ideal gas with the heat capacities it has at low pressure: {@link IsentropicGas} with the inlet's own density.
 *
 * <p>Range: vapour. Where liquid or bubbles stand before the hole the default law acts, and the result names it: a path that was not
 * purged passes vapour first and liquid after. Known error: at bottle pressure 15 to 40 % below equilibrium flow, since
 * the real vapour is heavier and condenses on the way; the band is widened by that.
 */
record IdealGasLaw() implements OrificeLaw {
    /** Ratio of heat capacities of nitrous oxide at 25 degC and low pressure (handbook value). */
    private static final double GAMMA = 1.275;

    /** How much more the real vapour may pass, see the known error. */
    private static final double REAL_GAS = 1.3;

    @Override
    public String name() {
        return "ideal gas";
    }

    @Override
    public OrificeLaw acting(FluidState inlet) {
        return Inlet.of(inlet) == Inlet.VAPOUR ? this : OrificeLaw.CLASS;
    }

    @Override
    public String source(NitrousJet hole, FluidState inlet) {
        if (acting(inlet) != this) {
            return acting(inlet).source(hole, inlet);
        }
        return "NACA Report 1135 (1953)"
                + (hole.hasCoefficient() ? "; coefficient stated" : "; coefficient by class of hole");
    }

    @Override
    public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
        if (acting(inlet) != this) {
            return acting(inlet).curve(hole, inlet);
        }
        double coefficient =
                hole.hasCoefficient() ? hole.dischargeCoefficient() : ClassFit.MEASURED.vapour(hole.edge());
        double pressure = inlet.pressure();
        double density = inlet.density();
        return new OrificeCurve(
                pressure,
                coefficient * hole.area(),
                IsentropicGas.criticalRatio(GAMMA) * pressure,
                behind -> IsentropicGas.massFlux(pressure, density, GAMMA, behind));
    }

    @Override
    public FlowBand band(NitrousJet hole, FluidState inlet) {
        if (acting(inlet) != this) {
            return acting(inlet).band(hole, inlet);
        }
        FlowBand band = new HoleClass(hole.edge(), Inlet.VAPOUR).band();
        return new FlowBand(band.low(), band.best(), REAL_GAS * band.high());
    }
}
