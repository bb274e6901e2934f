package org.shotledger.chart;

import java.util.Comparator;
import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How much one result moves when each input moves from its low to its high value, the strongest input on top.
 *
 * @param result the result, for example {@code "Power at the wheels"}
 * @param kind its kind
 * @param base the result with all inputs as expected, SI
 * @param inputs the inputs
 */
public record TornadoChart(String result, QuantityKind kind, double base, List<Input> inputs) {

    /**
     * One input.
     *
     * @param name the input and by how much it was moved, for example {@code "discharge coefficient, 0.75 to 0.85"}
     * @param low the result with the input at its low value, SI
     * @param high the result with the input at its high value, SI
     */
    public record Input(String name, double low, double high) {
        /**
         * How much the result moves.
         *
         * @return the absolute difference of both results, SI
         */
        public double swing() {
            return Math.abs(high - low);
        }
    }

    /**
     * Copies the inputs and puts the strongest first.
     *
     * @throws IllegalArgumentException when there is no input
     */
    @SuppressWarnings("doclint:missing")
    public TornadoChart {
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException("There is no input to draw; give at least one.");
        }
        inputs = inputs.stream()
                .sorted(Comparator.comparingDouble(Input::swing).reversed())
                .toList();
    }

    /**
     * Draws two bars for each input: plain for its low value, hatched for its high value.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        Scale axis = new Scale(result, kind, system);
        Input first = inputs.get(0);
        String alt = "Expected: " + kind.text(base, system) + ". The strongest input is " + first.name() + ": from "
                + kind.text(first.low, system) + " to " + kind.text(first.high, system) + ".";
        Plot plot = Plot.of(
                        "tornado", "What moves the result most", alt, axis, new Scale("", QuantityKind.COUNT, system))
                .rows(inputs.size())
                .markAt("", base);
        for (int i = 0; i < inputs.size(); i++) {
            Input input = inputs.get(i);
            plot.mark(
                    new BarMark(input.name, i, inputs.size(), axis.shown(base), axis.shown(input.low), Look.FIRST, 0));
            plot.mark(new BarMark("", i, inputs.size(), axis.shown(base), axis.shown(input.high), Look.FIFTH, 6));
            plot.reach(input.low, Double.NaN).reach(input.high, Double.NaN);
        }
        double room = 0.06 * inputs.get(0).swing();
        return plot.reach(least() - room, Double.NaN)
                .reach(greatest() + room, Double.NaN)
                .key("input at its low value", Look.FIRST, false)
                .key("input at its high value", Look.FIFTH, true)
                .picture();
    }

    private double least() {
        return inputs.stream().mapToDouble(i -> Math.min(i.low, i.high)).min().orElse(base);
    }

    private double greatest() {
        return inputs.stream().mapToDouble(i -> Math.max(i.low, i.high)).max().orElse(base);
    }
}
