package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;

/**
 * Where each row stands in time. What the clock says is kept within a stretch; where the clock begins anew, a new stretch follows the
 * one before after a pause, so that nothing is joined across; rows that cannot be placed have no time.
 *
 * <ul>
 *   <li>Up to three rows whose time falls below what came before are left out (a transmission error).
 *   <li>One row whose time lies beyond those of the rows before and after it is left out likewise.
 *   <li>Rows that stand in the file once more with the same values are left out.
 *   <li>Any other fall of time begins a new stretch.
 *   <li>Where most rows carry the time of the row before with other values, the clock is coarser than the rows: they are spread
 *       evenly up to the next time.
 * </ul>
 *
 * <p>The figures are our own choice.
 */
final class RowTimes {
    /** Pause put between two stretches, s. */
    static final double PAUSE = 10;

    private static final int FEW = 3;
    private static final double MANY_SHARED = 0.4;

    private final double[] raw;
    private final Map<LogChannel, double[]> values;
    private final double[] placed;
    private final List<Integer> starts = new ArrayList<>();
    private final BitSet fallen = new BitSet();
    private final BitSet repeated = new BitSet();
    private boolean coarse;
    /** Rows still looked at ahead and back; a clock that falls at every row must not cost the square of the rows. */
    private long effort;

    RowTimes(Map<LogChannel, double[]> values) {
        this.raw = values.get(LogChannel.TIME);
        this.values = values;
        this.placed = new double[raw.length];
        Arrays.fill(placed, Double.NaN);
        this.effort = 20L * raw.length;
        place();
        if (sharesTimes()) {
            coarse = true;
            spread();
        }
    }

    /** Time of each row, s; it never falls and is NaN for rows that cannot be placed. Not to be changed. */
    double[] placed() {
        return placed;
    }

    /** First row of each stretch. */
    List<Integer> starts() {
        return List.copyOf(starts);
    }

    /** Rows left out because their time falls. */
    BitSet fallen() {
        return fallen;
    }

    /** Rows left out because they stand in the file twice. */
    BitSet repeated() {
        return repeated;
    }

    /** Whether rows were spread between the steps of a coarse clock. */
    boolean coarse() {
        return coarse;
    }

    private void place() {
        double reached = Double.NaN;
        double before = Double.NaN;
        double offset = 0;
        int last = -1;
        for (int i = 0; i < raw.length; i++) {
            double t = raw[i];
            if (Double.isNaN(t)) {
                continue;
            }
            if (t < reached && t > before && starts.get(starts.size() - 1) < last) {
                fallen.set(last);
                placed[last] = Double.NaN;
            } else if (t < reached) {
                int end = passed(i, reached);
                if (repeats(i, end)) {
                    repeated.set(i, end);
                    i = end - 1;
                    continue;
                }
                if (end - i <= FEW) {
                    fallen.set(i, end);
                    i = end - 1;
                    continue;
                }
                offset += reached - t + PAUSE;
                starts.add(i);
            } else if (Double.isNaN(reached)) {
                starts.add(i);
            }
            before = t > reached ? reached : t == reached ? before : Double.NaN;
            reached = t;
            last = i;
            placed[i] = t + offset;
        }
    }

    /** The first row from which on the time is again beyond what was reached. */
    private int passed(int from, double reached) {
        int end = from;
        while (end < raw.length && !(raw[end] > reached) && effort-- > 0) {
            end++;
        }
        return end;
    }

    /** Whether rows are those from their first time on once more, every value the same. */
    private boolean repeats(int from, int end) {
        int first = from - 1;
        while (first >= 0 && !(raw[first] <= raw[from]) && effort-- > 0) {
            first--;
        }
        while (first > 0 && raw[first - 1] == raw[from]) {
            first--;
        }
        if (first < 0 || raw[first] != raw[from] || first + end - from > from) {
            return false;
        }
        for (int k = 0; k < end - from; k++) {
            if (!same(first + k, from + k)) {
                return false;
            }
        }
        return true;
    }

    private boolean same(int a, int b) {
        return values.values().stream().allMatch(v -> v[a] == v[b] || (Double.isNaN(v[a]) && Double.isNaN(v[b])));
    }

    /** Whether most rows share their time with the row before while some channel of both has a value of its own. */
    private boolean sharesTimes() {
        int shared = 0;
        int own = 0;
        for (int i = 1; i < placed.length; i++) {
            if (placed[i] == placed[i - 1]) {
                shared++;
                own += differs(i) ? 1 : 0;
            }
        }
        return shared > 0 && 2 * own > shared && shared >= MANY_SHARED * placed.length;
    }

    private boolean differs(int i) {
        return values.entrySet().stream()
                .anyMatch(e -> e.getKey() != LogChannel.TIME && Math.abs(e.getValue()[i] - e.getValue()[i - 1]) > 0);
    }

    private void spread() {
        double step = Series.medianStep(placed);
        for (int from = 0; from < placed.length; ) {
            int to = from + 1;
            while (to < placed.length && placed[to] == placed[from]) {
                to++;
            }
            double width = to < placed.length ? Math.min(step, placed[to] - placed[from]) : step;
            double start = placed[from];
            for (int i = from; i < to && Double.isFinite(width); i++) {
                placed[i] = start + width * (i - from) / (to - from);
            }
            from = to;
        }
    }
}
