package org.shotledger.logs;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Finds sensors at their end and sensors that stand still.
 *
 * <p>Both are runs of one and the same value much longer than the usual run of that channel, so that a coarse resolution alone is no
 * finding. At the channel's own least or greatest value the run is called clipped; elsewhere it is called frozen when the engine
 * speed moves meanwhile. The lengths below are our own choice, not a standard's.
 */
final class StuckCheck {
    /** Samples; runs beyond it are told apart no further. */
    private static final int LONGEST_COUNTED = 1024;
    /** Samples in a run that can be a finding at all. */
    private static final int FEWEST = 8;
    /** Times the channel's usual run. */
    private static final double USUAL_TIMES = 6;
    /** Time at the end of a channel that follows the engine, s. */
    private static final double FAST_CLIPPED = 0.1;
    /** Time at one value elsewhere, s, while the speed moves by {@link #FAST_RPM}. */
    private static final double FAST_FROZEN = 0.5;

    private static final double FAST_RPM = 300;
    /** The same for temperatures and the bottle, s. */
    private static final double SLOW_CLIPPED = 2;
    /** The same for temperatures and the bottle, s, while the speed moves by {@link #SLOW_RPM}. */
    private static final double SLOW_FROZEN = 8;

    private static final double SLOW_RPM = 2000;
    /** Their least value is that of a standing or idling engine. */
    private static final Set<LogChannel> REST = EnumSet.of(
            LogChannel.ENGINE_SPEED,
            LogChannel.WHEEL_POWER,
            LogChannel.CRANK_POWER,
            LogChannel.WHEEL_TORQUE,
            LogChannel.CRANK_TORQUE,
            LogChannel.INJECTOR_DUTY);

    private final EngineLog log;
    private final LogChannel channel;
    private final int[] rows;
    private final double[] values;
    private final double[] time;
    private final double[] rpm;
    private final BitSet tainted;
    private double least = Double.POSITIVE_INFINITY;
    private double greatest = Double.NEGATIVE_INFINITY;
    private int runs;

    StuckCheck(EngineLog log, LogChannel channel, ChannelRows samples, BitSet tainted) {
        this.log = log;
        this.channel = channel;
        this.rows = samples.rows();
        this.values = samples.values();
        this.time = samples.time();
        this.rpm = log.has(LogChannel.ENGINE_SPEED) ? log.raw(LogChannel.ENGINE_SPEED) : null;
        this.tainted = tainted;
    }

    List<Finding> findings() {
        int usual = usualRun();
        Spans top = clipped("greatest", greatest);
        Spans bottom = clipped("least", least);
        Spans frozen = new Spans(
                log,
                Finding.Kind.FROZEN,
                channel.words(),
                "does not move while the engine speed does",
                "the sensor or its line stands still, the true value is not known");
        int shortest = (int) Math.max(FEWEST, USUAL_TIMES * usual);
        for (int from = 0; from < values.length; ) {
            int to = end(from);
            if (to - from + 1 >= shortest) {
                sort(from, to, top, bottom, frozen);
            }
            from = to + 1;
        }
        List<Finding> findings = new ArrayList<>(top.findings());
        findings.addAll(bottom.findings());
        findings.addAll(frozen.findings());
        return findings;
    }

    private void sort(int from, int to, Spans top, Spans bottom, Spans frozen) {
        boolean slow = channel.pace() == LogChannel.Pace.SLOW;
        double lasts = time[to] - time[from];
        boolean varies = runs > 2;
        if (varies && values[from] == greatest) {
            mark(top, from, to, lasts >= (slow ? SLOW_CLIPPED : FAST_CLIPPED));
        } else if (varies && values[from] == least) {
            mark(bottom, from, to, !REST.contains(channel) && lasts >= (slow ? SLOW_CLIPPED : FAST_CLIPPED));
        } else {
            boolean moved = rpm != null
                    && channel != LogChannel.ENGINE_SPEED
                    && moves(from, to) >= (slow ? SLOW_RPM : FAST_RPM);
            mark(frozen, from, to, moved && lasts >= (slow ? SLOW_FROZEN : FAST_FROZEN));
        }
    }

    private void mark(Spans spans, int from, int to, boolean is) {
        if (is) {
            spans.add(rows[from], rows[to]);
            for (int k = from; k <= to; k++) {
                tainted.set(rows[k]);
            }
        }
    }

    private double moves(int from, int to) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = rows[from]; i <= rows[to]; i++) {
            if (!Double.isNaN(rpm[i])) {
                low = Math.min(low, rpm[i]);
                high = Math.max(high, rpm[i]);
            }
        }
        return high - low;
    }

    private Spans clipped(String end, double value) {
        return new Spans(
                log,
                Finding.Kind.CLIPPED,
                channel.words(),
                "stands at its " + end + " value, " + Spans.value(channel, value) + ",",
                "the sensor is at its end or its signal is limited, the true value is not known");
    }

    private int end(int from) {
        int to = from;
        while (to + 1 < values.length && values[to + 1] == values[from]) {
            to++;
        }
        return to;
    }

    /** Median length of the runs of one value; notes least and greatest value on the way. */
    private int usualRun() {
        int[] count = new int[LONGEST_COUNTED + 1];
        for (int from = 0; from < values.length; ) {
            int to = end(from);
            count[Math.min(LONGEST_COUNTED, to - from + 1)]++;
            runs++;
            least = Math.min(least, values[from]);
            greatest = Math.max(greatest, values[from]);
            from = to + 1;
        }
        int passed = 0;
        for (int length = 1; length <= LONGEST_COUNTED; length++) {
            passed += count[length];
            if (2 * passed >= runs) {
                return runs > 2 ? length : 1;
            }
        }
        return 1;
    }
}
