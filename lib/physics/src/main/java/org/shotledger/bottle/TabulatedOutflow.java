package org.shotledger.bottle;

import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.interpolation.BicubicInterpolatingFunction;
import org.hipparchus.analysis.interpolation.BicubicInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.shotledger.flow.FeedPath;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * A feed path's flow of boiling liquid, tabulated over its temperature, and what a share of vapour in it makes of that flow. Integrators
 * ask for it thousands of times, and it depends on nothing else.
 *
 * <p>The spline runs over {@code (1 - T/Tc)^(1/3)}, in which the properties of saturated liquid are smooth up to the critical
 * point (the exponent of the coexistence curve is close to one third). It is a local one, because the flow has a kink wherever
 * the choking part changes. Other states are passed on to the path itself.
 */
final class TabulatedOutflow implements Outflow {
    /** Greatest step between nodes on the axis of temperature. */
    private static final double STEP = 0.007;
    /** The ratio of wet to saturated flow is smooth in temperature: few nodes do. */
    private static final double RATIO_STEP = 5 * STEP;
    /** The interpolator leaves out the outermost cells on either side. */
    private static final int LEAST_CELLS = 4;
    /** Share of the critical temperature at the warm end; closer to it the flow bends too sharply for a table. */
    private static final double WARM_END = 0.99;
    /** At the cold end the liquid still boils at this many times the pressure behind the jets, so that every hole chokes. */
    private static final double COLD_END_RATIO = 2.5;
    /**
     * Square roots of the vapour shares of superheated liquid once it has flashed: 30 K of superheat make about 0.3. The first
     * bubbles cost most, hence the root. The interpolator leaves out the outermost cells, hence a mirrored node below zero.
     */
    private static final double[] ROOTS = {-0.03, 0, 0.03, 0.06, 0.1, 0.15, 0.21, 0.28, 0.36, 0.45, 0.55};

    /** Place of the node of liquid among them; those beside it are mirrored. */
    private static final int LIQUID = 1;

    private final FeedPath path;
    private final double downstreamPressure;
    private final PolynomialSplineFunction flow;
    private final BicubicInterpolatingFunction ratio;

    TabulatedOutflow(FeedPath path, double downstreamPressure, double coldest, double warmest) {
        this.path = path;
        this.downstreamPressure = downstreamPressure;
        double coldEnd = place(NitrousOxide.saturationTemperature(
                Math.max(COLD_END_RATIO * downstreamPressure, 2 * NitrousOxide.TRIPLE_PRESSURE)));
        double warmEnd = place(WARM_END * NitrousOxide.CRITICAL_TEMPERATURE);
        double warm = within(place(warmest), warmEnd, coldEnd - LEAST_CELLS * STEP);
        double cold = within(place(coldest), warm + LEAST_CELLS * STEP, coldEnd);
        double[] places = places(warm, cold, STEP);
        double[] flows = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            flows[i] = at(places[i], 0, i > 0 ? flows[i - 1] : 0);
        }
        flow = new AkimaSplineInterpolator().interpolate(places, flows);
        ratio = ratio(places(Math.max(warm - RATIO_STEP, warmEnd), Math.min(cold + RATIO_STEP, coldEnd), RATIO_STEP));
    }

    private static double within(double place, double low, double high) {
        return Math.min(Math.max(place, low), high);
    }

    private static double[] places(double warm, double cold, double step) {
        int cells = Math.max(LEAST_CELLS, (int) Math.ceil((cold - warm) / step));
        double[] places = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            places[i] = i == cells ? cold : warm + (cold - warm) * i / cells;
        }
        return places;
    }

    private BicubicInterpolatingFunction ratio(double[] places) {
        double[][] ratios = new double[places.length][ROOTS.length];
        for (int i = 0; i < places.length; i++) {
            double liquid = at(places[i], 0, flow.isValidPoint(places[i]) ? flow.value(places[i]) : 0);
            ratios[i][LIQUID] = 1;
            for (int j = LIQUID + 1; j < ROOTS.length; j++) {
                double near = i > 0 ? liquid * ratios[i - 1][j] : 0;
                ratios[i][j] = liquid > 0 ? at(places[i], ROOTS[j] * ROOTS[j], near) / liquid : 1;
            }
            ratios[i][0] = ratios[i][LIQUID + 1];
        }
        return new BicubicInterpolator().interpolate(places, ROOTS, ratios);
    }

    private double at(double place, double quality, double near) {
        double temperature = NitrousOxide.CRITICAL_TEMPERATURE * (1 - place * place * place);
        return path.massFlow(NitrousOxide.mixture(temperature, quality), downstreamPressure, near);
    }

    private static double place(double temperature) {
        return Math.cbrt(1 - Math.min(temperature / NitrousOxide.CRITICAL_TEMPERATURE, 1));
    }

    @Override
    public double massFlow(double time, FluidState outlet) {
        if (outlet.isSaturated()) {
            double place = place(outlet.temperature());
            if (outlet.quality() == 0 && flow.isValidPoint(place)) {
                return flow.value(place);
            }
            double root = Math.sqrt(outlet.quality());
            if (flow.isValidPoint(place) && ratio.isValidPoint(place, root)) {
                return flow.value(place) * ratio.value(place, root);
            }
        }
        return path.massFlow(outlet, downstreamPressure);
    }
}
