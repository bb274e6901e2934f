package org.shotledger.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Shares of a table's width, so that a column of long sentences does not press the others into a word a line. A cell of n letters in a
 * column w wide takes n / w lines; all columns together are lowest where each is as wide as the root of its letters.
 */
final class Widths {
    /** Letters beside the longest word, for the room at both sides of a cell. */
    private static final int AROUND = 2;

    /** Letters that a column of one mean letter is wide: by eye, on the project's own pages. */
    private static final double ROOT = 4.5;

    /** Letters that a page is wide, about: what fits sets itself well. */
    private static final int LINE = 118;

    /** Tables whose words are all shorter set themselves well. */
    private static final double SHORT = 14;

    private Widths() {}

    /** A group of columns with their shares; nothing where no column holds sentences. */
    static String of(Flat flat) {
        int columns = flat.heads().size();
        int line =
                IntStream.range(0, columns).map(i -> AROUND + widest(flat, i)).sum();
        double[] mean =
                IntStream.range(0, columns).mapToDouble(i -> mean(flat, i)).toArray();
        if (line <= LINE || Arrays.stream(mean).noneMatch(letters -> letters > SHORT)) {
            return "";
        }
        double[] wide = IntStream.range(0, columns)
                .mapToDouble(i -> Math.max(longest(flat, i) + AROUND, ROOT * Math.sqrt(mean[i])))
                .toArray();
        double all = Arrays.stream(wide).sum();
        StringBuilder out = new StringBuilder("<colgroup>");
        for (double one : wide) {
            out.append(String.format(Locale.ROOT, "<col style=\"width:%.1f%%\"/>", 100 * one / all));
        }
        return out.append("</colgroup>").toString();
    }

    private static double mean(Flat flat, int column) {
        return cells(flat, column)
                .mapToInt(value -> value.words().length())
                .average()
                .orElse(0);
    }

    private static int widest(Flat flat, int column) {
        return cells(flat, column)
                .mapToInt(value -> value.words().length())
                .max()
                .orElse(0);
    }

    private static int longest(Flat flat, int column) {
        Stream<String> words = Stream.concat(
                Arrays.stream(flat.heads().get(column).words().split(" ")),
                cells(flat, column)
                        .flatMap(value -> Arrays.stream(
                                value.words().split(value.cell() instanceof Cell.Figure ? HtmlForm.BREAKS : " "))));
        return words.mapToInt(String::length).max().orElse(0);
    }

    private static Stream<Flat.Value> cells(Flat flat, int column) {
        return flat.rows().stream().map(row -> row.get(column));
    }
}
