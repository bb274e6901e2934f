package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.SnippetEvent;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** What a cell does to what was there before: undone where the cell failed, told where it cannot be undone. */
final class Aftermath {

    private final JavaSession session;
    private final CellControl control;
    private final Cell cell;
    private final List<String> notes = new ArrayList<>();
    private final Map<DeclarationSnippet, Integer> waiting = new LinkedHashMap<>();
    private final Map<DeclarationSnippet, List<Snippet>> before = new LinkedHashMap<>();
    private final Set<DeclarationSnippet> touched = new LinkedHashSet<>();
    private final List<TypeDeclSnippet> dropped = new ArrayList<>();

    Aftermath(JavaSession session, Cell cell) {
        this.session = session;
        this.control = session.control();
        this.cell = cell;
    }

    List<String> notes() {
        return notes;
    }

    void note(String sentence) {
        notes.add(sentence);
    }

    /** A declaration that is not whole yet. */
    void wait(DeclarationSnippet snippet, int offset) {
        waiting.put(snippet, offset);
    }

    /** Takes in what one snippet did, and undoes it if it failed. */
    void add(SnippetEvent main, List<SnippetEvent> events, boolean failed) {
        List<Snippet> overwritten = events.stream()
                .filter(e -> e.status() == Status.OVERWRITTEN)
                .map(SnippetEvent::snippet)
                .toList();
        touch(events);
        if (failed) {
            undo(main.snippet(), overwritten);
        } else if (main.snippet() instanceof DeclarationSnippet declared) {
            before.put(declared, overwritten);
        }
    }

    /** Notes what depends on something else and did not bear its change. */
    private void touch(List<SnippetEvent> events) {
        events.stream()
                .filter(e -> e.causeSnippet() != null && e.status() != Status.OVERWRITTEN)
                .filter(e -> e.previousStatus() == Status.VALID && e.status() != Status.VALID)
                .forEach(e -> touched.add((DeclarationSnippet) e.snippet()));
    }

    private boolean isBroken(DeclarationSnippet snippet) {
        return session.shell().status(snippet).isActive() && session.shell().status(snippet) != Status.VALID;
    }

    /** Takes the older versions of types out of the way of those that this cell declares. */
    void drop(Set<String> names, List<SnippetEvent> refused) {
        refused.stream()
                .filter(e -> e.status() == Status.OVERWRITTEN && e.snippet() instanceof TypeDeclSnippet)
                .forEach(e -> dropped.add((TypeDeclSnippet) e.snippet()));
        List<TypeDeclSnippet> old =
                session.shell().types().filter(t -> names.contains(t.name())).toList();
        for (TypeDeclSnippet type : old) {
            if (!before.containsKey(type)) {
                touch(session.shell().drop(type));
                dropped.add(type);
            }
        }
    }

    /** Starts the compiler anew, with what was there before the snippet that broke it. */
    void rebuild(Snippet failed, List<SnippetEvent> events) {
        List<Snippet> held = new ArrayList<>();
        session.shell()
                .snippets()
                .filter(s -> s != failed && session.shell().status(s).isActive())
                .forEach(held::add);
        events.stream()
                .filter(e -> e.status() == Status.OVERWRITTEN)
                .map(SnippetEvent::snippet)
                .forEach(held::add);
        waiting.clear();
        before.clear();
        touched.clear();
        dropped.clear();
        notes.add("The compiler was started anew after this cell; what the cells before it made is still there.");
        notes.addAll(session.rebuild(held));
    }

    private void undo(Snippet failed, List<Snippet> overwritten) {
        boolean active = session.shell().status(failed).isActive();
        if (active && overwritten.isEmpty() && failed instanceof VarSnippet variable) {
            session.shell().drop(failed); // rather no variable than one that silently holds 0 or null
            control.variables().forget(variable.name());
        }
        overwritten.forEach(old -> restore(old, active && isOf(failed, old)));
    }

    /** Whether two declare the same variable with the same type. */
    private static boolean isOf(Snippet one, Snippet other) {
        return one instanceof VarSnippet a
                && other instanceof VarSnippet b
                && a.name().equals(b.name())
                && a.typeName().equals(b.typeName());
    }

    /** Declares again what a failed declaration took the place of; a variable gets its value back. */
    private void restore(Snippet old, boolean inPlace) {
        if (old instanceof VarSnippet variable) {
            if (inPlace || declareWithValue(variable)) {
                notes.add(variable.name() + " keeps the value it had.");
            }
        } else if (old instanceof DeclarationSnippet declared) {
            session.shell().eval(declared.source());
            notes.add(declared.name() + " stays as it was declared before.");
        }
    }

    /** Declares a variable without what computes its value, which it keeps if it fits. */
    private boolean declareWithValue(VarSnippet variable) {
        Object value = control.variables().earlierValue(variable.name());
        List<SnippetEvent> events = session.shell().eval(variable.typeName() + " " + variable.name() + ";");
        boolean valid = events.get(0).status() == Status.VALID;
        boolean kept = valid && (value == null || control.variables().giveBack(variable.name(), value));
        if (valid && !kept) {
            lose(variable.name());
        }
        return kept;
    }

    /** A variable without its value is better not there: whoever uses it learns so. */
    private void lose(String name) {
        forget(name);
        if (isUnnamed(name)) {
            return; // the result of a cell, which no cell can name
        }
        notes.add("The value of " + name + " is lost: it was made from an earlier version of what this cell"
                + " declares. Run the cell that makes " + name + " again.");
    }

    private void forget(String name) {
        session.shell()
                .variables()
                .filter(v -> v.name().equals(name))
                .findFirst()
                .ifPresent(v -> touch(session.shell().drop(v)));
        control.variables().forget(name);
    }

    /** Ends the cell: tells what is lost, and gives the error of a declaration that lacks something. */
    CellError settle(boolean failed) {
        CellError error = null;
        for (Map.Entry<DeclarationSnippet, Integer> one : waiting.entrySet()) {
            DeclarationSnippet snippet = one.getKey();
            List<String> missing = missing(snippet);
            if (missing.isEmpty()) {
                session.keep(snippet);
            } else if (snippet.kind() == Snippet.Kind.METHOD) {
                notes.add(sentence(snippet, missing) + "; it can be called once that is declared.");
            } else if (error == null && !failed) {
                error = incomplete(snippet, one.getValue(), missing);
                before.getOrDefault(snippet, List.of()).forEach(old -> restore(old, false));
            }
        }
        Set<String> there = session.shell()
                .types()
                .filter(t -> session.shell().status(t).isActive())
                .map(TypeDeclSnippet::name)
                .collect(Collectors.toSet());
        boolean ok = error == null && !failed;
        dropped.stream().filter(t -> !ok || !there.contains(t.name())).forEach(t -> restore(t, false));
        noteLosses();
        return error;
    }

    private List<String> missing(DeclarationSnippet snippet) {
        return isBroken(snippet)
                ? session.shell().unresolvedDependencies(snippet).toList()
                : List.of();
    }

    private static String sentence(DeclarationSnippet snippet, List<String> missing) {
        return snippet.name() + " needs " + String.join(", ", missing) + ", not declared yet";
    }

    private CellError incomplete(DeclarationSnippet snippet, int offset, List<String> missing) {
        String sentence = sentence(snippet, missing);
        List<String> lines = new ArrayList<>();
        Place place = cell.placeAt(offset);
        lines.add(place.heading() + ": " + sentence + ".");
        lines.addAll(place.excerpt());
        session.shell()
                .diagnostics(snippet)
                .map(d -> "  " + d.getMessage(Locale.ROOT))
                .forEach(lines::add);
        return new CellError("CompileError", sentence, lines, null);
    }

    /** The error of a method that was called although something it needs is missing. */
    CellError calledTooEarly(DeclarationSnippet snippet) {
        return ErrorText.plain("CompileError", snippet.name() + " cannot be used: " + why(snippet) + ".", null);
    }

    private String why(DeclarationSnippet snippet) {
        List<String> missing = session.shell().unresolvedDependencies(snippet).toList();
        return missing.isEmpty()
                ? session.shell()
                        .diagnostics(snippet)
                        .filter(jdk.jshell.Diag::isError)
                        .map(ErrorText::message)
                        .findFirst()
                        .orElse("it does not fit what was declared since")
                : "it needs " + String.join(", ", missing) + ", which no cell has declared";
    }

    private void noteLosses() {
        control.variables().carryOver(List.of());
        for (DeclarationSnippet snippet : List.copyOf(touched)) {
            if (isBroken(snippet) && snippet instanceof VarSnippet variable) {
                declareWithValue(variable);
            }
        }
        for (String name : control.variables().takeLosses()) {
            lose(name);
        }
        touched.stream()
                .filter(this::isBroken)
                .filter(s -> !isUnnamed(s.name()))
                .forEach(snippet -> notes.add(unusable(snippet)));
        List<String> names = session.shell()
                .variables()
                .filter(v -> session.shell().status(v) == Status.VALID)
                .map(VarSnippet::name)
                .toList();
        Set<String> stale = control.takeStale(names);
        stale.removeIf(Aftermath::isUnnamed);
        for (String name : stale) {
            notes.add(name + " was made with an earlier version of what this cell declares and goes on using that."
                    + " Run the cell that makes " + name + " again.");
        }
    }

    /** The compiler's own name for what a cell ended in. */
    private static boolean isUnnamed(String name) {
        return name.startsWith("$");
    }

    private String unusable(DeclarationSnippet snippet) {
        String name = snippet.name();
        return snippet.kind() == Snippet.Kind.VAR
                ? name + " does not fit what this cell declares and cannot be used any more. Run the cell that makes "
                        + name + " again."
                : name + " cannot be used any more: " + why(snippet) + ". Change " + name + " and run its cell again.";
    }

    /** The error of a cell that used up the memory; what it declared is given up if there is no other way to go on. */
    CellError outOfMemory() {
        MemoryWatch.release();
        control.forgetCall();
        System.gc();
        if (MemoryWatch.isFull()) {
            for (DeclarationSnippet declared : before.keySet()) { // nothing that needs memory before it is there
                if (declared instanceof VarSnippet) {
                    control.variables().reset(declared.name());
                }
            }
            System.gc();
            before.keySet().stream()
                    .filter(VarSnippet.class::isInstance)
                    .map(DeclarationSnippet::name)
                    .toList()
                    .forEach(this::giveUp);
        }
        MemoryWatch.keepReserve();
        String limit = Runtime.getRuntime().maxMemory() / 1_000_000 + " MB";
        return ErrorText.plain(
                "OutOfMemory",
                "This cell needs more memory than there is, " + limit
                        + ", and was stopped. Keep less at a time, or start with"
                        + " SHOTLEDGER_MEMORY set to more."
                        + (MemoryWatch.isFull()
                                ? " What earlier cells hold still fills the memory: set large variables to null."
                                : ""),
                null);
    }

    private void giveUp(String name) {
        forget(name);
        notes.add(name + " was given up, since this cell filled the memory with it.");
    }
}
