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
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;

/** A whole operating point of the demo build with exact models, at 256 seeded speeds and boosts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EvaluationBenchmark {
    private static final int MASK = 255;
    private static final JetPair JETS = new JetPair(1.1e-3, 0.6e-3);

    private final double[] rpm = new double[MASK + 1];
    private final double[] plenum = new double[MASK + 1];
    private PointModel model;
    private FeedFlow feed;
    private int i;

    /** Draws the points; the seed is fixed. */
    @Setup
    public void points() {
        Job job = DemoCar.job();
        model = Evaluate.model(job.car(), job.setup().withJets(JETS), job.stated());
        SplittableRandom random = new SplittableRandom(20061125);
        for (int k = 0; k <= MASK; k++) {
            rpm[k] = random.nextDouble(5800, 7000);
            plenum[k] = job.stated().air().pressure() + random.nextDouble(1.0e5, 1.3e5);
        }
        feed = model.feed(plenum[0]);
    }

    private int next() {
        i = (i + 1) & MASK;
        return i;
    }

    /** Boost alone. */
    @Benchmark
    public OperatingPoint boostAlone() {
        int k = next();
        return model.at(rpm[k], plenum[k], org.shotledger.evaluate.Mode.BOOST_ALONE);
    }

    /** Boost and nitrous, the choked feed flow solved before. */
    @Benchmark
    public OperatingPoint withNitrous() {
        int k = next();
        return model.at(
                rpm[k],
                plenum[k],
                org.shotledger.evaluate.Mode.NITROUS,
                feed,
                model.nitrousFuel(plenum[k], JETS.fuelBore()));
    }

    /** Boost and nitrous with the feed path solved anew. */
    @Benchmark
    public OperatingPoint withNitrousAndFeedPath() {
        int k = next();
        return model.at(
                rpm[k],
                plenum[k],
                org.shotledger.evaluate.Mode.NITROUS,
                model.feed(plenum[k], JETS.nitrousBore()),
                model.nitrousFuel(plenum[k], JETS.fuelBore()));
    }
}
