package org.shotledger.sheet;

import java.util.List;
import java.util.stream.Collectors;

/** One or more files cannot be used; holds every problem found, not the first only. */
public final class SheetException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    /**
     * Makes the exception.
     *
     * @param problems what is wrong, at least one
     */
    public SheetException(List<Problem> problems) {
        super(text(problems));
        this.problems = List.copyOf(problems);
    }

    /**
     * Makes the exception of one problem.
     *
     * @param problem what is wrong
     */
    public SheetException(Problem problem) {
        this(List.of(problem));
    }

    /**
     * Everything that is wrong, in the order of the files.
     *
     * @return the problems
     */
    public List<Problem> problems() {
        return problems;
    }

    private static String text(List<Problem> problems) {
        if (problems.size() == 1) {
            return problems.get(0).toString();
        }
        return problems.size() + " problems:\n"
                + problems.stream().map(p -> "  " + p).collect(Collectors.joining("\n"));
    }
}
