package org.shotledger.job;

import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TORQUE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.shotledger.car.BasePull;
import org.shotledger.car.FuelStreams;
import org.shotledger.car.PullCorrection;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.PowerCorrection;
import org.shotledger.fuel.Fuel;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.QuantityKind;

/** Reads the base pull: one figure or a whole curve, as power or torque, at the wheels or at the crankshaft. */
final class PullSection {
    /** Standard uncertainty of a dynamometer figure that states none: common practice, no source. */
    private static final double USUAL_UNCERTAINTY = 0.02;
    /** Share by which power and torque of a table may differ: our choice, some times what whole numbers leave of both. */
    private static final double DISAGREEING = 0.02;

    /** The standards a chart's power may have been corrected to, by their names in the sheet. */
    static final Map<String, Optional<PowerCorrection>> CORRECTIONS = corrections();

    /** The four ways in which a pull is written down. */
    private enum Figure {
        WHEEL_POWER("wheel-power", "wheel power", POWER, 10e3, 3e6),
        CRANK_POWER("crank-power", "crank power", POWER, 10e3, 3e6),
        WHEEL_TORQUE("wheel-torque", "wheel torque", TORQUE, 20, 6000),
        CRANK_TORQUE("crank-torque", "crank torque", TORQUE, 20, 6000);

        private final String key;
        private final String column;
        private final QuantityKind kind;
        private final double low;
        private final double high;

        Figure(String key, String column, QuantityKind kind, double low, double high) {
            this.key = key;
            this.column = column;
            this.kind = kind;
            this.low = low;
            this.high = high;
        }

        double wheelPower(double value, double rpm, Driveline driveline) {
            double power = kind == TORQUE ? value * rpm * Math.PI / 30 : value;
            return this == CRANK_POWER || this == CRANK_TORQUE ? driveline.wheelPower(power, rpm) : power;
        }
    }

    private PullSection() {}

    static BasePull basePull(SheetSection s, Map<String, MoistAir> places, FuelStreams fuels, Driveline driveline) {
        String where = EngineSections.conditions(s, places.keySet());
        double lambda = s.figure("lambda", RATIO, 0.6, 1.1);
        Fuel usual = fuels == null ? null : fuels.main();
        Optional<Fuel> own = s.sectionIf("fuel").map(f -> EngineSections.fuel(f, usual));
        List<BasePull.Point> shown = s.has("curve") ? curve(s, driveline) : one(s, driveline);
        double uncertainty = uncertainty(s);
        Optional<PullCorrection> correction = correction(s, places.get(where));
        return s.make(() -> new BasePull(
                places.get(where), own.orElse(usual), lambda, observed(shown, correction), uncertainty, correction));
    }

    /** What the chart's power was multiplied by: the factor it states, or that of a standard in the air of that day. */
    private static Optional<PullCorrection> correction(SheetSection s, MoistAir air) {
        Optional<PowerCorrection> standard =
                s.choiceOr("correction", CORRECTIONS, "none", "the power is taken as observed");
        if (!s.has("correction-factor")) {
            return standard.filter(named -> air != null)
                    .map(named -> new PullCorrection(named.words(), named.factor(air), named.holds(air)));
        }
        double factor = s.figure("correction-factor", RATIO, 0.8, 1.5);
        if (s.has("correction")) {
            s.report(
                    "correction-factor",
                    "The pull's power is corrected by a standard and by a factor; keep the one that the chart states.");
        }
        return Optional.of(new PullCorrection("the factor stated in the sheet", factor, true));
    }

    private static List<BasePull.Point> observed(List<BasePull.Point> shown, Optional<PullCorrection> correction) {
        double factor = correction.map(PullCorrection::factor).orElse(1.0);
        return shown.stream()
                .map(p -> new BasePull.Point(p.rpm(), p.gaugePressure(), p.wheelPower() / factor))
                .toList();
    }

    private static Map<String, Optional<PowerCorrection>> corrections() {
        Map<String, Optional<PowerCorrection>> named = new LinkedHashMap<>();
        named.put("none", Optional.empty());
        named.put("sae-j1349", Optional.of(PowerCorrection.SAE_J1349_2004));
        named.put("sae-j1349-1990", Optional.of(PowerCorrection.SAE_J1349_1990));
        named.put("sae-j607", Optional.of(PowerCorrection.STP));
        named.put("iso-1585", Optional.of(PowerCorrection.ISO_1585));
        named.put("din-70020", Optional.of(PowerCorrection.DIN_70020));
        return named;
    }

    private static List<BasePull.Point> one(SheetSection s, Driveline driveline) {
        double rpm = s.figure("rpm", ROTATION, 500, 20_000);
        double boost = s.figure("boost", GAUGE_PRESSURE, -0.5e5, 6e5);
        Figure figure = figure(s);
        double value = s.figure(figure.key, figure.kind, figure.low, figure.high);
        return driveline == null
                ? List.of()
                : List.of(new BasePull.Point(rpm, boost, figure.wheelPower(value, rpm, driveline)));
    }

    private static List<Figure> stated(SheetSection s) {
        return Arrays.stream(Figure.values())
                .filter(figure -> s.has(figure.key))
                .toList();
    }

    private static Figure figure(SheetSection s) {
        List<Figure> stated = stated(s);
        if (stated.size() > 1) {
            s.report(
                    stated.get(1).key,
                    "The pull is given as " + stated.get(0).column + " and as " + stated.get(1).column
                            + "; keep the one that was measured.");
        }
        return stated.isEmpty() ? Figure.WHEEL_POWER : stated.get(0);
    }

    private static double uncertainty(SheetSection s) {
        for (Figure figure : stated(s)) {
            if (!Double.isNaN(s.uncertainty(figure.key))) {
                return s.uncertainty(figure.key) / s.figure(figure.key, figure.kind, figure.low, figure.high);
            }
        }
        return USUAL_UNCERTAINTY;
    }

    private static List<BasePull.Point> curve(SheetSection s, Driveline driveline) {
        for (Figure figure : stated(s)) {
            s.report(
                    figure.key,
                    "The pull is given as a curve and as " + figure.column + "; keep the one that was measured.");
        }
        double boost = s.has("boost") ? s.figure("boost", GAUGE_PRESSURE, -0.5e5, 6e5) : Double.NaN;
        return s.table("curve", Tables.PULL)
                .map(t -> points(s, t, boost, driveline))
                .orElse(List.of());
    }

    /** Power is torque times speed: two columns of one pull that say otherwise are not both right. */
    private static void agree(SheetSection s, double[] rpm, Map<Figure, double[]> stated, Figure power, Figure torque) {
        if (!stated.containsKey(power) || !stated.containsKey(torque)) {
            return;
        }
        for (int i = 0; i < rpm.length; i++) {
            double off = stated.get(torque)[i] * rpm[i] * Math.PI / 30 / stated.get(power)[i] - 1;
            if (Math.abs(off) > DISAGREEING) {
                s.report(
                        "curve",
                        String.format(
                                Locale.ROOT,
                                "At %,.0f rpm the column %s gives %.0f %% %s power than the column %s, where it may be %.0f %% off;"
                                        + " mend the one that is wrong, or leave its column out.",
                                rpm[i],
                                torque.column,
                                100 * Math.abs(off),
                                off > 0 ? "more" : "less",
                                power.column,
                                100 * DISAGREEING));
                return;
            }
        }
    }

    static List<BasePull.Point> points(SheetSection s, CsvTable table, double boost, Driveline driveline) {
        Map<Figure, double[]> stated = new LinkedHashMap<>();
        for (Figure figure : Figure.values()) {
            if (table.has(figure.column)) {
                stated.put(figure, table.column(figure.column));
            }
        }
        if (stated.isEmpty()) {
            s.report(
                    "curve",
                    "The table of the pull has neither power nor torque; add a column wheel power, wheel torque,"
                            + " crank power or crank torque.");
            return List.of();
        }
        if (!table.has("boost") && Double.isNaN(boost)) {
            s.report(
                    "curve",
                    "The table of the pull has no column boost and the sheet states none; add one of the two.");
            return List.of();
        }
        double[] rpm = table.column("engine speed");
        agree(s, rpm, stated, Figure.WHEEL_POWER, Figure.WHEEL_TORQUE);
        agree(s, rpm, stated, Figure.CRANK_POWER, Figure.CRANK_TORQUE);
        Figure figure = stated.keySet().iterator().next();
        double[] values = stated.get(figure);
        double[] boosts = table.has("boost") ? table.column("boost") : null;
        List<BasePull.Point> points = new ArrayList<>();
        for (int i = 0; i < rpm.length && driveline != null; i++) {
            points.add(new BasePull.Point(
                    rpm[i], boosts == null ? boost : boosts[i], figure.wheelPower(values[i], rpm[i], driveline)));
        }
        points.sort(Comparator.comparingDouble(BasePull.Point::rpm));
        return points;
    }
}
