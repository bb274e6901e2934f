package org.shotledger.pass;

import java.util.List;

/**
 * What a pass gave.
 *
 * @param marks in the order of the strip
 * @param nitrousSeconds time with nitrous flowing, s
 * @param nitrousUsed kg
 * @param shifts times of the shifts since the car moved, s
 * @param trace rows in order of time
 * @param energy the energy balance
 */
public record PassResult(
        List<PassMark> marks,
        double nitrousSeconds,
        double nitrousUsed,
        List<Double> shifts,
        List<PassRow> trace,
        PassEnergy energy) {
    public PassResult {
        marks = List.copyOf(marks);
        shifts = List.copyOf(shifts);
        trace = List.copyOf(trace);
    }

    /**
     * The finish.
     *
     * @return its mark
     */
    public PassMark finish() {
        return marks.get(marks.size() - 1);
    }
}
