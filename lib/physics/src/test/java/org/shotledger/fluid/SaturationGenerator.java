package org.shotledger.fluid;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.hipparchus.dfp.Dfp;

/**
 * Makes the resource of {@link SaturationCurve}: Chebyshev expansions of the exact phase equilibrium.
 *
 * <p>Idea after I. H. Bell and B. K. Alpert, "Efficient and precise representation of pure fluid phase equilibria with
 * Chebyshev expansions", Int. J. Thermophys. 42 (2021) 75. Variable: {@code theta = sqrt(1 - T/Tc)}, in which both
 * branches of an analytic equation of state stay analytic up to the critical point. Intervals are halved until the
 * dropped coefficients are below 1e-15 of the value, or one cell remains (2e-14 next to the critical point).
 *
 * <p>Run the main method with the path of the file to write. Layout, big-endian: cells, terms and interval count as
 * int; per interval its first cell and cell count as int and seven rows of coefficients as double (p, rho', rho'', h',
 * h'', s', s''); then the intervals of the boiling curve in the same way with one row each, theta as a function of {@code
 * phi = sqrt(ln(pc/p))}, which is as smooth.
 */
final class SaturationGenerator {

    private static final int SAMPLES = SaturationCurve.TERMS + 4;
    private static final double DROPPED = 1e-15;
    private static final double[] SCALE = {1, 1, 1, 1e5, 1e5, 500, 500};

    private record Interval(int first, int count, List<double[]> rows) {}

    private SaturationGenerator() {}

    /**
     * Writes the resource.
     *
     * @param args the file to write
     */
    public static void main(String[] args) throws IOException {
        Files.write(Path.of(args[0]), generate());
    }

    private static byte[] generate() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(SaturationCurve.CELLS);
        out.writeInt(SaturationCurve.TERMS);
        write(SaturationGenerator::rows, out);
        write(SaturationGenerator::boilingRows, out);
        return bytes.toByteArray();
    }

    private static void write(BiFunction<Integer, Integer, double[][]> maker, DataOutputStream out) throws IOException {
        List<Interval> intervals = new ArrayList<>();
        split(maker, 0, SaturationCurve.CELLS, intervals);
        out.writeInt(intervals.size());
        for (Interval interval : intervals) {
            out.writeInt(interval.first);
            out.writeInt(interval.count);
            for (double[] row : interval.rows) {
                write(row, out);
            }
        }
    }

    private static void write(double[] row, DataOutputStream out) throws IOException {
        for (int k = 0; k < SaturationCurve.TERMS; k++) {
            out.writeDouble(row[k]);
        }
    }

    private static void split(
            BiFunction<Integer, Integer, double[][]> maker, int first, int count, List<Interval> done) {
        if (count <= SaturationCurve.CELLS / 4) {
            double[][] rows = maker.apply(first, count);
            if (count == 1 || dropped(rows) < DROPPED) {
                System.out.printf("cells %d + %d, dropped %.1e%n", first, count, dropped(rows));
                done.add(new Interval(first, count, List.of(rows)));
                return;
            }
        }
        split(maker, first, count / 2, done);
        split(maker, first + count / 2, count / 2, done);
    }

    private static double dropped(double[][] rows) {
        double worst = 0;
        for (int q = 0; q < rows.length; q++) {
            double sum = 0;
            for (int k = SaturationCurve.TERMS; k < SAMPLES; k++) {
                sum += Math.abs(rows[q][k]);
            }
            worst = Math.max(worst, sum / Math.max(Math.abs(rows[q][0]), SCALE[q]));
        }
        return worst;
    }

    static double[][] rows(int first, int count) {
        Dfp width = ExactEquation.number(SaturationCurve.THETA_SPAN).divide(SaturationCurve.CELLS);
        Dfp[][] values = new Dfp[SCALE.length][SAMPLES];
        for (int j = 0; j < SAMPLES; j++) {
            Dfp cell = node(j).add(1).multiply(count).divide(2).add(first);
            Dfp[] all = ExactEquilibrium.atTheta(width.multiply(cell)).properties();
            for (int q = 0; q < all.length; q++) {
                values[q][j] = all[q];
            }
        }
        double[][] rows = new double[SCALE.length][];
        for (int q = 0; q < rows.length; q++) {
            rows[q] = chebyshev(values[q]);
        }
        return rows;
    }

    static double[][] boilingRows(int first, int count) {
        Dfp width = ExactEquation.number(SaturationCurve.PHI_SPAN).divide(SaturationCurve.CELLS);
        Dfp[] values = new Dfp[SAMPLES];
        for (int j = 0; j < SAMPLES; j++) {
            Dfp cell = node(j).add(1).multiply(count).divide(2).add(first);
            values[j] = boilingTheta(width.multiply(cell));
        }
        return new double[][] {chebyshev(values)};
    }

    // Newton in u = theta^2 on ln p, with its slope by Clapeyron
    private static Dfp boilingTheta(Dfp phi) {
        Dfp tc = ExactEquilibrium.CRITICAL_TEMPERATURE;
        Dfp y = phi.multiply(phi);
        Dfp u = y.divide(y.add(6.33));
        for (int i = 0; i < 40; i++) {
            Dfp[] s = ExactEquilibrium.atTheta(u.sqrt()).properties();
            Dfp volume = s[2].reciprocal().subtract(s[1].reciprocal());
            Dfp slope = s[6].subtract(s[5]).divide(volume).divide(s[0]).multiply(tc);
            Dfp miss = ExactEquilibrium.CRITICAL_PRESSURE.divide(s[0]).log().subtract(y);
            Dfp next = u.subtract(miss.divide(slope));
            next = next.greaterThan(ExactEquation.FIELD.getZero()) ? next : u.divide(2);
            Dfp change = next.subtract(u).abs();
            u = next;
            if (change.divide(u).toDouble() < 1e-19) {
                return u.sqrt();
            }
        }
        throw new IllegalStateException("No boiling temperature at phi = " + phi);
    }

    private static Dfp node(int j) {
        return angle(j, 1).cos();
    }

    private static Dfp angle(int j, int k) {
        return ExactEquation.FIELD.getPi().multiply(2 * j + 1).multiply(k).divide(2 * SAMPLES);
    }

    private static double[] chebyshev(Dfp[] values) {
        double[] row = new double[SAMPLES];
        for (int k = 0; k < SAMPLES; k++) {
            Dfp sum = ExactEquation.FIELD.getZero();
            for (int j = 0; j < SAMPLES; j++) {
                sum = sum.add(values[j].multiply(angle(j, k).cos()));
            }
            row[k] = sum.multiply(k == 0 ? 1 : 2).divide(SAMPLES).toDouble();
        }
        return row;
    }
}
