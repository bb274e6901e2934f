package org.shotledger.bench.engine;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.budget.Calibration;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.build.Build;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.JetPair;

/** A whole operating point of the demo build with exact models, at 256 seeded speeds and boosts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EvaluationBenchmark {
    private static final int MASK = 255;

    private final double[] rpm = new double[MASK + 1];
    private final Demand[] boost = new Demand[MASK + 1];
    private final Demand[] both = new Demand[MASK + 1];
    private Evaluator evaluator;
    private Conditions conditions;
    private FeedFlow feed;
    private int i;

    /** Makes the demands; the seed is fixed. */
    @Setup
    public void demands() {
        Build build = Heron.build();
        evaluator = Calibration.of(build);
        conditions = Conditions.of(build, build.target().conditions());
        SplittableRandom random = new SplittableRandom(20061125);
        JetPair jets = new JetPair(1.1e-3, 0.6e-3);
        for (int k = 0; k <= MASK; k++) {
            rpm[k] = random.nextDouble(5800, 7000);
            boost[k] = Demand.boost(conditions.air().pressure() + random.nextDouble(1.0e5, 1.3e5));
            both[k] = boost[k].with(jets);
        }
        feed = evaluator.feed(conditions, both[0]);
    }

    private int next() {
        i = (i + 1) & MASK;
        return i;
    }

    /** Boost alone. */
    @Benchmark
    public Evaluation boostAlone() {
        int k = next();
        return evaluator.at(conditions, rpm[k], boost[k]);
    }

    /** Boost and nitrous, the choked feed flow solved before. */
    @Benchmark
    public Evaluation withNitrous() {
        int k = next();
        return evaluator.at(conditions, rpm[k], both[k], feed);
    }

    /** Boost and nitrous with the feed path solved anew. */
    @Benchmark
    public Evaluation withNitrousAndFeedPath() {
        int k = next();
        return evaluator.at(conditions, rpm[k], both[k]);
    }
}
