package org.shotledger.snippet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The types that pieces of a cell declare. */
final class TypeNames {

    private static final String MODIFIERS =
            "(?:(?:public|private|protected|static|final|abstract|strictfp|sealed|non-sealed|@\\w+(?:\\([^)]*\\))?)\\s+)*";

    private static final Pattern TYPE =
            Pattern.compile(MODIFIERS + "(?:class|interface|@interface|enum|record)\\s+(\\w+)");

    private TypeNames() {}

    static Set<String> in(List<Piece> pieces) {
        Set<String> found = new LinkedHashSet<>();
        pieces.forEach(piece -> found.addAll(in(piece.source())));
        return found;
    }

    /** The type that one piece declares; nothing if it is something else. */
    static Set<String> in(String source) {
        Matcher type = TYPE.matcher(source).region(afterComments(source), source.length());
        return type.lookingAt() ? Set.of(type.group(1)) : Set.of();
    }

    private static int afterComments(String source) {
        int at = 0;
        while (at < source.length() && (Character.isWhitespace(source.charAt(at)) || source.charAt(at) == '/')) {
            at = TextLiterals.end(source, at);
        }
        return at;
    }
}
