package org.shotledger.bench.fluid;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;
import org.shotledger.fluid.SaturationPoint;
import org.shotledger.fluid.StatePoint;

/** Time and allocation of fluid states, each call on the next of 1024 seeded states. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class FluidBenchmark {

    private static final int MASK = 1023;

    private final double[] saturated = new double[MASK + 1];
    private final double[] boiling = new double[MASK + 1];
    private final FluidState[] mixed = new FluidState[MASK + 1];
    private final FluidState[] liquid = new FluidState[MASK + 1];
    private final FluidState[] vapour = new FluidState[MASK + 1];
    private final SaturationPoint line = new SaturationPoint();
    private final StatePoint point = new StatePoint();
    private int i;

    /** Makes the states; the seed is fixed. */
    @Setup
    public void states() {
        SplittableRandom random = new SplittableRandom(20060501);
        for (int k = 0; k <= MASK; k++) {
            double t = random.nextDouble(190, 308);
            saturated[k] = t;
            boiling[k] = NitrousOxide.saturationPressure(t);
            mixed[k] = NitrousOxide.mixture(t, random.nextDouble(0.01, 0.99));
            double cold = random.nextDouble(250, 305);
            double over = NitrousOxide.saturationPressure(cold) * random.nextDouble(1.01, 2);
            liquid[k] = NitrousOxide.atTemperaturePressure(cold, over);
            double under = NitrousOxide.saturationPressure(cold) * random.nextDouble(0.1, 0.99);
            vapour[k] = NitrousOxide.atTemperaturePressure(cold, under);
        }
    }

    private int next() {
        i = (i + 1) & MASK;
        return i;
    }

    /** Vapour pressure of a temperature. */
    @Benchmark
    public double saturationPressure() {
        return SaturationCurve.pressure(saturated[next()]);
    }

    /** Boiling temperature of a pressure. */
    @Benchmark
    public double saturationTemperature() {
        return SaturationCurve.temperature(boiling[next()]);
    }

    /** p, rho', rho'', h', h'', s', s'' at a temperature. */
    @Benchmark
    public SaturationPoint allSaturationProperties() {
        return line.atTemperature(saturated[next()]);
    }

    /** Temperature, density, enthalpy and quality of a mixture from pressure and entropy. */
    @Benchmark
    public double mixtureByPressureEntropy() {
        FluidState s = mixed[next()];
        point.pressureEntropy(s.pressure(), s.entropy());
        return point.density() + point.enthalpy();
    }

    /** Density of a compressed liquid from temperature and pressure. */
    @Benchmark
    public double liquidDensityByTemperaturePressure() {
        FluidState s = liquid[next()];
        return point.temperaturePressure(s.temperature(), s.pressure()).density();
    }

    /** Density, enthalpy and entropy of a compressed liquid from temperature and pressure. */
    @Benchmark
    public double liquidByTemperaturePressure() {
        FluidState s = liquid[next()];
        point.temperaturePressure(s.temperature(), s.pressure());
        return point.density() + point.enthalpy() + point.entropy();
    }

    /** A compressed liquid from pressure and entropy. */
    @Benchmark
    public double liquidByPressureEntropy() {
        FluidState s = liquid[next()];
        return point.pressureEntropy(s.pressure(), s.entropy()).density();
    }

    /** A vapour from pressure and entropy. */
    @Benchmark
    public double vapourByPressureEntropy() {
        FluidState s = vapour[next()];
        return point.pressureEntropy(s.pressure(), s.entropy()).density();
    }

    /** A mixture from density and internal energy. */
    @Benchmark
    public double mixtureByDensityEnergy() {
        FluidState s = mixed[next()];
        return point.densityEnergy(s.density(), s.internalEnergy()).temperature();
    }

    /** The whole record of a liquid from temperature and pressure, by the everyday entry point. */
    @Benchmark
    public FluidState liquidRecord() {
        FluidState s = liquid[next()];
        return NitrousOxide.atTemperaturePressure(s.temperature(), s.pressure());
    }

    /** The whole record of a mixture from pressure and entropy, by the everyday entry point. */
    @Benchmark
    public FluidState mixtureRecord() {
        FluidState s = mixed[next()];
        return NitrousOxide.atPressureEntropy(s.pressure(), s.entropy());
    }
}
