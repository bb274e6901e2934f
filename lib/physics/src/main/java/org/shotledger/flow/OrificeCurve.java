package org.shotledger.flow;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;

/**
 * The flow of one hole from one inlet state over the pressure behind it. The choking point is found once; after that a
 * pressure costs little.
 */
public final class OrificeCurve {
    private static final double TOLERANCE = 1e-7;

    private final double pressure;
    private final double area;
    private final double chokingPressure;
    private final DoubleUnaryOperator flux;

    /**
     * Makes a curve.
     *
     * @param pressure pressure at rest before the hole, Pa
     * @param area effective area, m2
     * @param chokingPressure pressure behind the hole below which the flow no longer rises, Pa
     * @param flux flux over the pressure behind, kg/(m2 s), asked only from the choking pressure to the pressure before
     */
    OrificeCurve(double pressure, double area, double chokingPressure, DoubleUnaryOperator flux) {
        this.pressure = pressure;
        this.area = area;
        this.chokingPressure = chokingPressure;
        this.flux = flux;
    }

    OrificeCurve times(double factor) {
        return new OrificeCurve(pressure, factor * area, chokingPressure, flux);
    }

    /**
     * Mass flow.
     *
     * @param behind pressure behind the hole, Pa
     * @return flow, kg/s; zero when the pressure behind is not lower than that before
     */
    public double flow(double behind) {
        return area == 0 || behind >= pressure ? 0 : area * flux.applyAsDouble(Math.max(behind, chokingPressure));
    }

    /**
     * Where the hole chokes.
     *
     * @return pressure behind below which the flow no longer rises, Pa
     */
    public double chokingPressure() {
        return chokingPressure;
    }

    double largestFlow() {
        return flow(chokingPressure);
    }

    /** Pressure behind the hole at a flow; NaN when it chokes below. */
    double pressureAt(double massFlow) {
        if (massFlow <= 0) {
            return pressure;
        }
        double most = largestFlow();
        if (most <= massFlow) {
            return Double.NaN;
        }
        // squares make the flow nearly linear in the pressure
        double wanted = massFlow * massFlow;
        return Bracket.root(
                p -> {
                    double flow = flow(p);
                    return flow * flow - wanted;
                },
                chokingPressure,
                most * most - wanted,
                pressure,
                -wanted,
                TOLERANCE * pressure);
    }
}
