package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * Vapour as an ideal gas with the heat capacities it has at low pressure: {@link IsentropicGas} with the inlet's own density.
 *
 * <p>Range: vapour; liquid and mixtures are refused. Known error: at bottle pressure 15 to 40 % below equilibrium flow, since
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
    public String source(NitrousJet hole, FluidState inlet) {
        return "NACA Report 1135 (1953)"
                + (hole.hasCoefficient() ? "; coefficient stated" : "; coefficient by class of hole");
    }

    @Override
    public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
        if (Inlet.of(inlet) != Inlet.VAPOUR) {
            throw new IllegalArgumentException("The ideal-gas law is set for " + hole.name() + ", but "
                    + Inlet.of(inlet).words() + " stands before it; it covers vapour only: choose the class law.");
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
        FlowBand band = new HoleClass(hole.edge(), Inlet.VAPOUR).band();
        return new FlowBand(band.low(), band.best(), REAL_GAS * band.high());
    }
}
