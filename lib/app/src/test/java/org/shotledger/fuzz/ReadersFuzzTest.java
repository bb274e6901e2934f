package org.shotledger.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;

/**
 * The coverage-guided search, and in the usual build the inputs kept from it. A search runs one target at a time:
 *
 * <pre>{@code
 * JAZZER_FUZZ=1 mvn test -pl lib/app -am -Dsurefire.failIfNoSpecifiedTests=false -Djacoco.skip \
 *     -Dtest=ReadersFuzzTest#figures -Djazzer.hooks=true -Dtest.heap=256m
 * }</pre>
 *
 * <p>An input found lies in {@code src/test/resources} afterwards and is tried from then on. {@link SeededFuzzTest} is the
 * fast search without instrumentation over the same targets.
 */
class ReadersFuzzTest {

    @FuzzTest(maxDuration = "60s")
    void figures(byte[] bytes) {
        ReaderTargets.figures(bytes);
    }

    @FuzzTest(maxDuration = "60s")
    void yaml(byte[] bytes) {
        ReaderTargets.yaml(bytes);
    }

    @FuzzTest(maxDuration = "60s")
    void sheets(byte[] bytes) {
        ReaderTargets.sheets(bytes);
    }

    @FuzzTest(maxDuration = "60s")
    void tables(byte[] bytes) {
        ReaderTargets.tables(bytes);
    }

    @FuzzTest(maxDuration = "60s")
    void logs(byte[] bytes) {
        ReaderTargets.logs(bytes);
    }

    @FuzzTest(maxDuration = "60s")
    void notebooks(byte[] bytes) {
        ReaderTargets.notebooks(bytes);
    }
}
