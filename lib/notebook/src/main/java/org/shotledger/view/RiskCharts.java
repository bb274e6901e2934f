package org.shotledger.view;

import static org.shotledger.view.Rows.column;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.DriftMapChart;
import org.shotledger.chart.FaultChart;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.risk.BoostReference;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.FaultOutcome;
import org.shotledger.risk.Faults;
import org.shotledger.risk.Interlock;
import org.shotledger.risk.RobustJetting;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Drift, jetting jets and faults as charts. */
public final class RiskCharts {
    private static final double[] LEVELS = {0.60, 0.65, 0.70, 0.75, 0.80, 0.85, 0.90, 0.95, 1.0};
    /** Share of an axis left free at its ends. */
    private static final double ROOM = 0.03;

    private RiskCharts() {}

    /**
     * A drift map: lambda of the leanest speed, the safe region, and the limits that end it.
     *
     * @param map the map
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(DriftMap map, UnitSystem system) {
        return drift(
                map,
                new DriftMapChart.Field(
                        "Mixture when pressures drift, and where every limit is kept",
                        "\u03bb ",
                        QuantityKind.RATIO,
                        DriftFields.of(map, FaultOutcome::leanest),
                        LEVELS),
                system);
    }

    /**
     * A drift map with lines of equal wheel power, the most over the speeds.
     *
     * @param map the map
     * @param system the units
     * @return the picture
     */
    public static ChartPicture power(DriftMap map, UnitSystem system) {
        return drift(
                map,
                field(
                        "Most power at the wheels when pressures drift",
                        QuantityKind.POWER,
                        map,
                        FaultOutcome::wheelPower,
                        system),
                system);
    }

    /**
     * A drift map with lines of equal peak cylinder pressure, the highest over the speeds.
     *
     * @param map the map
     * @param system the units
     * @return the picture
     */
    public static ChartPicture peakPressure(DriftMap map, UnitSystem system) {
        return drift(
                map,
                field(
                        "Peak cylinder pressure when pressures drift",
                        QuantityKind.ABSOLUTE_PRESSURE,
                        map,
                        FaultOutcome::peakPressure,
                        system),
                system);
    }

    /** A field with about eight round levels in the units shown. */
    private static DriftMapChart.Field field(
            String title, QuantityKind kind, DriftMap map, ToDoubleFunction<FaultOutcome> of, UnitSystem system) {
        double[][] values = DriftFields.of(map, of);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] row : values) {
            for (double value : row) {
                low = Double.isNaN(value) ? low : Math.min(low, value);
                high = Double.isNaN(value) ? high : Math.max(high, value);
            }
        }
        double unit = kind.shown(1, system) - kind.shown(0, system);
        double rough = (high - low) * unit / 8;
        double decade = Math.pow(10, Math.floor(Math.log10(rough)));
        double step = decade * (rough < 2 * decade ? 2 : rough < 5 * decade ? 5 : 10);
        int first = (int) Math.ceil(kind.shown(low, system) / step);
        int last = (int) Math.floor(kind.shown(high, system) / step);
        double zero = kind.shown(0, system);
        double[] levels = IntStream.rangeClosed(first, last)
                .mapToDouble(k -> (k * step - zero) / unit)
                .toArray();
        return new DriftMapChart.Field(title, "", kind, values, levels);
    }

    private static ChartPicture drift(DriftMap map, DriftMapChart.Field field, UnitSystem system) {
        DriftFields fields = DriftFields.of(map);
        return new DriftMapChart(
                        fields.bottlePressure(),
                        fields.fuelPressure(),
                        field,
                        fields.safe(),
                        map.planBottlePressure(),
                        map.planFuelPressure(),
                        map.band().bottlePressure(),
                        map.band().fuelPressure(),
                        fields.bounds())
                .picture(system);
    }

    /**
     * What boost does to the mixture with and without boost reference.
     *
     * @param compared the comparison
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(BoostReference compared, UnitSystem system) {
        List<BoostReference.Row> rows = compared.rows().stream()
                .filter(r -> !Double.isNaN(r.nitrousFlow()))
                .toList();
        double[] shift = column(rows, BoostReference.Row::boostShift);
        double spread =
                rows.get(rows.size() - 1).unreferencedLambda() - rows.get(0).unreferencedLambda();
        return Plot.of(
                        "boost-reference",
                        "Mixture over boost: the fuel jet feels it, the nitrous jet does not",
                        "Over the boost shown, lambda without boost reference moves by "
                                + QuantityKind.RATIO.text(spread, system) + " while the nitrous flow stays at "
                                + QuantityKind.MASS_FLOW.text(rows.get(0).nitrousFlow(), system) + ".",
                        new Scale("Boost above plan", QuantityKind.PRESSURE_DIFFERENCE, system),
                        new Scale("Lambda, all streams", QuantityKind.RATIO, system))
                .line("regulator follows boost", shift, column(rows, BoostReference.Row::referencedLambda))
                .line("regulator does not", shift, column(rows, BoostReference.Row::unreferencedLambda))
                .markAt("the plan", 0)
                .reach(shift[0] - ROOM * (shift[shift.length - 1] - shift[0]), Double.NaN)
                .reach(shift[shift.length - 1] + ROOM * (shift[shift.length - 1] - shift[0]), Double.NaN)
                .picture();
    }

    /**
     * The most forgiving setting of each nitrous jet, with its power.
     *
     * @param jetting the settings
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(RobustJetting jetting, UnitSystem system) {
        List<RobustJetting.Choice> rows = jetting.byNitrousJet();
        RobustJetting.Choice plan = jetting.plan();
        double[] power = column(rows, RobustJetting.Choice::wheelPower);
        double room = ROOM * (power[power.length - 1] - power[0]);
        Plot plot = Plot.of(
                        "robust-jetting",
                        "What each nitrous jet bears in its most forgiving setting",
                        jetting.summary(),
                        new Scale("Most power at the wheels", QuantityKind.POWER, system),
                        new Scale("Half-widths of the expected bands", QuantityKind.RATIO, system))
                .line("bottle and fuel pressure stray", power, column(rows, RobustJetting.Choice::boostHeld))
                .line("bottle, fuel pressure and boost stray", power, column(rows, RobustJetting.Choice::tolerance))
                .points("the plan", new double[] {plan.wheelPower(), plan.wheelPower()}, new double[] {
                    plan.boostHeld(), plan.tolerance()
                })
                .reach(power[0] - room, 0)
                .reach(power[power.length - 1] + room, 1.15 * plan.boostHeld())
                .markAt("the target", jetting.asked());
        for (RobustJetting.Choice choice : rows) {
            String jets = QuantityKind.BORE.number(choice.jets().nitrousBore(), system) + " / "
                    + QuantityKind.BORE.text(choice.jets().fuelBore(), system);
            plot.label(jets, choice.wheelPower(), choice.boostHeld());
        }
        return plot.picture();
    }

    /**
     * How far each fault throws the mixture.
     *
     * @param faults the faults
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Faults faults, UnitSystem system) {
        List<FaultChart.Fault> rows = new ArrayList<>();
        for (var effect : faults.effects()) {
            boolean saved = effect.detection().answer().saves();
            rows.add(new FaultChart.Fault(
                    effect.fault().name(),
                    effect.detection().answer().words() + (saved ? "" : " (" + effect.brokenWords() + ")"),
                    effect.outcome().richest(),
                    effect.outcome().leanest(),
                    saved));
        }
        Interlock lambda = faults.arming().find("lambda").orElseThrow();
        return new FaultChart(rows, lambda.planned(), lambda.low(), lambda.high()).picture(system);
    }
}
