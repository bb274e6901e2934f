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
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Drift;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Faults;
import org.shotledger.risk.RobustJetting;
import org.shotledger.risk.Tolerance;

/** Drift, robust jets and faults of the demo car's plan; each call starts without any flow remembered. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class DriftBenchmark {
    private static final List<Double> BOTTLE = DriftMap.grid(38e5, 72.2e5, 25);
    private static final List<Double> FUEL = DriftMap.grid(1.6e5, 5.4e5, 25);

    private Plan plan;

    /** Makes the plan. */
    @Setup
    public void find() {
        plan = Plan.find(Job.load("data/whimbrel/job.yaml"));
    }

    /** A slice of 25 by 25 points at five speeds each, with the edges of the safe region. */
    @Benchmark
    public DriftMap slice() {
        return DriftMap.of(Drift.of(plan), 0, BOTTLE, FUEL);
    }

    /** The tolerance of one setting. */
    @Benchmark
    public Tolerance tolerance() {
        return Tolerance.of(Drift.of(plan));
    }

    /** The most robust jets and fuel pressure. */
    @Benchmark
    public RobustJetting robust() {
        return RobustJetting.of(plan);
    }

    /** The arming conditions, the usual faults and what catches them. */
    @Benchmark
    public Faults faults() {
        return Faults.of(plan);
    }
}
