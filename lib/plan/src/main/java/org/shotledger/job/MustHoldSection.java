package org.shotledger.job;

import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.engine.MoistAir;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Target;
import org.shotledger.sheet.Section;

/** Reads the cases in which a plan must hold; the first is that of the target itself. */
final class MustHoldSection {
    /** How much colder and hotter than stated the day may be where the sheet does not say, K: our choice. */
    private static final double USUAL_SPREAD = 8;
    /** How much less than stated the voltage may be where the sheet does not say, V: common practice, no source. */
    private static final double USUAL_VOLTAGE_DROP = 0.7;

    private MustHoldSection() {}

    static List<Case> cases(Section root, Target target, Map<String, MoistAir> places, Car car) {
        MoistAir air = places.get(target.conditions());
        double volts = car.injection().voltage();
        Case stated = Case.of(target.conditions(), air, volts);
        Optional<Section> given = root.sectionIf("must-hold");
        double[] temperature = range(
                given,
                "temperature",
                TEMPERATURE,
                new double[] {air.temperature() - USUAL_SPREAD, air.temperature() + USUAL_SPREAD});
        double low = given.filter(s -> s.has("voltage"))
                .map(s -> s.figure("voltage", VOLTAGE, 8, 18))
                .orElse(volts - USUAL_VOLTAGE_DROP);
        List<Case> cases = new ArrayList<>();
        cases.add(stated);
        cases.add(stated.named("cold").withAir(at(air, temperature[0])));
        cases.add(stated.named("hot").withAir(at(air, temperature[1])));
        cases.add(stated.named("last second of the last pass").withBottle(BottleState.LAST));
        cases.add(stated.named("low voltage").withVoltage(low));
        double[] ethanol = range(given, "ethanol", FRACTION, new double[0]);
        if (ethanol.length > 0 && car.fuels().blend().isEmpty()) {
            given.get().report("ethanol", "The main fuel is no ethanol blend, so its content cannot vary; leave this line out.");
        } else if (ethanol.length > 0) {
            cases.add(stated.named("least ethanol").withFuel(ethanol[0]));
            cases.add(stated.named("most ethanol").withFuel(ethanol[1]));
        }
        return cases;
    }

    private static MoistAir at(MoistAir air, double temperature) {
        return new MoistAir(air.pressure(), temperature, air.relativeHumidity());
    }

    private static double[] range(
            Optional<Section> given, String key, org.shotledger.units.QuantityKind kind, double[] usual) {
        if (given.filter(s -> s.has(key)).isEmpty()) {
            return usual;
        }
        List<Double> ends = given.get().figures(key, kind, kind == FRACTION ? 0 : 220, kind == FRACTION ? 1 : 340);
        if (ends.size() != 2 || !(ends.get(0) <= ends.get(1))) {
            given.get().report(key, "Give the lowest and the highest, in that order, as in [12 degC, 34 degC].");
            return usual;
        }
        return new double[] {ends.get(0), ends.get(1)};
    }
}
