package org.shotledger.sheet;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong while reading goes on; keeps the first hundred and counts the rest. */
public final class Problems {
    private static final int KEPT = 100;

    private final List<Problem> list = new ArrayList<>();
    private int more;

    /** An empty collection. */
    public Problems() {}

    /**
     * Adds a problem.
     *
     * @param problem what is wrong
     */
    public void add(Problem problem) {
        if (list.size() < KEPT) {
            list.add(problem);
        } else {
            more++;
        }
    }

    /**
     * Adds what another reading found.
     *
     * @param exception its problems
     */
    public void addAll(SheetException exception) {
        exception.problems().forEach(this::add);
    }

    /**
     * How many were added.
     *
     * @return the count, those not kept included
     */
    public int count() {
        return list.size() + more;
    }

    /**
     * The problems kept.
     *
     * @return a copy, ending in a note when some were not kept
     */
    public List<Problem> list() {
        List<Problem> all = new ArrayList<>(list);
        if (more > 0) {
            all.add(Problem.of(list.get(0).file(), more + " further problems are not listed; mend these first."));
        }
        return List.copyOf(all);
    }

    /**
     * Ends the reading.
     *
     * @throws SheetException when anything was added
     */
    public void throwIfAny() {
        if (!list.isEmpty()) {
            throw new SheetException(list());
        }
    }
}
