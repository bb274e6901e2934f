package org.shotledger.logs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds how a log is laid out: for each mark that may part cells it looks for rows of values that agree in their number of cells,
 * for the headings above them, and takes the mark under which both agree best.
 *
 * <p>A row is one of values when at least six in ten of its filled cells are numbers, clock times, words for on and off or signs
 * for "no value"; our choice.
 */
final class LayoutSearch {
    private static final double VALUES = 0.6;
    private static final char[] MARKS = {'\t', ';', ','};

    private final List<String> lines;
    private final int headingAt;

    private LayoutSearch(List<String> lines, int headingAt) {
        this.lines = lines;
        this.headingAt = headingAt;
    }

    /**
     * Looks.
     *
     * @param lines the first lines of the log
     * @param before lines above the headings where the reader was told so; 0 where they are to be found
     * @param after lines under the headings where the reader was told so; 0 likewise
     */
    static LogLayout of(List<String> lines, int before, int after) {
        LayoutSearch search = new LayoutSearch(lines, before > 0 ? firstFilled(lines, before) : -1);
        Trial best = null;
        for (char mark : MARKS) {
            Trial trial = search.under(mark);
            if (best == null || trial.rank() > best.rank()) {
                best = trial;
            }
        }
        return best.rank() > 0 ? search.layout(best, after) : search.plain(after);
    }

    private static int firstFilled(List<String> lines, int from) {
        int at = from;
        while (at < lines.size() && empty(lines.get(at))) {
            at++;
        }
        return at;
    }

    private static boolean empty(String line) {
        return line.isBlank() || line.startsWith("#");
    }

    /** What one mark gives: the width on which headings and most rows of values agree. */
    private record Trial(char mark, int heading, int first, int width, int rows) {
        double rank() {
            return heading < 0 ? 0 : rows * (width > 1 ? 1 : 0.01) + (width > 1 ? 0.001 * width : 0);
        }
    }

    private Trial under(char mark) {
        Map<Integer, Integer> rows = new HashMap<>();
        int[] widths = new int[lines.size()];
        for (int i = Math.max(headingAt, 0); i < widths.length; i++) {
            List<String> cells = empty(lines.get(i)) ? List.of() : LogLayout.cells(lines.get(i), mark);
            widths[i] = cells.isEmpty() ? 0 : isOfValues(cells) ? cells.size() : -cells.size();
            if (widths[i] > 0) {
                rows.merge(widths[i], 1, Integer::sum);
            }
        }
        Trial best = new Trial(mark, -1, -1, 0, 0);
        for (Map.Entry<Integer, Integer> entry : rows.entrySet()) {
            Trial trial = of(mark, widths, entry.getKey(), entry.getValue());
            if (trial.rank() > best.rank()) {
                best = trial;
            }
        }
        return best;
    }

    /** The first row of a width that is not all alone, and the nearest line of words above it that is as wide. */
    private Trial of(char mark, int[] widths, int width, int count) {
        int first = 0;
        while (widths[first] != width) {
            first++;
        }
        for (int i = first - 1; i >= 0; i--) {
            // a mark at the end of each row makes one more cell, empty, than there are headings
            if (headingAt < 0 ? -widths[i] == width || (-widths[i] == width - 1 && width > 2) : i == headingAt) {
                return new Trial(mark, i, first, width, count);
            }
        }
        return new Trial(mark, -1, first, width, count);
    }

    private static boolean isOfValues(List<String> cells) {
        int filled = 0;
        int values = 0;
        boolean any = false;
        for (String cell : cells) {
            boolean number = LogNumber.isNumber(cell) || Clock.looksLike(cell);
            any |= number;
            filled += cell.isEmpty() ? 0 : 1;
            values += !cell.isEmpty() && (number || LogNumber.saysNothing(cell) || !Double.isNaN(Flag.read(cell)))
                    ? 1
                    : 0;
        }
        return any && values >= VALUES * filled;
    }

    private LogLayout layout(Trial trial, int after) {
        int heading = trial.heading();
        List<String> units = List.of();
        if (headingAt < 0) {
            Optional<List<String>> under = UnitsRow.in(LogLayout.cells(lines.get(heading), trial.mark()));
            int above = heading - 1;
            while (above >= 0 && empty(lines.get(above))) {
                above--;
            }
            if (under.isPresent()
                    && above >= 0
                    && LogLayout.cells(lines.get(above), trial.mark()).size() == trial.width()) {
                units = under.get();
                heading = above;
            }
        } else if (heading + 1 < lines.size()) {
            units = UnitsRow.in(LogLayout.cells(lines.get(heading + 1), trial.mark()))
                    .orElse(List.of());
        }
        int under = after > 0 ? after : units.isEmpty() ? 0 : 1;
        return decimals(trial.mark(), heading, under, units, trial.first());
    }

    /** No rows of values: the first line is the headings, parted as they are. */
    private LogLayout plain(int after) {
        int heading = headingAt < 0 ? firstFilled(lines, 0) : headingAt;
        String line = heading < lines.size() ? lines.get(heading) : "";
        char mark = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        return decimals(mark, Math.min(heading, lines.size()), after, List.of(), heading + 1);
    }

    private LogLayout decimals(char mark, int heading, int after, List<String> units, int first) {
        List<int[]> columns = new ArrayList<>();
        for (int i = first; i < lines.size(); i++) {
            List<String> cells = empty(lines.get(i)) ? List.of() : LogLayout.cells(lines.get(i), mark);
            for (int c = 0; c < cells.size(); c++) {
                if (c == columns.size()) {
                    columns.add(new int[3]);
                }
                columns.get(c)[0] += LogNumber.evidence(cells.get(c));
                columns.get(c)[1] += LogNumber.readsEitherWay(cells.get(c)) ? 1 : 0;
                columns.get(c)[2] += Clock.looksLike(cells.get(c)) ? 1 : 0;
            }
        }
        int sum = columns.stream().mapToInt(c -> Integer.signum(c[0])).sum();
        boolean usual = sum == 0 ? mark != ',' : sum > 0;
        List<Integer> undecided = new ArrayList<>();
        List<Boolean> commas = new ArrayList<>();
        for (int c = 0; c < columns.size(); c++) {
            int evidence = columns.get(c)[0];
            commas.add(evidence == 0 ? usual : evidence > 0);
            if (evidence == 0 && sum == 0 && columns.get(c)[1] > 0) {
                undecided.add(c + 1);
            }
        }
        List<Integer> clocks = IntStream.range(0, columns.size())
                .filter(c -> columns.get(c)[2] > 0)
                .mapToObj(c -> c + 1)
                .toList();
        return new LogLayout(mark, heading, after, units, commas, undecided, clocks);
    }
}
