package org.shotledger.evaluate;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.bottle.Charge;
import org.shotledger.bottle.Draw;
import org.shotledger.bottle.Emptying;
import org.shotledger.bottle.History;
import org.shotledger.bottle.Moment;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.Car;
import org.shotledger.fluid.FluidState;
import org.shotledger.setup.Setup;

/**
 * One bottle over the passes of a day, brought back between them to its start temperature or as far as its heater heats.
 *
 * @param passes the passes run, in order; the last may have been cut short
 * @param whole full passes: liquid left and the pressure band held for the whole time
 * @param given full passes and the share of time of the one that was cut short
 */
record Day(List<Pass> passes, int whole, double given) {
    private static final double ROW = 0.5;
    /** Passes are counted to this many more than asked for. */
    private static final int SPARE = 1;

    /** Copies the list. */
    Day {
        passes = List.copyOf(passes);
    }

    /**
     * One pass.
     *
     * @param history the bottle over its seconds
     * @param seconds time with liquid and pressure in the band, s
     * @param start what stands at the siphon when it begins
     */
    record Pass(History history, double seconds, FluidState start) {}

    static Day of(Car car, Setup setup, double plenum, double flowFactor) {
        BottleSheet bottle = car.bottle();
        Draw nominal = Draw.tabulated(
                car.nitrous().nitrous().path(car.nitrous().nozzles(), setup.jets().orElseThrow().nitrousBore()), plenum);
        Draw draw = flowFactor == 1 ? nominal : (time, outlet) -> flowFactor * nominal.massFlow(time, outlet);
        double seconds = setup.passes().seconds();
        double mass = setup.bottle().charge();
        List<Pass> passes = new ArrayList<>();
        int whole = 0;
        double share = 0;
        while (whole < setup.passes().count() + SPARE) {
            double temperature = passes.isEmpty()
                    ? setup.bottle().startTemperature()
                    : bottle.reheated(setup.bottle().startTemperature());
            Charge charge = bottle.vessel().charged(mass, temperature);
            History history = Emptying.of(charge, draw)
                    .withRows(ROW)
                    .withPressureLimit(car.limits().bottlePressureLow())
                    .withDuration(seconds)
                    .equilibrium();
            passes.add(new Pass(history, history.usableUntil(), charge.outlet()));
            share = Math.min(1, history.usableUntil() / seconds);
            if (share < 1 - 1e-9) {
                return new Day(passes, whole, whole + share);
            }
            whole++;
            mass -= history.massUsed();
        }
        return new Day(passes, whole, whole);
    }

    /** The pass that is the last one asked for, or the last that could be run. */
    Pass last(int asked) {
        return passes.get(Math.min(asked, passes.size()) - 1);
    }

    /** State of the liquid at the end of a pass. */
    static FluidState end(Pass pass) {
        Moment moment = pass.history.at(pass.seconds);
        return org.shotledger.fluid.NitrousOxide.saturatedLiquid(moment.temperature());
    }
}
