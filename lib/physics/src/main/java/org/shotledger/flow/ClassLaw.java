package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * The default law: homogeneous-equilibrium flow times a share that follows the class of the hole.
 *
 * <p>{@code G(p) = G_eq(p) (C (1 + E r(p)) (1 - x) + C_v x)}: C is the coefficient of the hole run with liquid, C_v with vapour, x
 * the quality before the hole, and E the excess of liquid that boils late,
 * {@code E = A k f exp(-((s - 1) / (B k))^2)} with {@code s} = pressure over boiling pressure, {@code k = exp(-(L/d) / l)} and
 * {@code f = min(1, (1 - T/Tc) / 0.05)}. The excess comes as the pressure behind falls below boiling,
 * {@code r = 1 - (1 - d / 0.35)^2}, d being the share of the boiling pressure by which it is lower (shape of the runs of
 * AIAA 2013-3636 fig. 13 at small supercharge). Bubbles before the hole take the excess away, {@code exp(-x / 0.0005)} (assumed;
 * measured holes with bubbles and unknown edge show none), but not from square-edged tubes, which were measured to keep it.
 *
 * <p>A, B and l are fitted to measured choked flows of nitrous oxide, carbon dioxide, nitrogen and refrigerants at equal
 * reduced temperature and s; the form is ours. Known error: the bands of {@link HoleClass}.
 */
record ClassLaw() implements OrificeLaw {
    static final String EQUILIBRIUM_SOURCE = "Wallis, One-dimensional Two-phase Flow (1969), chapter 2";

    private static final ClassFit FIT = ClassFit.MEASURED;
    /** Share of the boiling pressure by which the pressure behind must be lower until all of the excess flows; see above. */
    private static final double DEPTH = 0.35;

    /** A thin sharp plate with liquid does not choke (NASA, subcooled nitrogen); its jet is 0.62 of Bernoulli's. */
    private static final double THIN_PLATE = 2;

    /** Coefficient of a thin plate, whose stream does not touch its wall: the free sharp orifice is 0.61, measured ones 0.60 to 0.64, from memory. */
    private static final double THIN_COEFFICIENT = 0.62;

    @Override
    public String name() {
        return "class";
    }

    @Override
    public OrificeLaw acting(FluidState inlet) {
        return this;
    }

    @Override
    public String source(NitrousJet hole, FluidState inlet) {
        return EQUILIBRIUM_SOURCE
                + "; share by class of hole from measured flows, AIAA 2013-3636 (2013), Aerospace 9-828 (2022),"
                + " HVAC&R Research 10-1 (2004), Energies 15-6765 (2022), NASA (1979)";
    }

    @Override
    public OrificeCurve curve(NitrousJet hole, FluidState inlet) {
        var equilibrium = new HomogeneousEquilibrium.Expansion(inlet);
        double x = wetness(inlet);
        double liquid = (1 - x) * coefficient(hole, true);
        double vapour = x == 0 ? 0 : x * coefficient(hole, false);
        double excess = liquid == 0 ? 0 : liquid * excess(hole, inlet);
        double boiling = excess == 0 ? 0 : inlet.pressure() / Inlet.aboveBoiling(inlet);
        double choking = equilibrium.chokingPressure();
        if (excess == 0) {
            return new OrificeCurve(inlet.pressure(), (liquid + vapour) * hole.area(), choking, equilibrium::flux);
        }
        double plain = liquid + vapour;
        return new OrificeCurve(
                inlet.pressure(),
                hole.area(),
                Math.min(choking, (1 - DEPTH) * boiling),
                behind -> equilibrium.flux(behind) * (plain + excess * ramp((boiling - behind) / boiling)));
    }

    private static double ramp(double depth) {
        double left = 1 - Math.min(Math.max(depth, 0), DEPTH) / DEPTH;
        return 1 - left * left;
    }

    /** Quality as the share of vapour before the hole; 0 for liquid and dense fluid, 1 for gas. */
    private static double wetness(FluidState inlet) {
        if (inlet.isSaturated()) {
            return inlet.quality();
        }
        return inlet.density() < NitrousOxide.CRITICAL_DENSITY ? 1 : 0;
    }

    private static double coefficient(NitrousJet hole, boolean liquid) {
        if (hole.hasCoefficient()) {
            return hole.dischargeCoefficient();
        }
        return liquid ? FIT.liquid(hole.edge(), hole.lengthToBore()) : FIT.vapour(hole.edge());
    }

    private static double excess(NitrousJet hole, FluidState inlet) {
        double reduced = inlet.temperature() / NitrousOxide.CRITICAL_TEMPERATURE;
        if (reduced >= 1) {
            return 0;
        }
        double quality = inlet.isSaturated() ? inlet.quality() : 0;
        return FIT.excess(hole.edge(), hole.lengthToBore(), reduced, Inlet.aboveBoiling(inlet), quality);
    }

    @Override
    public FlowBand band(NitrousJet hole, FluidState inlet) {
        Inlet kind = Inlet.of(inlet);
        FlowBand band = new HoleClass(hole.edge(), kind).band();
        boolean thin = hole.edge() != Edge.ROUNDED && hole.lengthToBore() < THIN_PLATE;
        boolean liquid = kind == Inlet.SUBCOOLED || kind == Inlet.SATURATED;
        if (!thin || !liquid || hole.bore() == 0) {
            return band;
        }
        double unchoked =
                THIN_COEFFICIENT * Incompressible.massFlux(inlet.density(), inlet.pressure(), 0) * hole.area();
        double best = curve(hole, inlet).largestFlow();
        return new FlowBand(band.low(), 1, Math.max(band.high(), unchoked / best));
    }
}
