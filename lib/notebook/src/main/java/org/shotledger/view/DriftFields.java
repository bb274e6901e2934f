package org.shotledger.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.shotledger.chart.DriftMapChart;
import org.shotledger.limits.Limit;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.FaultOutcome;

/**
 * The fields of a drift map between its points, linear along both axes, so that the region drawn ends where the lines of its limits
 * run. The points themselves decide everything else.
 *
 * @param bottlePressure Pa absolute
 * @param fuelPressure Pa gauge
 * @param safe where every limit is kept, by fuel pressure, then bottle pressure
 * @param bounds the limits beside the safe region; elsewhere another limit has ended it already
 */
@SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
record DriftFields(double[] bottlePressure, double[] fuelPressure, boolean[][] safe, List<DriftMapChart.Bound> bounds) {
    /** Steps drawn for each step of the map. */
    private static final int FINER = 5;

    /** Letters that still fit beside a line. */
    private static final int LONG = 32;

    private static final String MODELS_END = "the compressor map ends";

    static DriftFields of(DriftMap map) {
        int rows = map.fuelPressures().size();
        int columns = map.bottlePressures().size();
        Map<String, double[][]> margins = new LinkedHashMap<>();
        for (int j = 0; j < rows; j++) {
            for (int i = 0; i < columns; i++) {
                FaultOutcome outcome = map.outcomes().get(j).get(i);
                for (Limit limit : outcome.limits().all()) {
                    field(margins, limit.name(), rows, columns)[j][i] = limit.relativeMargin();
                }
                field(margins, MODELS_END, rows, columns)[j][i] =
                        outcome.refusal().isEmpty() ? 1 : -1;
            }
        }
        margins.replaceAll((name, coarse) -> finer(coarse));
        boolean[][] safe = safe(margins.values());
        List<DriftMapChart.Bound> bounds = new ArrayList<>();
        margins.forEach((name, margin) -> bounds.add(new DriftMapChart.Bound(brief(name), besideSafe(margin, safe))));
        return new DriftFields(finer(map.bottlePressures()), finer(map.fuelPressures()), safe, bounds);
    }

    /** A long name up to its first comma; the table has the rest. */
    private static String brief(String name) {
        int comma = name.indexOf(',');
        return name.length() > LONG && comma > 0 ? name.substring(0, comma) : name;
    }

    /** One result between the points of a map. */
    static double[][] of(DriftMap map, ToDoubleFunction<FaultOutcome> result) {
        return finer(map.outcomes().stream()
                .map(row -> row.stream().mapToDouble(result).toArray())
                .toArray(double[][]::new));
    }

    private static double[][] field(Map<String, double[][]> margins, String name, int rows, int columns) {
        return margins.computeIfAbsent(name, any -> filled(rows, columns));
    }

    private static double[][] filled(int rows, int columns) {
        double[][] empty = new double[rows][columns];
        for (double[] row : empty) {
            Arrays.fill(row, Double.NaN);
        }
        return empty;
    }

    private static double[] finer(List<Double> values) {
        double[] out = new double[(values.size() - 1) * FINER + 1];
        for (int i = 0; i < out.length; i++) {
            int k = Math.min(i / FINER, values.size() - 2);
            double t = (double) i / FINER - k;
            out[i] = values.get(k) + t * (values.get(k + 1) - values.get(k));
        }
        return out;
    }

    private static double[][] finer(double[][] coarse) {
        double[][] out = new double[(coarse.length - 1) * FINER + 1][(coarse[0].length - 1) * FINER + 1];
        for (int j = 0; j < out.length; j++) {
            int l = Math.min(j / FINER, coarse.length - 2);
            double s = (double) j / FINER - l;
            for (int i = 0; i < out[j].length; i++) {
                int k = Math.min(i / FINER, coarse[0].length - 2);
                double t = (double) i / FINER - k;
                out[j][i] = (1 - s) * ((1 - t) * coarse[l][k] + t * coarse[l][k + 1])
                        + s * ((1 - t) * coarse[l + 1][k] + t * coarse[l + 1][k + 1]);
            }
        }
        return out;
    }

    private static boolean[][] safe(Iterable<double[][]> margins) {
        boolean[][] safe = null;
        for (double[][] margin : margins) {
            if (safe == null) {
                safe = new boolean[margin.length][margin[0].length];
                for (boolean[] row : safe) {
                    Arrays.fill(row, true);
                }
            }
            for (int j = 0; j < margin.length; j++) {
                for (int i = 0; i < margin[j].length; i++) {
                    safe[j][i] &= margin[j][i] >= 0;
                }
            }
        }
        return safe;
    }

    private static double[][] besideSafe(double[][] margin, boolean[][] safe) {
        double[][] out = filled(margin.length, margin[0].length);
        for (int j = 0; j < margin.length; j++) {
            for (int i = 0; i < margin[j].length; i++) {
                if (besideSafe(safe, j, i)) {
                    out[j][i] = margin[j][i];
                }
            }
        }
        return out;
    }

    private static boolean besideSafe(boolean[][] safe, int row, int column) {
        for (int j = Math.max(0, row - 1); j <= Math.min(safe.length - 1, row + 1); j++) {
            for (int i = Math.max(0, column - 1); i <= Math.min(safe[j].length - 1, column + 1); i++) {
                if (safe[j][i]) {
                    return true;
                }
            }
        }
        return false;
    }
}
