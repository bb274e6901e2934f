package org.shotledger.bench.engine;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shotledger.car.Car;
import org.shotledger.engine.ChargeMixing;
import org.shotledger.engine.Cycle;
import org.shotledger.engine.CycleInput;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.Intake;
import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.engine.TrappedCharge;
import org.shotledger.engine.Wiebe;
import org.shotledger.engine.Woschni;
import org.shotledger.fluid.NitrousOxide;

/** Closed cycles per second of one cylinder of the demo engine with nitrous, the timing walking over 64 values. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class CylinderBenchmark {
    private static final int MASK = 63;

    /** Crank angle step, degrees. */
    @Param({"1", "0.25"})
    public double step;

    private final CycleInput[] inputs = new CycleInput[MASK + 1];
    private Cylinder cylinder;
    private int i;

    /** Mixes and traps one charge. */
    @Setup
    public void charge() {
        Car car = DemoCar.job().car();
        var fuel = new FuelSupplied(car.fuels().main(), 298, 0.3);
        double rpm = 6500;
        double plenum = 2.4e5;
        Intake intake = new Intake(
                plenum, 320, 0.008, 0.03, NitrousOxide.saturatedLiquid(295).enthalpy(), fuel, 0.8, fuel, 0.03 / 5);
        var charge = ChargeMixing.mix(intake, car.engine().breathedVolume(rpm));
        var inside = new TrappedCharge.Inside(1.3 * plenum, 1100, 0);
        TrappedCharge trapped = TrappedCharge.reacting(car.engine(), rpm, charge, inside);
        for (int k = 0; k <= MASK; k++) {
            inputs[k] = trapped.cycle(rpm, Wiebe.of(-20 + 0.2 * k, 50), 450, 1.3 * plenum, 100);
        }
        cylinder = new Cylinder(car.engine(), -140, 140, step, new Woschni(1));
    }

    /** One closed cycle. */
    @Benchmark
    public Cycle cycle() {
        i = (i + 1) & MASK;
        return cylinder.run(inputs[i]);
    }
}
