package org.shotledger.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.shotledger.kernel.SelfCheck;
import org.shotledger.snippet.SessionOptions;

/** Does a little of what a kernel does, so that a start-up archive can be made of the classes this needs; for the launcher alone. */
final class WarmUp implements Callable<Integer> {

    /** A declaration, output, a type, and a value of the library's, which makes the imports. */
    private static final String CELL = """
            var warm = 1;
            int twice(int x) { return 2 * x; }
            record Pair(int first, int second) {}
            System.out.println(new Pair(warm, twice(warm)));
            psi(950)
            """;

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (Sessions.index() != null) {
            SessionOptions.of(List.of()).classes().write(Sessions.index());
        }
        return SelfCheck.run(Sessions::open, CELL).equals(Optional.of("ok")) ? 0 : 1;
    }
}
