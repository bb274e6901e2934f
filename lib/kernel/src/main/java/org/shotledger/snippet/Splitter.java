package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.List;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** Cuts a cell into the snippets the compiler takes one at a time. */
final class Splitter {

    private final SourceCodeAnalysis analysis;

    Splitter(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    List<Piece> split(String cell) {
        List<Piece> pieces = new ArrayList<>();
        String rest = cell;
        while (!rest.isBlank()) {
            CompletionInfo info = analysis.analyzeCompletion(rest);
            int at = cell.length() - rest.length();
            switch (info.completeness()) {
                case EMPTY -> {
                    return pieces;
                }
                case COMPLETE, COMPLETE_WITH_SEMI -> {
                    pieces.add(OpenRecords.opened(new Piece(info.source(), at, true)));
                    rest = info.remaining();
                }
                case CONSIDERED_INCOMPLETE -> {
                    // could go on, but stands for itself as well; it is always the last
                    pieces.add(OpenRecords.opened(new Piece(info.source(), at, true)));
                    return pieces;
                }
                case DEFINITELY_INCOMPLETE, UNKNOWN -> {
                    pieces.add(new Piece(rest, at, false));
                    return pieces;
                }
            }
        }
        return pieces;
    }
}
