package org.shotledger.whathelps;

import static org.shotledger.whathelps.Change.larger;
import static org.shotledger.whathelps.Change.plus;
import static org.shotledger.whathelps.Change.times;
import static org.shotledger.whathelps.Change.to;
import static org.shotledger.whathelps.Cost.COOLER;
import static org.shotledger.whathelps.Cost.ENGINE;
import static org.shotledger.whathelps.Cost.FUEL;
import static org.shotledger.whathelps.Cost.PUMP;
import static org.shotledger.whathelps.Cost.SETTING;
import static org.shotledger.whathelps.Cost.SMALL_PART;
import static org.shotledger.whathelps.Cost.TURBO;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.job.Catalogue;
import org.shotledger.units.Amount;

/**
 * Changes an engine builder reaches for, in the order of what they usually cost. The order is common practice, no source: make a
 * list of your own from it where your prices differ.
 */
public final class CommonChanges {
    private static final String NITROUS_SOLENOID = "nitrous-system.nitrous.solenoid.bore";
    private static final String FUEL_SOLENOID = "nitrous-system.fuel.solenoid.bore";
    private static final String HOSE = "nitrous-system.nitrous.hose-bore";
    private static final String INJECTORS = "injection.injector.flow";

    /** The changes, cheapest first. */
    public static final List<Change> ALL = List.of(
            to(
                    "let the nitrous fuel regulator follow the boost",
                    "nitrous-system.fuel.regulator.boost-reference",
                    SETTING,
                    "1"),
            times(
                    "more pressure for the nitrous fuel",
                    "nitrous-system.fuel.regulator.base-pressure",
                    SETTING,
                    1.15,
                    1.3),
            plus("a warmer bottle at the start", "bottle.start-temperature", SETTING, 2),
            plus("a cooler bottle at the start", "bottle.start-temperature", SETTING, -4),
            plus("more spark retard with nitrous", "tune.nitrous-retard", SETTING, 2, 4),
            plus("a richer mixture with nitrous", "tune.nitrous-lambda", SETTING, -0.02, -0.04),
            plus("a leaner mixture with nitrous", "tune.nitrous-lambda", SETTING, 0.02, 0.04),
            times("begin the nitrous at a higher engine speed", "nitrous-system.arming.rpm-low", SETTING, 1.08),
            times("a larger nitrous solenoid", NITROUS_SOLENOID, SMALL_PART, 1.25, 1.5),
            times("a larger fuel solenoid", FUEL_SOLENOID, SMALL_PART, 1.25, 1.5),
            times("a wider nitrous hose", HOSE, SMALL_PART, 1.4),
            plus("one more nitrous fuel pump beside the first", "nitrous-system.fuel.pumps.count", PUMP, 1),
            plus("one more main fuel pump", "injection.pumps.count", PUMP, 1),
            times("larger main injectors", INJECTORS, FUEL, 1.2, 1.6),
            to("another nitrous fuel", "fuels.nitrous.kind", FUEL, "methanol", "gasoline"),
            times("a better charge cooler", "turbo.charge-cooler.effectiveness", COOLER, 1.1, 1.2),
            times("a higher boost ceiling", "turbo.boost-ceiling", TURBO, 1.1, 1.2),
            times("a larger turbine", "turbo.turbine.effective-area", TURBO, 1.15),
            times("a crank, rods and driveline for more torque", "limits.crank-torque", ENGINE, 1.1, 1.25),
            times("pistons and head gasket for more pressure", "limits.peak-pressure", ENGINE, 1.1, 1.25));

    private static final int SIZES = 2;

    private CommonChanges() {}

    /**
     * The common changes, with the next larger parts of a catalogue in place of larger figures.
     *
     * @param catalogue folder with {@code solenoids.csv}, {@code hoses.csv} and {@code injectors.csv}
     * @return the changes, cheapest first
     * @throws org.shotledger.sheet.SheetException when one of the files cannot be used
     */
    public static List<Change> withParts(Path catalogue) {
        Catalogue solenoids = Catalogue.read(catalogue.resolve("solenoids.csv"));
        List<Amount> hoses =
                sizes(Catalogue.read(catalogue.resolve("hoses.csv")).parts(), "hose bore");
        List<Amount> injectors =
                sizes(Catalogue.read(catalogue.resolve("injectors.csv")).parts(), "flow");
        List<Change> parts = List.of(
                larger("a larger nitrous solenoid", NITROUS_SOLENOID, SMALL_PART, bores(solenoids, "nitrous"), SIZES),
                larger("a larger fuel solenoid", FUEL_SOLENOID, SMALL_PART, bores(solenoids, "fuel"), SIZES),
                larger("a wider nitrous hose", HOSE, SMALL_PART, hoses, SIZES),
                larger("larger main injectors", INJECTORS, FUEL, injectors, SIZES));
        List<Change> all = new ArrayList<>();
        for (Change change : ALL) {
            all.add(parts.stream()
                    .filter(part -> part.path().equals(change.path()))
                    .findFirst()
                    .orElse(change));
        }
        return all;
    }

    private static List<Amount> bores(Catalogue solenoids, String use) {
        return sizes(
                solenoids.parts().stream()
                        .filter(part -> part.name().equals(use))
                        .toList(),
                "bore");
    }

    private static List<Amount> sizes(List<Catalogue.Part> parts, String figure) {
        return parts.stream().map(part -> part.figure(figure)).toList();
    }
}
