package org.shotledger.logs;

/**
 * Where a channel stands in a file, for logs whose headings are not ours.
 *
 * @param channel the channel
 * @param heading the heading of its column, without a unit in brackets
 * @param unit the unit of its cells; empty for a pure number, and where the file says it
 * @param stoichiometric air-fuel ratio by mass of the fuel at lambda 1, where the column holds an air-fuel ratio; NaN where it holds
 *     lambda
 * @param on the word in a cell that means on, every other meaning off; empty where the usual words or 0 and 1 stand
 * @param reads what the sensor reads of the truth, as a factor; 1 where nothing is known
 * @param offset what the gauge reads too much, SI; 0 where nothing is known
 * @param line line of the mapping that says so, from 1; 0 when no file does
 */
public record LogColumn(
        LogChannel channel,
        String heading,
        String unit,
        double stoichiometric,
        String on,
        double reads,
        double offset,
        int line) {

    /** A column whose sensor is taken to read true. */
    static LogColumn of(LogChannel channel, String heading, String unit, double stoichiometric) {
        return new LogColumn(channel, heading, unit, stoichiometric, "", 1, 0, 0);
    }
}
