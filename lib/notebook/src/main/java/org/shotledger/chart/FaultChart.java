package org.shotledger.chart;

import java.util.List;
import org.shotledger.limits.Side;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How far each fault throws the mixture, from the richest to the leanest cylinder, and whether it is caught in time.
 *
 * @param faults the faults, in the order in which they are to be read
 * @param planned lambda of the plan
 * @param rich richest lambda allowed
 * @param lean leanest lambda allowed
 */
public record FaultChart(List<Fault> faults, double planned, double rich, double lean) {
    /** Beyond this a mixture hardly burns, and the axis ends. */
    private static final double LEANEST_SHOWN = 1.6;

    private static final double RICHEST_SHOWN = 0.35;
    private static final double ROOM = 0.03;

    /**
     * One fault.
     *
     * @param name its name
     * @param answer how it ends, in words
     * @param richest lambda of the richest cylinder
     * @param leanest lambda of the leanest cylinder
     * @param saved true when the engine comes out unhurt
     */
    public record Fault(String name, String answer, double richest, double leanest, boolean saved) {}

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when there is no fault
     */
    public FaultChart {
        faults = List.copyOf(faults);
        if (faults.isEmpty()) {
            throw new IllegalArgumentException("There is no fault to draw; give at least one.");
        }
    }

    /**
     * Draws one bar for each fault; those that hurt the engine are hatched.
     *
     * @param system the units shown
     * @return the picture
     */
    public ChartPicture picture(UnitSystem system) {
        int rows = faults.size();
        Scale axis = new Scale("Lambda, from the richest to the leanest cylinder", QuantityKind.RATIO, system);
        Plot plot = Plot.of(
                        "faults",
                        "How far each fault throws the mixture",
                        alt(),
                        axis,
                        new Scale("", QuantityKind.COUNT, system))
                .rows(rows)
                .markAt("plan", planned)
                .limitAt("richest", rich, Side.AT_LEAST)
                .limitAt("leanest", lean, Side.AT_MOST);
        for (int i = 0; i < rows; i++) {
            Fault fault = faults.get(i);
            double low = held(Math.min(fault.richest, planned));
            double high = held(Math.max(fault.leanest, planned));
            plot.reach(low - ROOM, Double.NaN).reach(high + ROOM, Double.NaN);
            plot.mark(new BarMark(
                    fault.name + ": " + fault.answer,
                    i,
                    rows,
                    low,
                    high,
                    fault.saved ? Look.THIRD : Look.SECOND,
                    fault.saved ? 0 : 5));
        }
        return plot.key("the engine bears it or it is caught in time", Look.THIRD, false)
                .key("not caught in time", Look.SECOND, true)
                .picture();
    }

    private static double held(double lambda) {
        return Math.min(Math.max(lambda, RICHEST_SHOWN), LEANEST_SHOWN);
    }

    private String alt() {
        long hurt = faults.stream().filter(f -> !f.saved).count();
        return "Of " + faults.size() + " faults " + hurt
                + " are not caught in time; the plan's lambda is "
                + QuantityKind.RATIO.text(planned, UnitSystem.SI) + ", allowed is "
                + QuantityKind.RATIO.text(rich, UnitSystem.SI) + " to " + QuantityKind.RATIO.text(lean, UnitSystem.SI)
                + ".";
    }
}
