package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * Homogeneous-equilibrium flow times one coefficient: the hole's own, or that of a hole of unknown class.
 *
 * <p>Source and range: {@link HomogeneousEquilibrium}. Known error: as the class law's widest band, since one coefficient
 * cannot follow late boiling.
 */
record EquilibriumLaw() implements OrificeLaw {
    @Override
    public String name() {
        return "equilibrium";
    }

    @Override
    public OrificeLaw acting(FluidState inlet) {
        return this;
    }

    @Override
    public String source(NitrousJet hole, FluidState inlet) {
        return ClassLaw.EQUILIBRIUM_SOURCE
                + (hole.hasCoefficient()
                        ? "; coefficient stated"
                        : "; coefficient " + ClassFit.MEASURED.plain() + " of measured plain holes");
    }

    @Override
    public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
        double coefficient = hole.hasCoefficient() ? hole.dischargeCoefficient() : ClassFit.MEASURED.plain();
        return scaled(hole, inlet, coefficient);
    }

    static OrificeCurve scaled(NitrousJet hole, FluidState inlet, double coefficient) {
        var expansion = new HomogeneousEquilibrium.Expansion(inlet);
        return new OrificeCurve(
                inlet.pressure(), coefficient * hole.area(), expansion.chokingPressure(), expansion::flux);
    }

    @Override
    public FlowBand band(NitrousJet hole, FluidState inlet) {
        return new HoleClass(Edge.UNKNOWN, Inlet.of(inlet)).band();
    }
}
