package org.shotledger.bench.engine;

import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.build.Build;

/** The demo build, found from wherever the benchmarks are started. */
public final class Heron {
    private Heron() {}

    /**
     * Loads it.
     *
     * @return the demo build
     */
    public static Build build() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path sheet = at.resolve("data/heron/build.yaml");
            if (Files.exists(sheet)) {
                return Build.load(sheet);
            }
        }
        throw new IllegalStateException("There is no data/heron/build.yaml here or above; start inside the project.");
    }
}
