package org.shotledger.flow;

import org.shotledger.fluid.FluidState;

/**
 * A square-edged hole 2 to 10 bores long that runs full: equilibrium flow times {@link LongOrifice#ultimateCoefficient}.
 *
 * <p>The length gives the boiling time, and a nitrous jet's Reynolds number of 1e5 and more lies on the flat end of the liquid
 * coefficient. Known error: as a square-edged hole of the class law; low just above the boiling line.
 */
record LongOrificeLaw() implements OrificeLaw {
    @Override
    public String name() {
        return "long orifice";
    }

    @Override
    public OrificeLaw acting(FluidState inlet) {
        return this;
    }

    @Override
    public String source(NitrousJet hole, FluidState inlet) {
        return ClassLaw.EQUILIBRIUM_SOURCE
                + "; coefficient of Lichtarowicz, Duggins and Markland, J. Mech. Eng. Sci. 7," + " 210-219 (1965)";
    }

    @Override
    public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
        return EquilibriumLaw.scaled(hole, inlet, LongOrifice.ultimateCoefficient(hole.lengthToBore()));
    }

    @Override
    public FlowBand band(NitrousJet hole, FluidState inlet) {
        return new HoleClass(Edge.SQUARE, Inlet.of(inlet)).band();
    }
}
