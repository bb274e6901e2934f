package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.build.Build;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.NozzlePosition;
import org.shotledger.nitrous.WetKit;

/**
 * One engine speed, cylinder by cylinder. With a nozzle in each runner a blocked jet starves its own cylinder alone, while the
 * others share what the solenoid passes; nozzles before the runners are taken as mixed evenly.
 *
 * <p>A cylinder is evaluated as if all were like it: at the common plenum pressure it mixes and breathes its own charge, so its
 * mixture and pressure are its own; only compressor and charge cooler would see another engine, which moves the air temperature
 * slightly.
 *
 * @param engine all cylinders together, both flows of the kit spread evenly
 * @param groups cylinders that are alike
 */
record Cylinders(Evaluation engine, List<Group> groups) {

    /** Cylinders that are alike, and the engine as if all were. */
    record Group(int count, Evaluation asIfAll) {}

    /** Evaluates a speed. */
    static Cylinders of(Situation s, double rpm, double plenum, FeedFlow feed) {
        FuelFlow fuel = fuel(s, plenum);
        Evaluation engine = evaluate(s, rpm, plenum, feed, fuel);
        WetKit kit = s.build().wetKit();
        int cylinders = s.build().engine().cylinders();
        boolean even = s.nitrousOpen() % kit.nozzles() == 0 && s.fuelOpen() % kit.nozzles() == 0;
        if (even || kit.position() != NozzlePosition.RUNNER || kit.nozzles() != cylinders) {
            return new Cylinders(engine, List.of(new Group(cylinders, engine)));
        }
        return new Cylinders(engine, groups(s, rpm, plenum, feed, fuel));
    }

    /** Blocked fuel jets stand on the first cylinders, blocked nitrous jets on the last. */
    private static List<Group> groups(Situation s, double rpm, double plenum, FeedFlow feed, FuelFlow fuel) {
        int cylinders = s.build().engine().cylinders();
        List<Group> groups = new ArrayList<>();
        int noFuel = cylinders - s.fuelOpen();
        int noNitrous = cylinders - s.nitrousOpen();
        int neither = Math.max(0, noFuel + noNitrous - cylinders);
        int[] counts = {neither, noFuel - neither, noNitrous - neither, cylinders - noFuel - noNitrous + neither};
        for (int kind = 0; kind < counts.length; kind++) {
            if (counts[kind] > 0) {
                boolean withNitrous = kind % 2 == 1;
                boolean withFuel = kind >= 2;
                double moreNitrous = withNitrous ? (double) cylinders / s.nitrousOpen() : 0;
                double moreFuel = withFuel ? (double) cylinders / s.fuelOpen() : 0;
                Evaluation as = evaluate(s, rpm, plenum, feed.times(moreNitrous), fuel.times(moreFuel));
                groups.add(new Group(counts[kind], as));
            }
        }
        return groups;
    }

    /** The spark is retarded in every cylinder while nitrous flows into any. */
    private static Evaluation evaluate(Situation s, double rpm, double plenum, FeedFlow feed, FuelFlow fuel) {
        Demand boost = Demand.boost(plenum);
        return s.evaluator().at(s.conditions(), rpm, s.nitrousOpen() > 0 ? boost.with(s.jets()) : boost, feed, fuel);
    }

    private static FuelFlow fuel(Situation s, double plenum) {
        Demand boost = Demand.boost(plenum);
        if (s.fuelOpen() == 0) {
            return s.evaluator().nitrousFuel(s.conditions(), boost);
        }
        Build build = s.build();
        double density = build.fuels().nitrous().density(build.fuels().temperature());
        return build.wetKit()
                .fuel()
                .flow(
                        density,
                        s.fuelOpen(),
                        s.jets().fuelBore(),
                        Evaluator.pressures(s.conditions(), boost),
                        s.conditions().voltage());
    }

    /** Wheel power, each cylinder giving its own share, W. */
    double wheelPower() {
        double sum = 0;
        int count = 0;
        for (Group group : groups) {
            sum += group.count() * group.asIfAll().wheelPower();
            count += group.count();
        }
        return sum / count;
    }
}
