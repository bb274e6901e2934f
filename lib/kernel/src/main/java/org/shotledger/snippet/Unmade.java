package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.List;

/** Says why the compiler made no class of something it had nothing against: it is too large for one. */
final class Unmade {

    private Unmade() {}

    static CellError reason(Cell cell, int offset) {
        Place place = cell.placeAt(offset);
        String sentence = "this is too large to be compiled: a method may have 65,535 bytes of code and a class 65,535"
                + " constants. Cut it into several, or read large data from a file.";
        List<String> lines = new ArrayList<>();
        lines.add(place.heading() + ": " + sentence);
        lines.addAll(place.excerpt());
        return new CellError("CompileError", sentence, lines, null);
    }
}
