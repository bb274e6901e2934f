package org.shotledger.bench.flow;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.HomogeneousEquilibrium;
import org.shotledger.flow.Manifold;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.Orifice;
import org.shotledger.flow.Tube;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/** Critical flux, one jet, and a whole feed path, each call on the next of 256 seeded states. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class FlowBenchmark {
    private static final int MASK = 255;
    private static final double MANIFOLD = 2.5e5;

    private final FluidState[] saturated = new FluidState[MASK + 1];
    private final FluidState[] subcooled = new FluidState[MASK + 1];
    private final FluidState[] mixed = new FluidState[MASK + 1];
    private final FluidState[] vapour = new FluidState[MASK + 1];
    private final NitrousJet jet = NitrousJet.of(1.6e-3);
    private final FeedPath single = FeedPath.of(
            Tube.level("hose", 3.2, 0.0087), Orifice.solenoid("solenoid", 2.6e-3, 0.0087), NitrousJet.of(1.6e-3));
    private final FeedPath six = FeedPath.of(
            Tube.level("hose", 3.2, 0.0087),
            Orifice.solenoid("solenoid", 4e-3, 0.0087),
            Manifold.equal("block", 6, Tube.level("line", 0.35, 0.004), NitrousJet.of(0.8e-3)));
    private int i;

    /** Makes the states; the seed is fixed. */
    @Setup
    public void states() {
        SplittableRandom random = new SplittableRandom(20060501);
        for (int k = 0; k <= MASK; k++) {
            double t = random.nextDouble(265, 305);
            double boiling = NitrousOxide.saturationPressure(t);
            saturated[k] = NitrousOxide.saturatedLiquid(t);
            subcooled[k] = NitrousOxide.atTemperaturePressure(t, boiling + random.nextDouble(1e4, 3e6));
            mixed[k] = NitrousOxide.mixture(t, random.nextDouble(0.001, 0.999));
            vapour[k] = NitrousOxide.atTemperaturePressure(t, boiling * random.nextDouble(0.3, 0.99));
        }
    }

    private int next() {
        i = (i + 1) & MASK;
        return i;
    }

    /** Exact critical flux of saturated liquid. */
    @Benchmark
    public double exactSaturated() {
        return HomogeneousEquilibrium.criticalFlux(saturated[next()]).massFlux();
    }

    /** Exact critical flux of subcooled liquid. */
    @Benchmark
    public double exactSubcooled() {
        return HomogeneousEquilibrium.criticalFlux(subcooled[next()]).massFlux();
    }

    /** Exact critical flux of a mixture. */
    @Benchmark
    public double exactMixture() {
        return HomogeneousEquilibrium.criticalFlux(mixed[next()]).massFlux();
    }

    /** Exact critical flux of vapour. */
    @Benchmark
    public double exactVapour() {
        return HomogeneousEquilibrium.criticalFlux(vapour[next()]).massFlux();
    }

    /** Default law of one jet from saturated liquid. */
    @Benchmark
    public double jet() {
        return jet.massFlow(saturated[next()], MANIFOLD);
    }

    /** Hose, solenoid and one jet. */
    @Benchmark
    public double feedPathOneJet() {
        return single.massFlow(saturated[next()], MANIFOLD);
    }

    /** Hose, solenoid, block, six lines with a jet each. */
    @Benchmark
    public double feedPathSixJets() {
        return six.massFlow(saturated[next()], MANIFOLD);
    }
}
