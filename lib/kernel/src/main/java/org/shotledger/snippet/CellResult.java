package org.shotledger.snippet;

import java.util.List;

/**
 * How the evaluation of one cell ended.
 *
 * @param hasValue whether the cell ended in an expression whose value is to be shown
 * @param value that value, possibly null
 * @param error why the cell failed, or null
 * @param notes sentences the reader must see, such as variables that could not keep their value
 */
public record CellResult(boolean hasValue, Object value, CellError error, List<String> notes) {

    public CellResult {
        notes = List.copyOf(notes);
    }

    /**
     * Whether the cell ran to its end.
     *
     * @return true if there is no error
     */
    public boolean ok() {
        return error == null;
    }
}
