package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The compiler makes each record of a cell public, and then refuses a constructor of the record's own components that is not: it
 * gets the word that the language asks for.
 */
final class OpenRecords {

    private static final Pattern RECORD = Pattern.compile("\\brecord\\s+(\\w+)\\s*[<(]");
    private static final String WORD = "public ";

    private OpenRecords() {}

    /** The piece with public constructors, if it declares a record. */
    static Piece opened(Piece piece) {
        Matcher record = RECORD.matcher(piece.source());
        if (!record.find() || TypeNames.in(piece.source()).stream().noneMatch(record.group(1)::equals)) {
            return piece;
        }
        Matcher constructor =
                Pattern.compile("[{};]\\s*(?=" + record.group(1) + "\\s*[({])").matcher(piece.source());
        StringBuilder source = new StringBuilder();
        List<Integer> inserted = new ArrayList<>();
        int from = 0;
        while (constructor.find(from == 0 ? record.end() : from)) {
            source.append(piece.source(), from, constructor.end());
            inserted.add(source.length());
            source.append(WORD);
            from = constructor.end();
        }
        source.append(piece.source(), from, piece.source().length());
        return new Piece(source.toString(), piece.offset(), piece.complete(), inserted);
    }

    /** The position in the cell's own text of a position in the piece. */
    static int inOwnText(int position, List<Integer> inserted) {
        int own = position;
        for (int at : inserted) {
            own -= Math.max(0, Math.min(WORD.length(), position - at));
        }
        return own;
    }
}
