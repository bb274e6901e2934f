package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import jdk.jshell.Diag;

/** Words an error for the person at the notebook: the sentence first, then the place, never the machinery. */
final class ErrorText {

    /** The classes that hold what cells declare, in front of its names. */
    private static final Pattern MACHINERY = Pattern.compile("REPL\\.\\$\\w+\\$\\w+[.$]");

    private static final int LIBRARY_FRAMES = 5;
    private static final int CELL_FRAMES = 8;
    private static final int CAUSES = 8;

    private final Origins origins;
    private final SessionOptions options;

    ErrorText(Origins origins, SessionOptions options) {
        this.origins = origins;
        this.options = options;
    }

    /** An error the compiler found. */
    CellError compiling(List<Diag> problems, Cell cell, Piece piece, int sourceOffset) {
        List<String> lines = new ArrayList<>();
        for (Diag problem : problems) {
            if (problem.isError()) {
                Place place = cell.placeAt(sourceOffset + piece.ownPosition((int) Math.max(0, problem.getPosition())));
                lines.add(place.heading() + ": " + firstLetterUp(message(problem)));
                lines.addAll(place.excerpt());
            }
        }
        if (lines.isEmpty()) {
            Place place = cell.placeAt(piece.offset());
            lines.add(place.heading() + ": this is not complete Java");
            lines.addAll(place.excerpt());
        }
        return new CellError("CompileError", lines.get(0), lines, null);
    }

    /** Something a cell threw. */
    CellError thrown(Throwable thrown) {
        List<String> lines = new ArrayList<>();
        Throwable cause = thrown;
        for (int depth = 0; cause != null && depth < CAUSES; depth++) {
            lines.add((depth == 0 ? "" : "because of ") + headline(cause));
            lines.addAll(where(cause));
            cause = next(cause);
        }
        return new CellError(thrown.getClass().getSimpleName(), safeMessage(thrown), lines, thrown);
    }

    /** An error in a place that is not a line of a cell. */
    static CellError plain(String name, String sentence, Throwable cause) {
        return new CellError(name, sentence, List.of(sentence), cause);
    }

    /** A message that is there even if making it fails. */
    static String safeMessage(Throwable thrown) {
        try {
            String message = thrown.getMessage();
            return message == null ? "" : MACHINERY.matcher(message).replaceAll("");
        } catch (Throwable failing) {
            return "(its message could not be made: " + failing.getClass().getSimpleName() + ")";
        }
    }

    private static Throwable next(Throwable thrown) {
        Throwable cause = thrown.getCause();
        return cause == thrown ? null : cause;
    }

    private String headline(Throwable thrown) {
        String message = safeMessage(thrown);
        if (isDomain(thrown) && !message.isBlank()) {
            return message;
        }
        String name = thrown.getClass().getSimpleName();
        return message.isBlank() ? name + explained(thrown) : name + ": " + message;
    }

    private static String explained(Throwable thrown) {
        if (thrown instanceof StackOverflowError) {
            return ": a method calls itself without end";
        }
        return "";
    }

    /** The library's own, or an argument it refused: its sentence says all there is to say. */
    private boolean isDomain(Throwable thrown) {
        if (options.isOfLibrary(thrown.getClass().getName())) {
            return true;
        }
        StackTraceElement[] trace = thrown.getStackTrace();
        boolean refused = thrown instanceof IllegalArgumentException || thrown instanceof IllegalStateException;
        return refused && trace.length > 0 && options.isOfLibrary(trace[0].getClassName());
    }

    private List<String> where(Throwable thrown) {
        List<String> lines = new ArrayList<>();
        boolean domain = isDomain(thrown);
        int library = 0;
        int cells = 0;
        for (StackTraceElement frame : thrown.getStackTrace()) {
            Optional<Place> place = origins.place(frame);
            if (place.isPresent() && cells < CELL_FRAMES) {
                lines.add("  " + (cells++ == 0 ? "at " : "called from ")
                        + place.get().heading() + method(frame));
                lines.addAll(place.get().excerpt());
            } else if (!domain && cells == 0 && library < LIBRARY_FRAMES && !isMachinery(frame)) {
                library++;
                lines.add("  at " + frame.getClassName() + "." + frame.getMethodName() + ", line "
                        + frame.getLineNumber());
            }
        }
        return lines;
    }

    private static String method(StackTraceElement frame) {
        String name = frame.getMethodName();
        boolean plain = name.startsWith("do_it$") || name.startsWith("lambda$") || name.startsWith("<");
        return plain ? "" : ", in " + name;
    }

    private static boolean isMachinery(StackTraceElement frame) {
        String name = frame.getClassName();
        return name.startsWith("org.shotledger.snippet.")
                || name.startsWith("org.shotledger.kernel.")
                || name.startsWith("org.shotledger.runner.")
                || name.startsWith("REPL.")
                || name.startsWith("jdk.internal.")
                || name.startsWith("jdk.jshell.")
                || name.equals("java.lang.Thread")
                || name.startsWith("java.lang.reflect.");
    }

    /** What the compiler says, without what it says of its own classes. */
    static String message(Diag problem) {
        // the class around a snippet is the compiler's business: its name is left out already, its line goes too
        return problem.getMessage(Locale.ROOT)
                .strip()
                .replaceAll("\\s*\n\\s*", "; ")
                .replaceAll("; location: class\\s*$", "")
                .replaceAll(" {2,}", " ");
    }

    private static String firstLetterUp(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
