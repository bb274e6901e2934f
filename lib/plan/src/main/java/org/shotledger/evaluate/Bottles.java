package org.shotledger.evaluate;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.shotledger.bottle.Outflow;
import org.shotledger.car.Car;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;

/**
 * The days of a car's bottle that several outcomes share, each run once; what comes out is the same as without it. Safe for several
 * threads; it holds whatever it has run, so it should live no longer than what asks it.
 */
public final class Bottles {
    private final Car car;
    private final Map<Drawn, Outflow> outflows;
    private final Map<Run, Day> days = new ConcurrentHashMap<>();

    /** All that the flow out of the bottle knows of setup and case. */
    private record Drawn(double nitrousBore, double downstream, double warmest) {}

    /** All that a day knows of them. */
    private record Run(Drawn drawn, BottleFill fill, PassPlan passes, double air, double flowFactor) {}

    /**
     * Nothing run yet.
     *
     * @param car what is built
     */
    public Bottles(Car car) {
        this(car, new ConcurrentHashMap<>());
    }

    private Bottles(Car car, Map<Drawn, Outflow> outflows) {
        this.car = car;
        this.outflows = outflows;
    }

    /**
     * The same flows out of the bottle, and no day run yet: for one of many fillings, whose day is not asked for again.
     *
     * @return bottles that share the flows with these
     */
    public Bottles withoutDays() {
        return new Bottles(car, outflows);
    }

    /** The car whose bottle it is. */
    Car car() {
        return car;
    }

    /** The day of a setup in a case; empty without nitrous. */
    Optional<Day> day(Setup setup, Case at) {
        return setup.jets().map(jets -> day(setup, at, jets.nitrousBore()));
    }

    private Day day(Setup setup, Case at, double nitrousBore) {
        double ambient = at.air().pressure();
        double air = at.air().temperature();
        double factor = at.factors().of(Factor.NITROUS_FLOW);
        Drawn drawn = new Drawn(nitrousBore, Day.downstream(setup, ambient), Day.warmest(car, setup));
        Run run = new Run(drawn, setup.bottle(), setup.passes(), air, factor);
        return days.computeIfAbsent(run, any -> {
            Outflow nominal = outflows.computeIfAbsent(drawn, same -> Day.outflow(car, setup, ambient));
            return Day.of(car, setup, nominal, air, factor);
        });
    }
}
