package org.shotledger.study;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.budget.Course;

/**
 * One engine speed at which boost is taken back until one load, torque or peak pressure, keeps its reserve: everything as
 * polynomials in the flow of nitrous fuel. It does not depend on the boost that was set, so one serves all of them.
 *
 * <p>The pressure is the root of the table's own margin, bracketed and found by the Illinois method (Dowell and Jarratt, BIT 11
 * (1971) 168); the polynomials pass through Chebyshev nodes.
 */
final class TaperBranch {
    static final int NODES = 6;
    private static final int SCAN = 9;
    private static final int HALVINGS = 7;
    private static final double BEYOND = 1.1;
    private static final double[][] INVERSE = inverse();

    /** Where along the fuel flow the branch exists. */
    final Scale fuel;
    /** Pressure, then the table's outputs, then lambda with a part of the fuel missing; each as powers of stretched fuel. */
    final double[][] powers;
    /** How many of the powers matter, less one. */
    final int[] degrees;

    private TaperBranch(Scale fuel, double[][] powers) {
        this.fuel = fuel;
        this.powers = powers;
        this.degrees = new int[powers.length];
        for (int k = 0; k < powers.length; k++) {
            boolean margin = k > Probe.MARGINS && k < powers.length - 1;
            degrees[k] = Polynomials.degree(powers[k], margin ? 1 : Math.abs(powers[k][0]));
        }
    }

    static final class Maker {
        private final SpeedTable table;
        private final int load;
        private final double enthalpy;
        private final double nitrous;
        private final DoubleUnaryOperator share;

        /**
         * Prepares the search.
         *
         * @param table the speed
         * @param load the output whose margin is held at the reserve
         * @param enthalpy of the bottle's liquid, J/kg
         * @param nitrous flow, kg/s
         * @param share fuel flow at a plenum pressure over that at the reference pressure
         */
        Maker(SpeedTable table, int load, double enthalpy, double nitrous, DoubleUnaryOperator share) {
            this.table = table;
            this.load = load;
            this.enthalpy = enthalpy;
            this.nitrous = nitrous;
            this.share = share;
        }

        /** The branch between two fuel flows at the reference pressure, or null where it never comes into play. */
        TaperBranch between(double low, double high) {
            if (covered(low) && covered(high)) {
                return fitted(new Scale(low, high));
            }
            double first = Double.NaN;
            double last = Double.NaN;
            double before = low;
            double after = high;
            for (int i = 0; i < SCAN; i++) {
                double at = low + (high - low) * i / (SCAN - 1);
                if (covered(at)) {
                    first = Double.isNaN(first) ? at : first;
                    last = at;
                    after = high;
                } else if (Double.isNaN(first)) {
                    before = at;
                } else {
                    after = Math.min(after, at);
                }
            }
            return Double.isNaN(first) ? null : fitted(new Scale(edge(first, before), edge(last, after)));
        }

        private boolean covered(double fuel) {
            double high = table.pressure.high();
            double x = rich(high, fuel * share.applyAsDouble(high));
            return Math.abs(x) <= BEYOND
                    && table.one(load, high, enthalpy, nitrous, x) < Course.RESERVE
                    && !Double.isNaN(pressure(fuel));
        }

        /** The last fuel flow on the way from one with a taper to one without. */
        private double edge(double with, double without) {
            double inside = with;
            double outside = without;
            for (int i = 0; i < HALVINGS && outside != inside; i++) {
                double middle = 0.5 * (inside + outside);
                if (covered(middle)) {
                    inside = middle;
                } else {
                    outside = middle;
                }
            }
            return inside;
        }

        private double margin(double plenum, double fuel) {
            return table.one(load, plenum, enthalpy, nitrous, rich(plenum, fuel * share.applyAsDouble(plenum)))
                    - Course.RESERVE;
        }

        private double rich(double plenum, double flow) {
            return table.richOffset(plenum, nitrous) + table.richSlope(plenum, nitrous) * flow;
        }

        /** The pressure that keeps the reserve; the lowest of the table where even that is too much; NaN where none is needed. */
        private double pressure(double fuel) {
            double high = table.pressure.high();
            double atHigh = margin(high, fuel);
            if (atHigh >= 0 || Math.abs(rich(high, fuel * share.applyAsDouble(high))) > BEYOND) {
                return Double.NaN;
            }
            double low = table.pressure.low();
            double atLow = margin(low, fuel);
            if (atLow < 0) {
                return low;
            }
            double at = low;
            for (int i = 0; i < 60; i++) {
                at = (low * atHigh - high * atLow) / (atHigh - atLow);
                double f = margin(at, fuel);
                if (Math.abs(f) < 1e-9 || high - low < 1e-3) {
                    break;
                }
                if (f < 0) {
                    high = at;
                    atHigh = f;
                    atLow *= 0.5;
                } else {
                    low = at;
                    atLow = f;
                    atHigh *= 0.5;
                }
            }
            return Math.abs(rich(at, fuel * share.applyAsDouble(at))) > BEYOND ? Double.NaN : at;
        }

        private TaperBranch fitted(Scale along) {
            int outputs = table.outputs;
            double[][] nodes = new double[NODES][outputs + 2];
            double[][] row = new double[outputs][table.basis.richness + 1];
            for (int i = 0; i < NODES; i++) {
                double fuel = along.from(node(i));
                double p = pressure(fuel);
                if (Double.isNaN(p)) {
                    p = table.pressure.high();
                }
                double flow = fuel * share.applyAsDouble(p);
                table.row(table.atPressure(p), p, enthalpy, nitrous, row);
                nodes[i][0] = p;
                for (int k = 0; k < outputs; k++) {
                    nodes[i][k + 1] = Polynomials.at(row[k], rich(p, flow));
                }
                double less = Math.max(-1, rich(p, (1 - Figures.FUEL_LOST) * flow));
                nodes[i][outputs + 1] = Polynomials.at(row[Probe.LAMBDA], less);
            }
            double[][] powers = new double[outputs + 2][NODES];
            for (int k = 0; k < outputs + 2; k++) {
                for (int l = 0; l < NODES; l++) {
                    for (int i = 0; i < NODES; i++) {
                        powers[k][l] += INVERSE[l][i] * nodes[i][k];
                    }
                }
            }
            return new TaperBranch(along, powers);
        }
    }

    /** The pressure to which boost is taken back. */
    double pressure(double fuelFlow) {
        return Polynomials.at(powers[0], Math.max(-1, Math.min(1, fuel.to(fuelFlow))));
    }

    private static double node(int i) {
        return -Math.cos(Math.PI * i / (NODES - 1));
    }

    /** From values at the nodes to powers: the inverse of their Vandermonde matrix. */
    private static double[][] inverse() {
        double[][] vandermonde = new double[NODES][NODES];
        for (int i = 0; i < NODES; i++) {
            for (int l = 0; l < NODES; l++) {
                vandermonde[i][l] = Basis.power(node(i), l);
            }
        }
        return new org.hipparchus.linear.LUDecomposition(
                        new org.hipparchus.linear.Array2DRowRealMatrix(vandermonde, false))
                .getSolver()
                .getInverse()
                .getData();
    }
}
