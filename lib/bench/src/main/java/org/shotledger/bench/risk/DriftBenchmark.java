package org.shotledger.bench.risk;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.bench.engine.Heron;
import org.shotledger.budget.Budget;
import org.shotledger.risk.Drift;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Excursion;
import org.shotledger.risk.Faults;
import org.shotledger.risk.Forgiving;

/** Drift, forgiving jets and faults of the demo build's plan; each call starts without any flow remembered. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DriftBenchmark {
    private static final List<Double> BOTTLE = DriftMap.grid(38e5, 72.2e5, 25);
    private static final List<Double> FUEL = DriftMap.grid(1.6e5, 5.4e5, 25);

    private Budget budget;

    /** Makes the plan. */
    @Setup
    public void plan() {
        budget = Budget.plan(Heron.build());
    }

    /** A slice of 25 by 25 points at five speeds each, with the edges of the safe region. */
    @Benchmark
    public DriftMap slice() {
        return DriftMap.of(Drift.of(budget), 0, BOTTLE, FUEL);
    }

    /** The largest symmetric excursion of one setting. */
    @Benchmark
    public Excursion excursion() {
        return Excursion.of(Drift.of(budget));
    }

    /** The most forgiving jets and fuel pressure. */
    @Benchmark
    public Forgiving forgiving() {
        return Forgiving.of(budget);
    }

    /** The window, the usual faults and what catches them. */
    @Benchmark
    public Faults faults() {
        return Faults.of(budget);
    }
}
