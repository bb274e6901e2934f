package org.shotledger.snippet;

import java.util.List;

/**
 * Why a cell failed.
 *
 * @param name short name of the kind of error, such as an exception's simple class name
 * @param message one sentence
 * @param report lines for a person: the sentence, the place as {@code In [4], line 2}, the source line, a caret
 * @param cause what was thrown, or null if the cell did not compile
 */
public record CellError(String name, String message, List<String> report, Throwable cause) {

    public CellError {
        report = List.copyOf(report);
    }
}
