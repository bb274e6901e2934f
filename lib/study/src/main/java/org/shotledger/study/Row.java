package org.shotledger.study;

import java.util.Arrays;

/**
 * Combinations that differ in the fuel circuit alone, at one engine setting, bottle temperature and nitrous jet.
 *
 * <p>First the tables of every case and site are brought to this nitrous flow, which leaves the nitrous fuel as the only variable.
 * Then each circuit takes from them the least margin, and the power and mixture of the stated case. Nothing is made in the loops.
 */
final class Row {
    /** A limit this much further off than the closest may be at worst is not looked at: what the cubics may overshoot. */
    private static final double OVERSHOOT = 0.02;

    private final Sweep sweep;
    private final double[][] table;
    private final int[][] looked;
    /** By circuit. */
    final double[] margin;

    final double[] power;
    final double[] lambda;
    /** Number of the deciding limit, and of its case. */
    final int[] limit;

    final int[] at;

    Row(Sweep sweep, int circuits) {
        this.sweep = sweep;
        this.table = new double[sweep.spots.length][];
        this.looked = new int[sweep.spots.length][];
        this.margin = new double[circuits];
        this.power = new double[circuits];
        this.lambda = new double[circuits];
        this.limit = new int[circuits];
        this.at = new int[circuits];
    }

    void fill(BottleSide.Row row) {
        begin(row);
        for (int s = 0; s < sweep.spots.length; s++) {
            table[s] = atFlow(sweep.spots[s], row);
        }
        choose();
        for (int s = 0; s < sweep.spots.length; s++) {
            judge(s);
        }
    }

    /** What bottle, circuit and closed solenoids allow. */
    private void begin(BottleSide.Row row) {
        Arrays.fill(power, 0);
        Arrays.fill(lambda, Double.NaN);
        for (int k = 0; k < margin.length; k++) {
            margin[k] = row.margin();
            limit[k] = row.limit();
            at[k] = row.at();
            lower(k, sweep.fuel.margin()[k], sweep.fuel.limit()[k], sweep.fuel.at()[k]);
            lower(k, sweep.closed.margin, sweep.closed.limit, sweep.closed.at);
        }
    }

    private void lower(int k, double other, int which, int where) {
        if (other < margin[k]) {
            margin[k] = other;
            limit[k] = which;
            at[k] = where;
        }
    }

    /** A site's table at one nitrous flow and enthalpy: what is left is by fuel node and channel. */
    private double[] atFlow(Sweep.Spot spot, BottleSide.Row row) {
        Engine engine = sweep.engine;
        double[] values = engine.values()[spot.site()];
        double flow = row.flow()[spot.at()];
        double[] w = new double[Lattice.ORDER];
        engine.nitrous().weights(flow, w);
        double warm =
                (row.enthalpy()[spot.at()] - engine.enthalpy()[0]) / (engine.enthalpy()[1] - engine.enthalpy()[0]);
        int line = engine.fuel().count() * Engine.CHANNELS;
        double[] left = new double[line];
        for (int h = 0; h < 2; h++) {
            for (int i = 0; i < Lattice.ORDER; i++) {
                double weight = w[i] * (h == 0 ? 1 - warm : warm);
                int from = (h * engine.nitrous().count() + engine.nitrous().node(flow) + i) * line;
                for (int j = 0; j < line; j++) {
                    left[j] += weight * values[from + j];
                }
            }
        }
        return left;
    }

    /** Which limits can be the closest at all: those whose best place in the table is closer than the worst of any other. */
    private void choose() {
        double ceiling = Double.POSITIVE_INFINITY;
        for (double[] left : table) {
            for (int c = 0; c < Engine.MARGINS; c++) {
                ceiling = Math.min(ceiling, extreme(left, c, 1));
            }
        }
        for (int s = 0; s < table.length; s++) {
            int[] some = new int[Engine.MARGINS];
            int count = 0;
            for (int c = 0; c < Engine.MARGINS; c++) {
                if (!(-extreme(table[s], c, -1) > ceiling + OVERSHOOT)) {
                    some[count++] = c;
                }
            }
            looked[s] = Arrays.copyOf(some, count);
        }
    }

    private static double extreme(double[] left, int channel, int sign) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = channel; i < left.length; i += Engine.CHANNELS) {
            if (Double.isNaN(left[i])) {
                return Double.POSITIVE_INFINITY;
            }
            most = Math.max(most, sign * left[i]);
        }
        return most;
    }

    private void judge(int s) {
        Sweep.Spot spot = sweep.spots[s];
        if (looked[s].length == 0 && spot.at() != 0) {
            return;
        }
        double[] left = table[s];
        double[] flows = sweep.fuel.flow()[spot.site()];
        double[] w = new double[Lattice.ORDER];
        for (int k = 0; k < margin.length; k++) {
            sweep.engine.fuel().weights(flows[k], w);
            int node = sweep.engine.fuel().node(flows[k]) * Engine.CHANNELS;
            for (int c : looked[s]) {
                double is = value(left, node + c, w);
                if (Double.isNaN(is)) {
                    lower(k, Double.NEGATIVE_INFINITY, sweep.names.noAnswer(), spot.at());
                } else {
                    lower(k, is, c, spot.at());
                }
            }
            if (spot.at() == 0) {
                double gives = value(left, node + Engine.POWER, w);
                if (gives > power[k]) {
                    power[k] = gives;
                    lambda[k] = value(left, node + Engine.LAMBDA, w);
                }
            }
        }
    }

    private static double value(double[] left, int at, double[] w) {
        return w[0] * left[at]
                + w[1] * left[at + Engine.CHANNELS]
                + w[2] * left[at + 2 * Engine.CHANNELS]
                + w[3] * left[at + 3 * Engine.CHANNELS];
    }
}
