package org.shotledger.bench.engine;

import java.nio.file.Files;
import java.nio.file.Path;
import org.shotledger.job.Job;

/** The job of the invented demo car, found from wherever the benchmarks are started. */
public final class DemoCar {
    private DemoCar() {}

    /**
     * Loads it.
     *
     * @return the demo job
     */
    public static Job job() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path sheet = at.resolve("data/whimbrel/job.yaml");
            if (Files.exists(sheet)) {
                return Job.load(sheet);
            }
        }
        throw new IllegalStateException("There is no data/whimbrel/job.yaml here or above; start inside the project.");
    }
}
