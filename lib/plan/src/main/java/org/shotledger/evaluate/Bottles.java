package org.shotledger.evaluate;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shotledger.bottle.Outflow;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.Car;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;

/**
 * The days of bottles that several outcomes share, each run once, be it for one car or for cars that differ in something else; what
 * comes out is the same as without it. Safe for several threads; it holds whatever it has run, so it should live no longer than what
 * asks it.
 */
public final class Bottles {
    private final Map<Draw, Outflow> outflows;
    private final Map<Run, Day> days = new ConcurrentHashMap<>();

    /** All that a day depends on. */
    private record Run(
            Draw draw,
            BottleSheet bottle,
            double pressureLow,
            double pressureHigh,
            BottleFill fill,
            PassPlan passes,
            double air,
            double flowFactor) {}

    /** Nothing run yet. */
    public Bottles() {
        this(new ConcurrentHashMap<>());
    }

    private Bottles(Map<Draw, Outflow> outflows) {
        this.outflows = outflows;
    }

    /**
     * The same flows out of the bottle, and no day run yet: for one of many fillings, whose day is not asked for again.
     *
     * @return bottles that share the flows with these
     */
    public Bottles withoutDays() {
        return new Bottles(outflows);
    }

    /** The day of a setup on a car in a case; empty without nitrous. */
    Optional<Day> day(Car car, Setup setup, Case at) {
        if (setup.jets().isEmpty()) {
            return Optional.empty();
        }
        Draw draw = Draw.of(car, setup, at.air().pressure());
        Run run = new Run(
                draw,
                car.bottle(),
                car.limits().bottlePressureLow(),
                car.limits().bottlePressureHigh(),
                setup.bottle(),
                setup.passes(),
                at.air().temperature(),
                at.factors().of(Factor.NITROUS_FLOW));
        return Optional.of(days.computeIfAbsent(run, any -> {
            Outflow nominal = outflows.computeIfAbsent(draw, Draw::outflow);
            return Day.of(car, setup, nominal, run.air, run.flowFactor);
        }));
    }
}
