package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Kind;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;

/** Declares to a fresh compiler what a broken one held. Variables are declared without what computes their values, which they keep. */
final class Rebuild {

    private final JavaSession session;
    private final Origins known;
    private final List<String> notes = new ArrayList<>();

    Rebuild(JavaSession session, Origins known) {
        this.session = session;
        this.known = known;
    }

    /** Imports first, then what can be declared in any order, then the variables, whose types are there by then. */
    List<String> declare(List<Snippet> held) {
        Map<String, Object> values = new HashMap<>();
        for (Snippet snippet : held) {
            if (snippet instanceof VarSnippet variable) {
                values.put(variable.name(), session.control().variables().value(variable.name()));
            }
        }
        for (Kind kind : List.of(Kind.IMPORT, Kind.TYPE_DECL, Kind.METHOD, Kind.VAR)) {
            held.stream().filter(snippet -> snippet.kind() == kind).forEach(snippet -> declare(snippet, values));
        }
        return notes;
    }

    private void declare(Snippet snippet, Map<String, Object> values) {
        String source = snippet instanceof VarSnippet variable
                ? variable.typeName() + " " + variable.name() + ";"
                : snippet.source();
        SnippetEvent event = session.shell().eval(source).get(0);
        session.origins().adopt(event.snippet(), snippet, known);
        if (event.status() == Status.VALID) {
            session.keep(event.snippet());
        }
        if (snippet instanceof VarSnippet variable) {
            Object value = values.get(variable.name());
            boolean kept = event.status() == Status.VALID
                    && (value == null || session.control().variables().giveBack(variable.name(), value));
            if (!kept) {
                if (event.status() == Status.VALID) {
                    session.shell().drop(event.snippet()); // rather not there than without its value
                }
                session.control().variables().forget(variable.name());
                notes.add("The value of " + variable.name() + " is lost. Run the cell that makes it again.");
            }
        } else if (event.status() == Status.REJECTED && snippet instanceof DeclarationSnippet declared) {
            notes.add(declared.name() + " is lost. Run the cell that declares it again.");
        }
    }
}
