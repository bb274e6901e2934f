package org.shotledger.job;

import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.VOLTAGE;
import static org.shotledger.units.QuantityKind.VOLUME;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.setup.DaySheet;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.UnitSystem;

/** Reads what is done with the bottles over a day; a sheet without it has the usual day. */
final class DaySection {
    private static final String HABIT = "common practice, no source";

    private DaySection() {}

    /** The day; null when its section is wrong. */
    static DaySheet day(SheetSection root) {
        Optional<SheetSection> section = root.sectionIf("day");
        return section.isEmpty() ? DaySheet.USUAL : read(section.get());
    }

    private static DaySheet read(SheetSection s) {
        DaySheet usual = DaySheet.USUAL;
        double rest = s.figureOr("rest", TIME, 10, 1e5, usual.rest(), HABIT);
        double voltage = s.figureOr("heater-voltage", VOLTAGE, 8, 18, usual.voltage(), HABIT + ": the battery alone");
        int bottles = s.countOr("bottles", 1, 10, usual.bottles(), "one bottle");
        double step = s.figureOr("scale-step", MASS, 0.01, 10, usual.scaleStep(), "a pound");
        OptionalDouble chilled = s.has("chilled-to")
                ? OptionalDouble.of(s.figure("chilled-to", TEMPERATURE, 200, 309))
                : OptionalDouble.empty();
        Optional<DaySheet.Mother> mother = s.sectionIf("mother-bottle").map(DaySection::mother);
        return s.make(() -> new DaySheet(rest, voltage, bottles, mother, chilled, step));
    }

    private static DaySheet.Mother mother(SheetSection s) {
        double capacity = s.figure("water-capacity", VOLUME, 1e-3, 1);
        double charge = s.figure("charge", MASS, 0.5, 700);
        double temperature = s.figure("temperature", TEMPERATURE, 233, 309);
        double most = 1000 * FillingCheck.LARGEST_DENSITY * capacity;
        if (charge > most) {
            s.report(
                    "charge",
                    "The mother bottle holds " + MASS.text(charge, UnitSystem.US) + "; 49 CFR 173.304a(a)(2) allows "
                            + MASS.text(most, UnitSystem.US)
                            + " in its water capacity: weigh it and read its marking anew,"
                            + " this limit is not to be moved.");
        }
        return s.make(() -> new DaySheet.Mother(capacity, charge, temperature));
    }
}
