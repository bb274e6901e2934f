package org.shotledger.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Logged over planned, channel under channel on one axis of time, each with the band of the plan. It is narrow, so that it can be read on
 * a telephone beside the car.
 *
 * @param log the log
 * @param strips the channels from top to bottom
 */
public record LogStripsChart(String log, List<Strip> strips) {
    private static final int WIDTH = 430;
    private static final int ROW = 92;
    private static final int AROUND = 190;
    /** Share of a strip's height above and below its middle that values may take. */
    private static final double REACH = 0.30;

    private static final double MIDDLE = 0.60;
    /** Least deviation that fills a strip, so that scatter is not drawn as if it were a fault. */
    private static final double LEAST = 0.02;

    /**
     * One channel at settled pieces of a pull.
     *
     * @param name the channel
     * @param time middle of each piece, s
     * @param nitrous 1 where the nitrous was on, else 0
     * @param ratio logged over planned
     * @param explained with the likeliest causes, over planned
     * @param band half-width of the plan's band, over planned
     * @param off whether the piece lies outside
     */
    @SuppressWarnings("ArrayRecordComponent") // columns to be drawn: read once, never compared
    public record Strip(
            String name,
            double[] time,
            double[] nitrous,
            double[] ratio,
            double[] explained,
            double[] band,
            boolean[] off) {}

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when there is no strip
     */
    public LogStripsChart {
        strips = List.copyOf(strips);
        if (strips.isEmpty()) {
            throw new IllegalArgumentException("There is no channel to draw; give at least one.");
        }
    }

    /**
     * Draws the strips.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        int n = strips.size();
        Plot plot = Plot.of(
                        "log-strips",
                        "Logged over planned",
                        alt(),
                        new Scale("Time", QuantityKind.TIME, system),
                        new Scale("", QuantityKind.COUNT, system))
                .rows(n)
                .width(WIDTH)
                .height(AROUND + n * ROW);
        for (int i = 0; i < n; i++) {
            new Drawn(plot, strips.get(i), n - 1 - i, i == 0, begin(), half(strips.get(i))).draw();
        }
        return plot.key("band of the plan", Look.SPEED, true).picture();
    }

    private double begin() {
        return strips.stream().mapToDouble(s -> s.time()[0]).min().orElseThrow();
    }

    private String alt() {
        List<String> off = new ArrayList<>();
        for (Strip strip : strips) {
            int outside = (int) IntStream.range(0, strip.off().length)
                    .filter(i -> strip.off()[i])
                    .count();
            if (outside > 0) {
                off.add(strip.name() + " (" + outside + " of " + strip.off().length + ")");
            }
        }
        return off.isEmpty()
                ? log + ": every channel lies inside the band of the plan."
                : log + ": pieces outside the band of the plan: " + String.join(", ", off) + ".";
    }

    /** The deviation at the edge of a strip. */
    private static double half(Strip strip) {
        double most = LEAST;
        for (int i = 0; i < strip.ratio().length; i++) {
            most = Math.max(most, Math.abs(strip.ratio()[i] - 1));
            most = Math.max(most, Math.abs(strip.explained()[i] - 1));
        }
        return Math.ceil(100 * most) / 100;
    }

    /** One strip on its way into the plot. */
    private record Drawn(Plot plot, Strip strip, int floor, boolean first, double begin, double half) {
        private double y(double ratio) {
            double share = (ratio - 1) / half;
            return floor + 1 - MIDDLE + REACH * Math.max(-1.15, Math.min(1.15, share));
        }

        void draw() {
            double from = begin;
            double to = strip.time()[strip.time().length - 1];
            plot.add(
                    "_one" + floor,
                    new double[] {from, to},
                    new double[] {y(1), y(1)},
                    Look.SPEED,
                    Plot.Style.LINE,
                    false);
            List<double[][]> bands = new ArrayList<>();
            for (int[] run : runs()) {
                bands.add(band(run));
            }
            plot.regions(bands, Look.SPEED, true);
            for (int[] run : runs()) {
                String name = first && run[0] == 0 ? "logged" : "_logged" + floor + "-" + run[0];
                plot.add(name, part(strip.time(), run), ys(strip.ratio(), run), Look.TOTAL, Plot.Style.LINE, false);
                String fitted =
                        first && run[0] == 0 ? "with the likeliest causes" : "_explained" + floor + "-" + run[0];
                plot.add(
                        fitted,
                        part(strip.time(), run),
                        ys(strip.explained(), run),
                        Look.SECOND,
                        Plot.Style.LINE,
                        false);
            }
            int[] off = IntStream.range(0, strip.off().length)
                    .filter(i -> strip.off()[i])
                    .toArray();
            if (off.length > 0) {
                plot.add(
                        "_off" + floor,
                        Arrays.stream(off).mapToDouble(i -> strip.time()[i]).toArray(),
                        Arrays.stream(off).mapToDouble(i -> y(strip.ratio()[i])).toArray(),
                        Look.SECOND,
                        Plot.Style.POINTS,
                        false);
            }
            plot.strongLabel(
                    String.format(
                            Locale.ROOT,
                            "%s, height +/- %.0f %%%s",
                            strip.name(),
                            100 * half,
                            off.length > 0 ? ": OUTSIDE" : ""),
                    begin,
                    floor + 0.93);
            if (first) {
                runs().stream()
                        .filter(run -> strip.nitrous()[run[0]] > 0)
                        .forEach(run -> plot.markAt("nitrous on", strip.time()[run[0]]));
            }
        }

        /** Stretches in one state of the nitrous without a long gap; first and last piece of each. */
        private List<int[]> runs() {
            List<int[]> runs = new ArrayList<>();
            int begin = 0;
            for (int i = 1; i <= strip.time().length; i++) {
                boolean end = i == strip.time().length
                        || strip.nitrous()[i] != strip.nitrous()[begin]
                        || strip.time()[i] - strip.time()[i - 1] > 1;
                if (end) {
                    runs.add(new int[] {begin, i - 1});
                    begin = i;
                }
            }
            return runs;
        }

        private double[][] band(int[] run) {
            int n = run[1] - run[0] + 1;
            double[] x = new double[2 * n];
            double[] y = new double[2 * n];
            for (int i = 0; i < n; i++) {
                x[i] = strip.time()[run[0] + i];
                x[2 * n - 1 - i] = x[i];
                y[i] = y(1 + strip.band()[run[0] + i]);
                y[2 * n - 1 - i] = y(1 - strip.band()[run[0] + i]);
            }
            return new double[][] {x, y};
        }

        private static double[] part(double[] all, int[] run) {
            return Arrays.copyOfRange(all, run[0], run[1] + 1);
        }

        private double[] ys(double[] ratio, int[] run) {
            return Arrays.stream(part(ratio, run)).map(this::y).toArray();
        }
    }
}
