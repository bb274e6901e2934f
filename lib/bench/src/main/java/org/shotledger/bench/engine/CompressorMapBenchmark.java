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
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.MapPoint;
import org.shotledger.boost.OutsideMapException;

/** Speed, efficiency and borders of a flow and a pressure ratio, on 256 seeded places of the demo's map. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class CompressorMapBenchmark {
    private static final int MASK = 255;

    private final double[] flow = new double[MASK + 1];
    private final double[] ratio = new double[MASK + 1];
    private CompressorMap map;
    private int i;

    /** Draws places until enough lie on the map; the seed is fixed. */
    @Setup
    public void places() {
        map = DemoCar.job().car().turbo().map();
        SplittableRandom random = new SplittableRandom(19221117);
        int k = 0;
        while (k <= MASK) {
            flow[k] = random.nextDouble(0.1, 0.6);
            ratio[k] = random.nextDouble(1.2, 3.5);
            k += isInside(flow[k], ratio[k]) ? 1 : 0;
        }
    }

    private boolean isInside(double correctedFlow, double pressureRatio) {
        try {
            return map.locate(correctedFlow, pressureRatio).correctedRpm() > 0;
        } catch (OutsideMapException outside) {
            return false;
        }
    }

    /** A place on the map. */
    @Benchmark
    public MapPoint locate() {
        i = (i + 1) & MASK;
        return map.locate(flow[i], ratio[i]);
    }
}
