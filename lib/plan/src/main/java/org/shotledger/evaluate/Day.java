package org.shotledger.evaluate;

import org.shotledger.bottle.Charge;
import org.shotledger.bottle.Outflow;
import org.shotledger.bottle.Pass;
import org.shotledger.bottle.PassTask;
import org.shotledger.bottle.Passes;
import org.shotledger.bottle.Sample;
import org.shotledger.bottle.WorkingBand;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.Car;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.Setup;

/**
 * One bottle over the passes of a day, brought back between them to its start temperature or as far as its heater heats.
 *
 * @param passes the passes run, in order; the last may have been cut short
 */
record Day(Passes passes) {
    /** Passes are counted to this many more than asked for. */
    private static final int SPARE = 1;
    /** Warmest saturated liquid that is taken, K: just below the critical temperature. */
    private static final double HOTTEST_LIQUID = 309.5;
    /** Pressure over that of boiling from which the liquid counts as compressed: our choice, above what rounding leaves. */
    private static final double COMPRESSED = 1.001;
    /** Share of that pressure below which no superheat is told from rounding. */
    private static final double ROUNDING = 1e-9;

    /**
     * Runs the passes.
     *
     * @param nominal what the jets take
     * @param air temperature of the air, K
     * @param flowFactor what the case multiplies that flow by
     */
    static Day of(Car car, Setup setup, Outflow nominal, double air, double flowFactor) {
        Charge charge = car.bottle()
                .vessel()
                .charged(setup.bottle().charge(), setup.bottle().startTemperature());
        return new Day(Passes.of(
                charge,
                task(car, setup, nominal, air, flowFactor),
                setup.passes().count() + SPARE));
    }

    /** What one pass takes, and how the bottle is brought back after it. */
    static PassTask task(Car car, Setup setup, Outflow nominal, double air, double flowFactor) {
        BottleSheet bottle = car.bottle();
        Outflow outflow = flowFactor == 1 ? nominal : (time, outlet) -> flowFactor * nominal.massFlow(time, outlet);
        double start = setup.bottle().startTemperature();
        return PassTask.of(
                bottle.vessel(),
                outflow,
                setup.passes().seconds(),
                new WorkingBand(car.limits().bottlePressureLow(), car.limits().bottlePressureHigh()),
                air,
                bottle.reheated(start));
    }

    /** Full passes and the share of time of the one that was cut short. */
    double given(double seconds) {
        Pass last = passes.passes().get(passes.passes().size() - 1);
        return passes.whole() + (last.whole() ? 0 : last.seconds() / seconds);
    }

    /** The pass that is the last one asked for, or the last that could be run. */
    Pass last(int asked) {
        return passes.passes().get(Math.min(asked, passes.passes().size()) - 1);
    }

    /** What enters the siphon in the last moment of a pass. */
    static FluidState end(Pass pass) {
        return entering(pass, pass.history().last());
    }

    /**
     * What enters the siphon in a moment of a pass: the liquid, flashed to the bottle's pressure where that has fallen below the one at
     * which it boils, compressed where it stands above.
     */
    static FluidState entering(Pass pass, Sample then) {
        if (then.time() == 0) {
            return pass.start().outlet();
        }
        double temperature = Math.min(then.temperature(), HOTTEST_LIQUID);
        FluidState liquid = NitrousOxide.saturatedLiquid(temperature);
        if (then.pressure() > COMPRESSED * liquid.pressure()) {
            return NitrousOxide.atTemperaturePressure(temperature, then.pressure());
        }
        if (then.pressure() > (1 - ROUNDING) * liquid.pressure()) {
            return liquid;
        }
        double enthalpy = liquid.internalEnergy() + then.pressure() / liquid.density();
        return NitrousOxide.atPressureEnthalpy(then.pressure(), enthalpy);
    }
}
