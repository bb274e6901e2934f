package org.shotledger.snippet;

import java.util.List;

/**
 * One snippet of a cell.
 *
 * @param source its text, as the compiler is given it
 * @param offset where it starts in the cell, in UTF-16 units
 * @param complete false if the text cannot be parsed as it is
 * @param inserted places of the text where {@link OpenRecords} put a word that the cell has not
 */
record Piece(String source, int offset, boolean complete, List<Integer> inserted) {

    Piece(String source, int offset, boolean complete) {
        this(source, offset, complete, List.of());
    }

    /** Where a position of the text lies in the cell's. */
    int ownPosition(int position) {
        return OpenRecords.inOwnText(position, inserted);
    }
}
