package org.shotledger.snippet;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.fetch.Fetched;
import org.shotledger.fetch.MavenLibraries;

/** The line {@code dependency("group:artifact:version")}, which puts a library on the session's class path. */
final class DependencyCall {

    static final String NAME = "dependency";

    private static final Pattern CALL = Pattern.compile("\\s*dependency\\s*\\(\\s*\"([^\"\\\\]*)\"\\s*\\)\\s*;?\\s*");
    private static final long LOOK_MILLIS = 50;

    private DependencyCall() {}

    /** The coordinates that a piece of a cell asks for. */
    static Optional<String> in(String source) {
        Matcher call = CALL.matcher(source);
        return call.matches() ? Optional.of(call.group(1)) : Optional.empty();
    }

    /**
     * Fetches in a thread of its own: a network that does not answer is left behind when the cell is to stop.
     *
     * @return nothing if it was to stop
     */
    static Optional<Fetched> fetch(String coordinates, CellControl control)
            throws ExecutionException, InterruptedException {
        FutureTask<Fetched> task =
                new FutureTask<>(() -> MavenLibraries.ofUser().fetch(coordinates));
        Thread thread = new Thread(task, NAME);
        thread.setDaemon(true);
        thread.start();
        while (!control.isStopRequested()) {
            thread.join(LOOK_MILLIS);
            if (task.isDone()) {
                return Optional.of(task.get());
            }
        }
        task.cancel(true);
        return Optional.empty();
    }
}
