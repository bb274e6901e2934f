package org.shotledger.fluid;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;

/** Piecewise polynomials of several properties over one row of equal cells, read from a generated resource. */
final class Expansions {

    /** Coefficients of each polynomial. */
    static final int TERMS = 12;

    /** The cell number, cut to a whole, gives the interval. */
    final byte[] intervalOfCell;

    private final double[] centre;
    private final double[] perHalfWidth;
    private final double[][] rows;
    /** Coefficients of the derivatives with the place, one fewer than of the polynomials. */
    private final double[][] slopes;

    /**
     * Reads intervals: their count, then for each its first cell, cell count, and one row of Chebyshev coefficients per
     * property.
     */
    Expansions(ByteBuffer in, int properties) {
        int intervals = in.getInt();
        intervalOfCell = new byte[SaturationCurve.CELLS];
        centre = new double[intervals];
        perHalfWidth = new double[intervals];
        rows = new double[properties][intervals * TERMS];
        slopes = new double[properties][intervals * TERMS];
        for (int i = 0; i < intervals; i++) {
            int first = in.getInt();
            int count = in.getInt();
            centre[i] = first + 0.5 * count;
            perHalfWidth[i] = 2.0 / count;
            Arrays.fill(intervalOfCell, first, first + count, (byte) i);
            for (int p = 0; p < properties; p++) {
                readPowers(in, rows[p], i * TERMS);
                derive(rows[p], slopes[p], i * TERMS, perHalfWidth[i]);
            }
        }
    }

    /** Opens the resource and checks its first two numbers. */
    static ByteBuffer resource(String name) {
        try (InputStream in = Expansions.class.getResourceAsStream(name)) {
            ByteBuffer buffer = ByteBuffer.wrap(in.readAllBytes());
            int cells = buffer.getInt();
            int terms = buffer.getInt();
            if (cells != SaturationCurve.CELLS || terms != TERMS) {
                throw new IllegalStateException("The resource " + name + " holds " + cells + " cells of " + terms
                        + " terms, but " + SaturationCurve.CELLS + " of " + TERMS
                        + " are expected: generate it again.");
            }
            return buffer;
        } catch (IOException e) {
            throw new UncheckedIOException("The resource " + name + " of the fluid package cannot be read.", e);
        }
    }

    // Chebyshev to powers by T(k+1) = 2x T(k) - T(k-1); harmless here because the terms fall off fast
    private static void readPowers(ByteBuffer in, double[] out, int offset) {
        double[] last = new double[TERMS];
        double[] now = new double[TERMS];
        last[0] = 1;
        now[1] = 1;
        out[offset] = in.getDouble();
        out[offset + 1] = in.getDouble();
        for (int k = 2; k < TERMS; k++) {
            double c = in.getDouble();
            // the next polynomial takes the place of the one before the last: only powers of its own parity are used
            for (int j = k & 1; j <= k; j += 2) {
                last[j] = (j > 0 ? 2 * now[j - 1] : 0) - last[j];
                out[offset + j] += c * last[j];
            }
            double[] next = last;
            last = now;
            now = next;
        }
    }

    private static void derive(double[] row, double[] slope, int offset, double perHalfWidth) {
        for (int k = 1; k < TERMS; k++) {
            slope[offset + k - 1] = k * row[offset + k] * perHalfWidth;
        }
    }

    /** Position in an interval, -1 to 1. */
    double within(double place, int interval) {
        return (place - centre[interval]) * perHalfWidth[interval];
    }

    double value(int property, int interval, double x) {
        return polynomial(rows[property], interval * TERMS, x);
    }

    /** Derivative of a property with the place. */
    double slope(int property, int interval, double x) {
        return polynomial(slopes[property], interval * TERMS, x);
    }

    // twelve terms, even and odd powers apart so that the two chains run side by side
    private static double polynomial(double[] c, int o, double x) {
        double y = x * x;
        double even = c[o] + y * (c[o + 2] + y * (c[o + 4] + y * (c[o + 6] + y * (c[o + 8] + y * c[o + 10]))));
        double odd = c[o + 1] + y * (c[o + 3] + y * (c[o + 5] + y * (c[o + 7] + y * (c[o + 9] + y * c[o + 11]))));
        return even + x * odd;
    }
}
