package org.shotledger.bench.study;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.bench.engine.Heron;
import org.shotledger.budget.Budget;
import org.shotledger.build.Build;
import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.ConfidenceStudy;
import org.shotledger.confidence.Distribution;
import org.shotledger.confidence.Plan;
import org.shotledger.confidence.Unknown;
import org.shotledger.study.Space;
import org.shotledger.study.Sweep;
import org.shotledger.study.SweepResult;

/** Whole sweeps of two sizes, whose difference is the cost of combinations alone; draws; the machine's memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SweepBenchmark {
    private static final int DOUBLES = 1 << 25;

    /** Number of boost settings; the space has 142,188 combinations for each. */
    @Param({"41", "164"})
    public int boosts;

    private Space space;
    private Plan plan;
    private List<Unknown> unknowns;
    private double[] from;
    private double[] to;

    /** Lays the space and the plan. */
    @Setup
    public void lay() {
        space = SweepCase.space(boosts);
        Build build = Heron.build();
        plan = Plan.of(Budget.plan(build));
        unknowns = List.of(
                Unknown.own(Unknown.BOOST, Distribution.normal(0, 0.02)),
                Unknown.own(Unknown.NITROUS_JET, Distribution.normal(1, 0.005)),
                Unknown.own(Unknown.FUEL_JET, Distribution.normal(1, 0.005)),
                Unknown.field(build, "bottle.start-temperature", Distribution.normal(32, 1)),
                Unknown.field(build, "base-pull.wheel-power", Distribution.uniform(575, 605)));
        from = new double[DOUBLES];
        to = new double[DOUBLES];
    }

    /** A sweep with its tables and its exact list. */
    @Benchmark
    public SweepResult sweep() {
        return Sweep.run(space);
    }

    /** A million draws of a whole plan, with its quadratic forms and influences. */
    @Benchmark
    public Confidence millionDraws() {
        return ConfidenceStudy.of(plan, unknowns, 1 << 20, 1);
    }

    /** The same with the least draws: what the forms and influences cost by themselves. */
    @Benchmark
    public Confidence fewDraws() {
        return ConfidenceStudy.of(plan, unknowns, 1600, 1);
    }

    /** The physical limit: 268 million bytes read and as many written, by one thread. */
    @Benchmark
    public double memory() {
        for (int i = 0; i < DOUBLES; i++) {
            to[i] = from[i] + 1;
        }
        return to[DOUBLES - 1];
    }
}
