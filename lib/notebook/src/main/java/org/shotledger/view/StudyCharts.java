package org.shotledger.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.DriftMapChart;
import org.shotledger.chart.LimitMapChart;
import org.shotledger.chart.TornadoChart;
import org.shotledger.chart.TradeOffChart;
import org.shotledger.confidence.Confidence;
import org.shotledger.study.Candidate;
import org.shotledger.study.Objective;
import org.shotledger.study.StudyMap;
import org.shotledger.study.SweepResult;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Sweeps and confidence as charts. */
public final class StudyCharts {
    private static final int LEVELS = 8;
    private static final double[] STEPS = {5, 10, 20, 25, 50, 100, 200};

    private StudyCharts() {}

    /**
     * The trade-off front of a sweep with the recommended combination and the runner-up named.
     *
     * @param swept the sweep
     * @param x what the horizontal axis judges
     * @param y what the vertical axis judges
     * @param system the units
     * @return the picture
     */
    public static ChartPicture front(SweepResult swept, Objective x, Objective y, UnitSystem system) {
        Set<Candidate> all = new LinkedHashSet<>(swept.best());
        all.addAll(swept.front());
        List<TradeOffChart.Choice> choices = new ArrayList<>();
        for (Candidate candidate : all) {
            choices.add(new TradeOffChart.Choice(
                    name(candidate, swept, system),
                    x.of(candidate.outcome()),
                    y.of(candidate.outcome()),
                    place(candidate, all, swept, x, y)));
        }
        return new TradeOffChart(capital(x.words()), x.kind(), capital(y.words()), y.kind(), choices).picture(system);
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String name(Candidate candidate, SweepResult swept, UnitSystem system) {
        int rank = swept.best().indexOf(candidate);
        if (rank == 0) {
            return candidate.combination().name(system);
        }
        return rank == 1 ? "runner-up: " + candidate.combination().name(system) : "";
    }

    private static TradeOffChart.Place place(
            Candidate candidate, Set<Candidate> all, SweepResult swept, Objective x, Objective y) {
        int rank = swept.best().indexOf(candidate);
        if (rank == 0) {
            return TradeOffChart.Place.CHOSEN;
        }
        boolean bettered = all.stream().anyMatch(other -> better(other, candidate, x) && better(other, candidate, y));
        return bettered && rank != 1 ? TradeOffChart.Place.BETTERED : TradeOffChart.Place.FRONT;
    }

    private static boolean better(Candidate a, Candidate b, Objective by) {
        return by.better(a.outcome(), b.outcome());
    }

    /**
     * Wheel power over two axes, where every limit is kept, and which limits end that region.
     *
     * @param map the map
     * @param named combinations to be marked, with their names
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(StudyMap map, Map<String, Candidate> named, UnitSystem system) {
        double[][] power = map.each(c -> c.map(k -> k.outcome().wheelPower()).orElse(Double.NaN));
        double[][] least = map.each(c -> c.map(k -> k.outcome().leastMargin()).orElse(-1.0));
        boolean[][] safe = new boolean[least.length][];
        Arrays.setAll(safe, j -> {
            boolean[] row = new boolean[least[j].length];
            for (int i = 0; i < row.length; i++) {
                row[i] = least[j][i] >= 0;
            }
            return row;
        });
        List<LimitMapChart.Place> places = new ArrayList<>();
        named.forEach((name, c) -> places.add(new LimitMapChart.Place(name, map.x(c), map.y(c))));
        return new LimitMapChart(
                        "Wheel power, and where every limit is kept",
                        words(map.xPath()),
                        kind(map.xPath()),
                        words(map.yPath()),
                        kind(map.yPath()),
                        "wheel power",
                        QuantityKind.POWER,
                        map.xs(),
                        map.ys(),
                        power,
                        safe,
                        levels(power, system),
                        bounds(map, safe),
                        places)
                .picture(system);
    }

    /** Limits beside the region in which every limit is kept; elsewhere another one has ended it already. */
    private static List<DriftMapChart.Bound> bounds(StudyMap map, boolean[][] safe) {
        Map<String, double[][]> margins = new LinkedHashMap<>();
        for (String name : map.limitNames()) {
            margins.put(name, map.each(c -> c.map(k -> map.margin(k, name)).orElse(Double.NaN)));
        }
        List<DriftMapChart.Bound> bounds = new ArrayList<>();
        margins.forEach((name, margin) -> bounds.add(new DriftMapChart.Bound(name, besideSafe(margin, safe))));
        return bounds;
    }

    private static double[][] besideSafe(double[][] margin, boolean[][] safe) {
        double[][] kept = new double[margin.length][];
        for (int j = 0; j < margin.length; j++) {
            kept[j] = new double[margin[j].length];
            for (int i = 0; i < kept[j].length; i++) {
                kept[j][i] = near(safe, j, i) ? margin[j][i] : Double.NaN;
            }
        }
        return kept;
    }

    private static boolean near(boolean[][] safe, int j, int i) {
        for (int dj = -1; dj <= 1; dj++) {
            for (int di = -1; di <= 1; di++) {
                int a = j + dj;
                int b = i + di;
                if (a >= 0 && a < safe.length && b >= 0 && b < safe[a].length && safe[a][b]) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double[] levels(double[][] power, UnitSystem system) {
        double unit = 1 / QuantityKind.POWER.shown(1, system);
        double[] finite = Arrays.stream(power)
                .flatMapToDouble(Arrays::stream)
                .filter(Double::isFinite)
                .map(p -> p / unit)
                .toArray();
        double low = Arrays.stream(finite).min().orElse(0);
        double high = Arrays.stream(finite).max().orElse(0);
        double step = DoubleStream.of(STEPS)
                .filter(s -> (high - low) / s <= LEVELS)
                .findFirst()
                .orElse(STEPS[STEPS.length - 1]);
        return DoubleStream.iterate(Math.ceil(low / step) * step, v -> v <= high, v -> v + step)
                .map(v -> v * unit)
                .toArray();
    }

    private static QuantityKind kind(String path) {
        return path.startsWith("jets") ? QuantityKind.BORE : QuantityKind.GAUGE_PRESSURE;
    }

    private static String words(String path) {
        return switch (path) {
            case "jets.nitrous" -> "Nitrous jet";
            case "jets.fuel" -> "Fuel jet";
            default -> "Boost held";
        };
    }

    /**
     * What moves the wheel power of a plan most.
     *
     * @param confidence the confidence, with its influences
     * @param system the units
     * @return the picture
     */
    public static ChartPicture tornado(Confidence confidence, UnitSystem system) {
        List<TornadoChart.Input> inputs = confidence.influences().stream()
                .filter(i -> Math.abs(i.powerAtHigh() - i.powerAtLow()) > 1)
                .map(i -> new TornadoChart.Input(i.unknown().words(), i.powerAtLow(), i.powerAtHigh()))
                .toList();
        return new TornadoChart(
                        "Wheel power", QuantityKind.POWER, confidence.power().quantile(0.5), inputs)
                .picture(system);
    }
}
