package org.shotledger.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One run in five hundred seeded shapes is read to one and the same series: every sample that was written, at its time, within half a digit of
 * what was written, and no other. {@code -Dlog.shapes=N} tries another number.
 */
class LogShapesTest {
    private static final int SHAPES = Integer.getInteger("log.shapes", 200);

    @Test
    void every_shape_of_a_log_reads_to_the_same_series(@TempDir Path folder) throws IOException {
        for (int seed = 0; seed < SHAPES; seed++) {
            LogShape shape = new LogShape(seed);
            Path file = folder.resolve("shape.csv");
            Files.write(file, shape.bytes());
            String which = "seed " + seed + ": " + shape;
            try {
                LogMapping mapping = LogMapping.read(shape.mapping(), "shape.log.yaml");
                compare(shape, EngineLog.read(file, mapping).findings(), which);
            } catch (RuntimeException e) {
                throw new AssertionError(which, e);
            }
        }
    }

    private static void compare(LogShape shape, LogFindings findings, String which) {
        double begins = findings.log().time()[0];
        for (Map.Entry<LogChannel, TreeMap<Double, Double>> entry :
                shape.expected().entrySet()) {
            LogChannel channel = entry.getKey();
            Series read = findings.series(channel);
            assertEquals(entry.getValue().size(), read.size(), which + ", " + channel + "\n" + findings);
            int i = 0;
            for (Map.Entry<Double, Double> sample : entry.getValue().entrySet()) {
                assertEquals(sample.getKey(), read.time()[i] - begins, 1e-6, which + ", time of " + channel);
                assertEquals(sample.getValue(), read.values()[i], shape.tolerance(channel), which + ", " + channel);
                i++;
            }
        }
        Pulls pulls = Pulls.in(findings, PullRule.USUAL);
        assertTrue(pulls.all().size() == 1, which + ", " + pulls.why());
    }
}
