package org.shotledger.snippet;

import java.util.List;

/**
 * What can stand at a place of a cell.
 *
 * @param matches texts, best first
 * @param start where the text they replace starts, in UTF-16 units
 * @param end where it ends
 * @param kinds what each match is: {@code class}, {@code function}, {@code instance}, {@code keyword}, {@code module} or {@code path}
 */
public record Completion(List<String> matches, int start, int end, List<String> kinds) {

    public Completion {
        matches = List.copyOf(matches);
        kinds = List.copyOf(kinds);
    }

    /** Nothing fits. */
    static Completion none(int cursor) {
        return new Completion(List.of(), cursor, cursor, List.of());
    }
}
