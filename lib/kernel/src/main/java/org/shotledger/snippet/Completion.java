package org.shotledger.snippet;

import java.util.List;

/**
 * What can stand at a place of a cell.
 *
 * @param matches texts, best first
 * @param start where the text they replace starts, in UTF-16 units
 * @param end where it ends
 */
public record Completion(List<String> matches, int start, int end) {

    /** Copies the matches. */
    public Completion {
        matches = List.copyOf(matches);
    }
}
