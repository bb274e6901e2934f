package org.shotledger.bench.study;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.bench.engine.DemoCar;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.study.Axis;
import org.shotledger.study.Space;
import org.shotledger.study.Study;
import org.shotledger.units.Quantities;

/** Whole studies of two sizes with the same tables: the difference of their times is the cost of combinations alone. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class StudyBenchmark {
    /** Number of fuel pressures; the space has 390 combinations for each. */
    @Param({"50", "5000"})
    public int pressures;

    /** Whether the plan has been studied before. */
    @Param({"false", "true"})
    public boolean known;

    private Job job;
    private Space space;

    /** Lays the space around a setup of the demo car. */
    @Setup
    public void lay() {
        job = DemoCar.job();
        Plan plan = Plan.of(
                job,
                job.setup().withBoost(Quantities.barGauge(1.25)).withJets(Quantities.thou(43), Quantities.thou(23)));
        space = Space.of(plan)
                .vary(Axis.BOOST, "1.15 bar gauge", "1.25 bar gauge", "1.35 bar gauge")
                .ladder(Axis.NITROUS_JET, "36 thou", "48 thou")
                .ladder(Axis.FUEL_JET, "19 thou", "28 thou")
                .range(Axis.FUEL_PRESSURE, "3 bar gauge", "4 bar gauge", pressures);
    }

    /** A plan that no study has asked anything of. */
    @Setup(Level.Invocation)
    public void forget() {
        if (!known) {
            lay();
        }
    }

    /** Tables and counts with one exact combination. */
    @Benchmark
    public Study study() {
        return Study.of(job, space, new Study.Exact(1, 0, 0));
    }
}
