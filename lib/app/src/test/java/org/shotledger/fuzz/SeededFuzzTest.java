package org.shotledger.fuzz;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The fast search: seeded, structure-aware, without instrumentation, over the same targets as {@link ReadersFuzzTest}. The
 * usual build tries a few hundred inputs of each reader; ten million together take
 *
 * <pre>{@code
 * nice -n 19 mvn test -pl lib/app -am -Dsurefire.failIfNoSpecifiedTests=false -Djacoco.skip \
 *     -Dtest=SeededFuzzTest -Dfuzz.inputs=10000000 -Dfuzz.seed=1 -Dtest.heap=256m
 * }</pre>
 *
 * <p>An input that ends in anything but an answer or a sentence, or takes more than a second of its thread's time, is
 * written to {@code target/fuzz}, from where it goes into the kept inputs of {@link ReadersFuzzTest}.
 */
class SeededFuzzTest {
    private static final long INPUTS = Long.getLong("fuzz.inputs", 3_000);
    private static final long SEED = Long.getLong("fuzz.seed", 20_261_125);
    private static final long REPORTED = 500_000;
    private static final long SECOND = 1_000_000_000;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /**
     * A reader, its good inputs, and its share of all inputs: a whole sheet costs a thousand times a figure.
     *
     * @param name the target of {@link ReadersFuzzTest}
     * @param share share of all inputs
     * @param seeds good inputs
     * @param reader the reader
     */
    record Target(String name, double share, List<String> seeds, Consumer<byte[]> reader) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Target> targets() {
        return Stream.of(
                new Target("figures", 0.40, Seeds.figures(), ReaderTargets::figures),
                new Target("yaml", 0.20, Seeds.yaml(), ReaderTargets::yaml),
                new Target("tables", 0.15, Seeds.tables(), ReaderTargets::tables),
                new Target("logs", 0.05, Seeds.logs(), ReaderTargets::logs),
                new Target("notebooks", 0.18, Seeds.notebooks(), ReaderTargets::notebooks),
                new Target("sheets", 0.02, Seeds.sheets(), ReaderTargets::sheets));
    }

    @ParameterizedTest
    @MethodSource("targets")
    void a_reader_answers_or_refuses_whatever_it_is_given(Target target) throws IOException {
        Mutator mutator = new Mutator(target.seeds(), Seeds.ODD, SEED);
        long inputs = Math.max(1, Math.round(INPUTS * target.share()));
        long begun = THREADS.getCurrentThreadCpuTime();
        long slowest = 0;
        for (long i = 0; i < inputs; i++) {
            byte[] input = mutator.next();
            long start = THREADS.getCurrentThreadCpuTime();
            try {
                target.reader().accept(input);
            } catch (RuntimeException | Error e) {
                fail("input " + i + " kept as " + keep(target, input), e);
            }
            long took = THREADS.getCurrentThreadCpuTime() - start;
            slowest = Math.max(slowest, took);
            if (took > SECOND) {
                fail("input " + i + " takes " + took / 1e9 + " s, kept as " + keep(target, input));
            }
            if ((i + 1) % REPORTED == 0 && i + 1 < inputs) {
                report(target, i + 1, begun, slowest);
            }
        }
        report(target, inputs, begun, slowest);
    }

    private static void report(Target target, long inputs, long begun, long slowest) {
        double seconds = (THREADS.getCurrentThreadCpuTime() - begun) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "fuzz %s: %,d inputs, seed %d, %.1f s of processor, %,.0f a second, slowest %.1f ms%n",
                target,
                inputs,
                SEED,
                seconds,
                inputs / seconds,
                slowest / 1e6);
    }

    private static Path keep(Target target, byte[] input) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "fuzz"));
        return Files.write(folder.resolve(target + "-" + Integer.toHexString(java.util.Arrays.hashCode(input))), input);
    }
}
