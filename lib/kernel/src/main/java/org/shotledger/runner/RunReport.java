package org.shotledger.runner;

import java.util.Optional;
import org.shotledger.ipynb.NotebookCell;
import org.shotledger.snippet.CellError;

/**
 * How a notebook's run ended.
 *
 * @param failing the cell that stopped it, if one did
 * @param error why, or null
 * @param verdict the last verdict a cell's value carried
 */
record RunReport(Optional<NotebookCell> failing, CellError error, Optional<String> verdict) {

    boolean ok() {
        return failing.isEmpty();
    }
}
