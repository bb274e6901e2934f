package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.verdict;
import static org.shotledger.table.Column.words;
import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.TORQUE;
import static org.shotledger.units.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;
import org.shotledger.setup.Case;
import org.shotledger.table.Listing;

/** What happens with a setup, as tables. */
public final class OutcomeTables {
    /** Steps of what is printed: our choice, what fits a sheet of paper and is still smooth. */
    private static final double RPM_STEP = 200;

    private static final double TIME_STEP = 1;

    private OutcomeTables() {}

    /** One engine speed: on boost alone, and armed; empty where nothing is armed or the models have no answer for it. */
    private record Speed(OperatingPoint off, Optional<OperatingPoint> armed, boolean unanswered) {
        Optional<OperatingPoint> nitrous() {
            return armed.filter(point -> point.mode() == Mode.NITROUS);
        }

        OperatingPoint now() {
            return nitrous().orElse(off);
        }

        /** A figure of the engine as it runs armed; without an answer of the models there is none. */
        double now(ToDoubleFunction<OperatingPoint> figure) {
            return unanswered ? Double.NaN : figure.applyAsDouble(now());
        }
    }

    /**
     * Boost alone and nitrous over engine speed.
     *
     * @param outcome the outcome
     * @return one row every 200 rev/min, and at the ends of the speeds with nitrous and the power peak
     */
    public static Listing of(Outcome outcome) {
        return Listing.of(
                "Over engine speed, case '" + outcome.at().name() + "'",
                speeds(outcome),
                column("Engine speed", ROTATION, row -> row.off.rpm()),
                column("Boost, nitrous off", GAUGE_PRESSURE, row -> row.off.gaugePressure()),
                column("Power, nitrous off", POWER, row -> row.off.wheelPower()),
                column(
                        "Boost, armed",
                        GAUGE_PRESSURE,
                        row -> row.armed.map(OperatingPoint::gaugePressure).orElse(Double.NaN)),
                column(
                        "Power, nitrous on",
                        POWER,
                        row -> row.nitrous().map(OperatingPoint::wheelPower).orElse(Double.NaN)),
                column(
                        "Nitrous adds",
                        POWER,
                        row -> row.nitrous()
                                .map(on -> on.wheelPower() - row.off.wheelPower())
                                .orElse(Double.NaN)),
                column("Crank torque", TORQUE, row -> row.now(OperatingPoint::crankTorque)),
                column("Lambda", RATIO, row -> row.now(OperatingPoint::lambda)),
                column(
                        "Margin",
                        FRACTION,
                        row -> row.now(now -> PointLimits.of(outcome.car(), now).margin())),
                words(
                        "First limit",
                        row -> row.unanswered
                                ? "no answer of the models"
                                : PointLimits.of(outcome.car(), row.now()).name()));
    }

    private static List<Speed> speeds(Outcome outcome) {
        List<OperatingPoint> on = outcome.withNitrous();
        List<Speed> rows = new ArrayList<>();
        for (OperatingPoint off : outcome.off()) {
            Optional<OperatingPoint> armed = at(outcome.armed(), off.rpm());
            Speed row = new Speed(
                    off, armed, armed.isEmpty() && outcome.setup().jets().isPresent());
            boolean end = !on.isEmpty()
                    && (off.rpm() == on.get(0).rpm()
                            || off.rpm() == on.get(on.size() - 1).rpm());
            boolean peak =
                    outcome.strongest().filter(best -> best.rpm() == off.rpm()).isPresent();
            if (off.rpm() % RPM_STEP == 0 || end || peak) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static Optional<OperatingPoint> at(List<OperatingPoint> points, double rpm) {
        return points.stream().filter(point -> point.rpm() == rpm).findFirst();
    }

    /**
     * The same setup in every case.
     *
     * @param outcomes the outcomes
     * @return one row a case
     */
    public static Listing outcomes(List<Outcome> outcomes) {
        return Listing.of(
                "The same setup in every case",
                outcomes,
                words("Case", out -> out.at().name()),
                column("Best power", POWER, Outcome::power),
                column(
                        "at",
                        ROTATION,
                        out -> out.strongest().map(OperatingPoint::rpm).orElse(Double.NaN)),
                column(
                        "Leanest, nitrous on",
                        RATIO,
                        out -> on(out, points -> points.max().orElse(Double.NaN))),
                column(
                        "Richest, nitrous on",
                        RATIO,
                        out -> on(out, points -> points.min().orElse(Double.NaN))),
                column("Margin", FRACTION, out -> out.limits().leastMargin()),
                words(
                        "Closest limit",
                        out -> out.limits().first().map(Limit::name).orElse("none")),
                verdict("Verdict", out -> out.limits().verdict()));
    }

    private static double on(Outcome out, ToDoubleFunction<java.util.stream.DoubleStream> pick) {
        return pick.applyAsDouble(out.withNitrous().stream().mapToDouble(OperatingPoint::lambda));
    }

    /**
     * What the cases are.
     *
     * @param cases the cases
     * @return one row a case
     */
    public static Listing cases(List<Case> cases) {
        return Listing.of(
                "The cases in which the setup must hold",
                cases,
                words("Case", Case::name),
                column("Air", TEMPERATURE, at -> at.air().temperature()),
                column("Pressure of the air", ABSOLUTE_PRESSURE, at -> at.air().pressure()),
                column("Humidity", FRACTION, at -> at.air().relativeHumidity()),
                words("Main fuel", OutcomeTables::fuel),
                words("Bottle", at -> at.bottle().moment().words()),
                column("Voltage", VOLTAGE, Case::voltage),
                words("Models", OutcomeTables::factors));
    }

    private static String fuel(Case at) {
        return at.ethanol().isEmpty()
                ? "as in the sheet"
                : FRACTION.text(at.ethanol().getAsDouble(), org.shotledger.units.UnitSystem.SI) + " ethanol";
    }

    private static String factors(Case at) {
        return at.factors().values().isEmpty()
                ? "as they stand"
                : at.factors().values().entrySet().stream()
                        .map(factor -> factor.getKey().words() + " times "
                                + RATIO.text(factor.getValue(), org.shotledger.units.UnitSystem.SI))
                        .collect(java.util.stream.Collectors.joining(", "));
    }

    /**
     * One pass, second by second.
     *
     * @param pass the pass
     * @return one row a second, and the last
     */
    public static Listing of(PassOutcome pass) {
        return Listing.of(
                "Pass " + pass.number() + ", second by second",
                seconds(pass.moments()),
                column("Time", TIME, PassOutcome.Moment::time),
                column("Bottle", ABSOLUTE_PRESSURE, PassOutcome.Moment::pressure),
                column("Liquid", TEMPERATURE, PassOutcome.Moment::temperature),
                column("Liquid left", MASS, PassOutcome.Moment::liquid),
                column("Nitrous", MASS_FLOW, PassOutcome.Moment::massFlow),
                column("Lambda", RATIO, PassOutcome.Moment::lambda),
                column("Power", POWER, PassOutcome.Moment::wheelPower));
    }

    private static List<PassOutcome.Moment> seconds(List<PassOutcome.Moment> moments) {
        List<PassOutcome.Moment> shown = new ArrayList<>();
        double next = 0;
        for (int i = 0; i < moments.size(); i++) {
            if (moments.get(i).time() >= next - 1e-9 || i == moments.size() - 1) {
                shown.add(moments.get(i));
                next = moments.get(i).time() + TIME_STEP;
            }
        }
        return shown;
    }
}
