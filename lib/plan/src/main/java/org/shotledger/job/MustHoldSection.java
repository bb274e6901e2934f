package org.shotledger.job;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.engine.MoistAir;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.QuantityKind;

/** Reads what the cases in which a plan must hold range over; the first case is always that of the target itself. */
final class MustHoldSection {
    /** How much colder and hotter than stated the day may be where the sheet does not say, K: our choice. */
    private static final double USUAL_SPREAD = 8;
    /** How much less than stated the voltage may be where the sheet does not say, V: common practice, no source. */
    private static final double USUAL_VOLTAGE_DROP = 0.7;

    private record Range(double low, double high) {}

    private final Optional<SheetSection> section;
    private final Optional<Range> temperature;
    private final Optional<Range> ethanol;
    private final Optional<Double> voltage;

    MustHoldSection(SheetSection root) {
        section = root.sectionIf("must-hold");
        temperature = section.flatMap(s -> range(s, "temperature", TEMPERATURE, 220, 340));
        ethanol = section.flatMap(s -> range(s, "ethanol", FRACTION, 0, 1));
        voltage = section.filter(s -> s.has("voltage")).map(s -> s.figure("voltage", VOLTAGE, 8, 18));
        section.ifPresent(s -> s.make(() -> s));
    }

    List<Case> cases(String conditions, MoistAir air, Car car) {
        double volts = car.injection().voltage();
        Case stated = Case.of(conditions, air, volts);
        Range day = temperature.orElse(new Range(air.temperature() - USUAL_SPREAD, air.temperature() + USUAL_SPREAD));
        List<Case> cases = new ArrayList<>();
        cases.add(stated);
        cases.add(stated.named("cold").withAir(at(air, day.low)));
        cases.add(stated.named("hot").withAir(at(air, day.high)));
        cases.add(stated.named("last second of the last pass").withBottle(BottleState.LAST));
        cases.add(stated.named("low voltage").withVoltage(voltage.orElse(volts - USUAL_VOLTAGE_DROP)));
        ethanol.ifPresent(content -> {
            if (car.fuels().blend().isEmpty()) {
                section.orElseThrow()
                        .report(
                                "ethanol",
                                "The main fuel is no ethanol blend, so its content cannot vary; leave this out.");
            }
            cases.add(stated.named("least ethanol").withFuel(content.low));
            cases.add(stated.named("most ethanol").withFuel(content.high));
        });
        return cases;
    }

    private static MoistAir at(MoistAir air, double temperature) {
        return new MoistAir(air.pressure(), temperature, air.relativeHumidity());
    }

    private static Optional<Range> range(SheetSection s, String key, QuantityKind kind, double low, double high) {
        if (!s.has(key)) {
            return Optional.empty();
        }
        List<Double> ends = s.figures(key, kind, low, high);
        if (ends.size() != 2 || !(ends.get(0) <= ends.get(1))) {
            s.report(key, "Give the lowest and the highest, in that order, as in [12 degC, 34 degC].");
            return Optional.empty();
        }
        return Optional.of(new Range(ends.get(0), ends.get(1)));
    }
}
