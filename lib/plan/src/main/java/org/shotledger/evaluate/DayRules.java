package org.shotledger.evaluate;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.VOLUME;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.bottle.FillingLimit;
import org.shotledger.bottle.Pass;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Provenance;
import org.shotledger.limits.Side;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.PinPlacement;
import org.shotledger.wiring.Wiring;

/** Every limit of bottle, nozzles and supply that does not ask at which engine speed; the one place that lists them. */
final class DayRules {
    /** Pressure of a bottle 1 K below the critical temperature, above which there is no liquid, Pa. */
    private static final double WARMEST_LIQUID = NitrousOxide.saturationPressure(NitrousOxide.CRITICAL_TEMPERATURE - 1);
    /** Difference of temperature that counts as much as a whole bound, K: our choice, so that less than 3 K is called tight. */
    private static final double TEMPERATURE_SCALE = 60;
    /** Highest temperature of the equation of state, K: Lemmon and Span, 2006. */
    private static final double HOTTEST = 525;
    /** Share of the fuel cell that the pump can take out: common practice, no source. */
    private static final double USABLE_CELL = 0.9;

    private final Car car;
    private final Setup setup;
    private final String caseName;
    private final List<Limit> limits = new ArrayList<>();

    private DayRules(Car car, Setup setup, String caseName) {
        this.car = car;
        this.setup = setup;
        this.caseName = caseName;
    }

    /** The limits of a day with nitrous. */
    static List<Limit> of(Car car, Setup setup, String caseName, Day day, double fuelVolumeFlow) {
        DayRules rules = new DayRules(car, setup, caseName);
        rules.bottle(day);
        rules.filling();
        rules.fuel(fuelVolumeFlow);
        rules.holes(setup.jets().orElseThrow());
        rules.window();
        rules.pins();
        return rules.limits;
    }

    private void bottle(Day day) {
        Pass last = day.last(setup.passes().count());
        add(
                Side.AT_LEAST,
                "bottle-low",
                "bottle pressure, low side",
                ABSOLUTE_PRESSURE,
                last.lowestPressure(),
                car.limits().bottlePressureLow(),
                "limits.bottle-pressure-low",
                "too little nitrous oxide: rich and weak",
                "lowest in the last pass");
        add(
                Side.AT_MOST,
                "bottle-hot",
                "bottle near its critical point",
                ABSOLUTE_PRESSURE,
                NitrousOxide.saturationPressure(
                        Math.min(setup.bottle().startTemperature(), NitrousOxide.CRITICAL_TEMPERATURE)),
                WARMEST_LIQUID,
                "",
                "no liquid is left: pressure without flow, and no figure here holds",
                "start of a pass");
        add(
                Side.AT_LEAST,
                "passes",
                "passes from one filling",
                RATIO,
                day.given(setup.passes().seconds()),
                setup.passes().count(),
                "target.passes",
                "the bottle does not last: liquid or pressure ends before the pass does",
                "all passes");
    }

    /** The hard limits of the filling; each stands in the list under its own key. */
    private void filling() {
        FillingCheck check = FillingCheck.of(
                car.bottle().filling(setup.bottle().charge(), setup.bottle().startTemperature(), car.limits()));
        for (FillingLimit limit : check.limits()) {
            limits.add(new Limit(
                    limit.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                    limit.kind().words(),
                    kind(limit.kind()),
                    limit.beyond() ? Double.NaN : limit.value(),
                    bound(limit),
                    limit.kind().upper() ? Side.AT_MOST : Side.AT_LEAST,
                    true,
                    "the bottle can burst, or empty itself into the car",
                    known(limit.kind()),
                    limit.reason(BothUnits.FIGURES),
                    "the bottle as charged",
                    caseName,
                    scale(limit)));
        }
    }

    /** A charge so small that it never fills the bottle with liquid is held against the end of the equation of state. */
    private static double bound(FillingLimit limit) {
        return Double.isInfinite(limit.bound()) ? HOTTEST : limit.bound();
    }

    /** A rule is published; a marking that the sheet does not state is only assumed. */
    private Provenance known(FillingLimit.Kind kind) {
        return switch (kind) {
            case SERVICE_PRESSURE, PRESSURE_AT_21, DISC_RATING ->
                car.origin("bottle.service-pressure")
                        .filter(Origin::stated)
                        .map(origin -> Provenance.PUBLISHED)
                        .orElse(Provenance.ASSUMED);
            default -> Provenance.PUBLISHED;
        };
    }

    /** A marking suffices or does not; a temperature has no zero of its own; all else is compared with its bound. */
    private static double scale(FillingLimit limit) {
        return switch (limit.kind()) {
            case SERVICE_PRESSURE, DISC_RATING -> Math.max(Math.abs(limit.margin()), Double.MIN_NORMAL);
            case START_TEMPERATURE, HEATER_OFF -> TEMPERATURE_SCALE;
            default -> Math.abs(bound(limit));
        };
    }

    private static QuantityKind kind(FillingLimit.Kind kind) {
        return switch (kind) {
            case FILLING_DENSITY -> RATIO;
            case START_TEMPERATURE, HEATER_OFF -> TEMPERATURE;
            default -> ABSOLUTE_PRESSURE;
        };
    }

    /** Fuel from the main rail comes out of the tank, which no sheet describes. */
    private void fuel(double volumeFlow) {
        car.nitrous()
                .fuel()
                .cell()
                .ifPresent(cell -> add(
                        Side.AT_MOST,
                        "fuel-cell",
                        "nitrous fuel of all passes from its cell",
                        VOLUME,
                        volumeFlow * setup.passes().seconds() * setup.passes().count(),
                        cell.volume() * USABLE_CELL,
                        "nitrous-system.fuel.cell-volume",
                        "the pump draws air: the mixture goes lean at full nitrous",
                        "all passes"));
    }

    /** The limits on sizes alone. */
    static List<Limit> sizes(Car car, Setup setup, JetPair pair) {
        DayRules rules = new DayRules(car, setup, "");
        rules.holes(pair);
        return rules.limits;
    }

    private void holes(JetPair pair) {
        share(
                "nitrous-solenoid",
                "nitrous jets against their solenoid",
                pair.nitrousBore(),
                car.nitrous().nitrous().solenoid(),
                "the solenoid, not the jets, sets the flow");
        share(
                "fuel-solenoid",
                "fuel jets against their solenoid",
                pair.fuelBore(),
                car.nitrous().fuel().solenoid(),
                "the solenoid, not the jets, sets the fuel");
        car.nitrous().passages().ifPresent(passages -> {
            passage("nitrous", pair.nitrousBore(), passages.nitrousBore());
            passage("fuel", pair.fuelBore(), passages.fuelBore());
        });
    }

    private void share(String key, String name, double bore, Solenoid solenoid, String consequence) {
        double jets = car.nitrous().nozzles() * bore * bore / (solenoid.bore() * solenoid.bore());
        add(
                Side.AT_MOST,
                key,
                name,
                FRACTION,
                jets,
                car.limits().solenoidShare(),
                "limits.solenoid-share",
                consequence,
                "sizes");
    }

    private void passage(String side, double jet, double passage) {
        add(
                Side.AT_MOST,
                side + "-passage",
                side + " jet against the nozzle's own passage",
                FRACTION,
                jet * jet / (passage * passage),
                car.limits().passageShare(),
                "limits.passage-share",
                "the nozzle, not the jet, sets the flow: larger jets change nothing",
                "sizes");
    }

    /** The room is counted from the window's own lower end: 100 rpm are little at 8000 and much in a narrow window. */
    private void window() {
        var window = setup.arming();
        double red = car.engine().redLineRpm();
        add(
                Side.AT_MOST,
                "rpm-window",
                "speeds with nitrous under the red line",
                FRACTION,
                (window.rpmHigh() - window.rpmLow()) / (red - window.rpmLow()),
                1,
                "engine.red-line",
                "the nitrous is still on when the engine meets its limiter: fuel is cut, nitrous is not",
                "arming conditions");
    }

    /** Kept or not: the nitrous must not be armed while a signal that must be there has no pin. */
    private void pins() {
        car.wiring().map(Wiring::pins).ifPresent(plan -> {
            List<PinPlacement> missing = plan.missing();
            limits.add(new Limit(
                    "pins",
                    "signals that must be there and have no pin",
                    COUNT,
                    missing.size(),
                    0,
                    Side.AT_MOST,
                    true,
                    "the controller cannot watch or switch the nitrous system: it must not be armed",
                    car.provenance("wiring.signals"),
                    missing.isEmpty()
                            ? "every signal that must be there has a pin"
                            : missing.stream()
                                    .map(one -> one.signal().name() + " (" + one.why() + ")")
                                    .collect(Collectors.joining("; ")),
                    "the controller's pins",
                    caseName,
                    0));
        });
    }

    private void add(
            Side side,
            String key,
            String name,
            QuantityKind kind,
            double value,
            double bound,
            String path,
            String consequence,
            String place) {
        limits.add(new Limit(
                key,
                name,
                kind,
                value,
                bound,
                side,
                false,
                consequence,
                car.provenance(path),
                car.reason(path),
                place,
                caseName,
                Math.abs(bound)));
    }
}
