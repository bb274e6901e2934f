package org.shotledger.bench.bottle;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.shotledger.bottle.Bottle;
import org.shotledger.bottle.Emptying;
import org.shotledger.bottle.HeatInput;
import org.shotledger.bottle.History;
import org.shotledger.bottle.Outflow;

/** One pass of 12 s at constant flow. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BottleBenchmark {
    private final Emptying pass = Emptying.of(new Bottle(6.7e-3, 7.1, 900).charged(4.54, 300), Outflow.constant(0.08))
            .withHeat(HeatInput.surroundings(300))
            .withDuration(12);

    /** Liquid and vapour in balance. */
    @Benchmark
    public History passEquilibrium() {
        return pass.equilibrium();
    }

    /** Liquid and vapour apart, boiling delayed. */
    @Benchmark
    public History passTwoNode() {
        return pass.twoNode();
    }
}
