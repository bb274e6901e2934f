package org.shotledger.snippet;

/**
 * One snippet of a cell.
 *
 * @param source its text, as the compiler is given it
 * @param offset where it starts in the cell, in UTF-16 units
 * @param complete false if the text cannot be parsed as it is
 */
record Piece(String source, int offset, boolean complete) {}
