package org.shotledger.logs;

/**
 * One thing that is wrong with a log, or that a reader should know; nothing of it has been repaired.
 *
 * @param kind what it is
 * @param channel the channel or column, in words; empty when the whole log is meant
 * @param from time at which it begins, s; NaN when it has no time
 * @param to time at which it ends, s; NaN likewise
 * @param count how many samples, steps or columns it touches
 * @param sentence what is wrong, where, the values, and what to do, in one sentence
 */
public record Finding(Kind kind, String channel, double from, double to, int count, String sentence) {

    /** What can be wrong with a log. */
    public enum Kind {
        /** A channel that the comparison with a plan needs is not there. */
        MISSING_CHANNEL("missing channel"),
        /** A column whose heading is no channel. */
        UNKNOWN_COLUMN("unknown column"),
        /** Channels of one kind stand in different units. */
        MIXED_UNITS("mixed units"),
        /** What a later step will not be able to say. */
        MISSED_LATER("missed later"),
        /** Numbers that can be thousands or decimals. */
        DECIMAL_UNDECIDED("decimal mark undecided"),
        /** Lines that are no rows, such as titles of further parts. */
        LINES_BETWEEN("lines between"),
        /** The last row breaks off. */
        CUT_SHORT("cut short"),
        /** Rows with more or fewer cells than headings. */
        TORN_ROW("torn row"),
        /** The clock begins anew. */
        CLOCK_RESTARTS("clock restarts"),
        /** Rows that stand in the file once more. */
        ROWS_REPEATED("rows repeated"),
        /** Several rows in turn carry one time. */
        COARSE_CLOCK("coarse clock"),
        /** A channel is logged at fewer times than there are rows. */
        OWN_RATE("own rate"),
        /** Time falls. */
        TIME_FALLS("time falls"),
        /** Two rows have the same time. */
        TIME_TWICE("time twice"),
        /** No rows for longer than usual. */
        GAP("gap"),
        /** Empty cells. */
        NO_VALUE("no value"),
        /** Values no sound sensor on a living engine reads in this unit. */
        IMPLAUSIBLE("implausible"),
        /** Values that look like another unit or reference. */
        SUSPECT_UNIT("suspect unit"),
        /** A channel stands at its own end value. */
        CLIPPED("clipped"),
        /** A channel stands still while the engine moves. */
        FROZEN("frozen");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * The kind in words.
         *
         * @return for example {@code "no value"}
         */
        public String words() {
            return words;
        }
    }
}
