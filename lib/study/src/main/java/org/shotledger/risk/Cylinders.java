package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
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
 * @param engine all cylinders together, both flows of the nitrous system spread evenly
 * @param groups cylinders that are alike
 */
record Cylinders(OperatingPoint engine, List<Group> groups) {

    /** Cylinders that are alike, and the engine as if all were. */
    record Group(int count, OperatingPoint asIfAll) {}

    /** Evaluates a speed. */
    static Cylinders of(Scenario s, double rpm, double plenum, FeedFlow feed) {
        PointModel model = SystemFlows.model(s);
        FuelFlow fuel = SystemFlows.fuel(s, model, plenum);
        OperatingPoint engine = evaluate(s, model, rpm, plenum, feed, fuel);
        WetKit kit = s.car().nitrous();
        int cylinders = s.car().engine().cylinders();
        boolean even = s.nitrousOpen() % kit.nozzles() == 0 && s.fuelOpen() % kit.nozzles() == 0;
        if (even || kit.position() != NozzlePosition.RUNNER || kit.nozzles() != cylinders) {
            return new Cylinders(engine, List.of(new Group(cylinders, engine)));
        }
        return new Cylinders(engine, groups(s, model, rpm, plenum, feed, fuel));
    }

    /** Blocked fuel jets stand on the first cylinders, blocked nitrous jets on the last. */
    private static List<Group> groups(
            Scenario s, PointModel model, double rpm, double plenum, FeedFlow feed, FuelFlow fuel) {
        int cylinders = s.car().engine().cylinders();
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
                OperatingPoint as = evaluate(s, model, rpm, plenum, feed.times(moreNitrous), fuel.times(moreFuel));
                groups.add(new Group(counts[kind], as));
            }
        }
        return groups;
    }

    /** The spark is retarded in every cylinder while nitrous flows into any. */
    private static OperatingPoint evaluate(
            Scenario s, PointModel model, double rpm, double plenum, FeedFlow feed, FuelFlow fuel) {
        return model.at(rpm, plenum, s.flows() ? Mode.NITROUS : Mode.ARMED, feed, fuel);
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
