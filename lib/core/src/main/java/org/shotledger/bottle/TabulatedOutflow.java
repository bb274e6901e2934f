package org.shotledger.bottle;

import org.hipparchus.analysis.interpolation.AkimaSplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.shotledger.flow.FeedPath;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * A feed path's flow of boiling liquid, tabulated over its temperature. Integrators ask for it thousands of times, and it
 * depends on nothing else.
 *
 * <p>The spline runs over {@code (1 - T/Tc)^(1/3)}, in which the properties of saturated liquid are smooth up to the critical
 * point (the exponent of the coexistence curve is close to one third). It is a local one, because the flow has a kink wherever
 * the choking part changes. Other states are passed on to the path itself.
 */
final class TabulatedOutflow implements Outflow {
    private static final int NODES = 61;
    /** Share of the critical temperature at the warm end; closer to it the flow bends too sharply for a table. */
    private static final double WARM_END = 0.99;
    /** At the cold end the liquid still boils at this many times the pressure behind the jets, so that every hole chokes. */
    private static final double COLD_END_RATIO = 2.5;

    private final FeedPath path;
    private final double downstreamPressure;
    private final PolynomialSplineFunction flow;

    TabulatedOutflow(FeedPath path, double downstreamPressure) {
        this.path = path;
        this.downstreamPressure = downstreamPressure;
        double cold = place(NitrousOxide.saturationTemperature(
                Math.max(COLD_END_RATIO * downstreamPressure, 2 * NitrousOxide.TRIPLE_PRESSURE)));
        double warm = place(WARM_END * NitrousOxide.CRITICAL_TEMPERATURE);
        double[] places = new double[NODES];
        double[] flows = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            places[i] = warm + (cold - warm) * i / (NODES - 1);
            double temperature = NitrousOxide.CRITICAL_TEMPERATURE * (1 - places[i] * places[i] * places[i]);
            flows[i] = path.massFlow(NitrousOxide.saturatedLiquid(temperature), downstreamPressure);
        }
        flow = new AkimaSplineInterpolator().interpolate(places, flows);
    }

    private static double place(double temperature) {
        return Math.cbrt(1 - temperature / NitrousOxide.CRITICAL_TEMPERATURE);
    }

    @Override
    public double massFlow(double time, FluidState outlet) {
        if (outlet.quality() == 0) {
            double place = place(outlet.temperature());
            if (flow.isValidPoint(place)) {
                return flow.value(place);
            }
        }
        return path.massFlow(outlet, downstreamPressure);
    }
}
