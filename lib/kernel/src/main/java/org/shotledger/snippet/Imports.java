package org.shotledger.snippet;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.SourceVersion;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;

/**
 * What every cell may name without importing it. The imports are made when a cell first names something that neither Java itself nor
 * an earlier cell knows: they cost a quarter of a second and slow every cell after them, which plain Java need not pay.
 */
final class Imports {
    /** A name that does not follow a dot; words in texts and comments are found as well, which does no harm. */
    private static final Pattern NAME = Pattern.compile(
            "(?<![\\p{javaJavaIdentifierPart}.])\\p{javaJavaIdentifierStart}\\p{javaJavaIdentifierPart}*");

    private final JShell shell;
    private final List<String> declarations;
    private boolean made;

    Imports(JShell shell, List<String> declarations) {
        this.shell = shell;
        this.declarations = declarations;
        this.made = declarations.isEmpty();
    }

    /** Makes the imports if a cell needs them; those made now with their snippet, none otherwise. */
    Map<String, Snippet> madeFor(String source) {
        return made || !needs(source) ? Map.of() : make();
    }

    boolean areMade() {
        return made;
    }

    private boolean needs(String source) {
        Set<String> declared = new HashSet<>();
        shell.variables().forEach(s -> declared.add(s.name()));
        shell.methods().forEach(s -> declared.add(s.name()));
        shell.types().forEach(s -> declared.add(s.name()));
        Matcher names = NAME.matcher(source);
        while (names.find()) {
            String name = names.group();
            if (!SourceVersion.isKeyword(name) && !declared.contains(name) && !isPlain(name)) {
                return true;
            }
        }
        return false;
    }

    /** A type of java.lang, or the word that lets the compiler find the type. */
    private static boolean isPlain(String name) {
        if (name.equals("var")) {
            return true;
        }
        try {
            Class.forName("java.lang." + name, false, null);
            return true;
        } catch (ClassNotFoundException | LinkageError unknown) {
            return false;
        }
    }

    /**
     * Makes them all, with one snippet: each snippet costs as much as a cell.
     *
     * @return the declarations with that snippet, so that a cell which repeats one of them does not replace them all
     * @throws IllegalArgumentException if one does not compile
     */
    Map<String, Snippet> make() {
        if (made) {
            return Map.of();
        }
        made = true;
        Snippet all = shell.eval(String.join(" ", declarations)).get(0).snippet();
        if (shell.status(all) != Status.VALID) {
            throw new IllegalArgumentException("the session cannot start with \"" + all.source() + "\": "
                    + shell.diagnostics(all)
                            .map(d -> d.getMessage(Locale.ROOT))
                            .findFirst()
                            .orElse("no reason given"));
        }
        return declarations.stream().collect(Collectors.toMap(d -> d, d -> all, (one, same) -> one));
    }
}
