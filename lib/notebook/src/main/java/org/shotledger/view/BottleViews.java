package org.shotledger.view;

import java.util.List;
import org.shotledger.bottle.ChargePressure;
import org.shotledger.bottle.Cylinder;
import org.shotledger.bottle.Figures;
import org.shotledger.bottle.Filling;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.budget.BottleDay;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Budget;
import org.shotledger.build.BottleSheet;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.PassChart;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** The bottle over a pass and over a day. */
public final class BottleViews {
    private static final Figures FIGURES = new Figures() {
        @Override
        public String pressure(double pascal) {
            return Both.of(QuantityKind.ABSOLUTE_PRESSURE, pascal);
        }

        @Override
        public String temperature(double kelvin) {
            return Both.of(QuantityKind.TEMPERATURE, kelvin);
        }

        @Override
        public String mass(double kilogram) {
            return Both.of(QuantityKind.MASS, kilogram);
        }
    };

    private BottleViews() {}

    /**
     * Bottle pressure and power over the first pass.
     *
     * @param budget the budget
     * @param system the units
     * @return the picture, with the lowest pressure the builder allows
     */
    public static ChartPicture pass(Budget budget, UnitSystem system) {
        List<BottlePlan.Moment> moments = budget.bottle().history().stream()
                .filter(moment -> moment.time() <= budget.wish().passSeconds() + 1e-9)
                .toList();
        return new PassChart(
                        "The bottle and the power over the first pass",
                        moments.stream().mapToDouble(BottlePlan.Moment::time).toArray(),
                        moments.stream()
                                .mapToDouble(BottlePlan.Moment::pressure)
                                .toArray(),
                        moments.stream()
                                .mapToDouble(BottlePlan.Moment::wheelPower)
                                .toArray(),
                        budget.build().limits().bottlePressureLow(),
                        Double.NaN)
                .picture(system);
    }

    /**
     * The passes of a day.
     *
     * @param day the day
     * @return one row a pass
     */
    public static Listing passes(BottleDay day) {
        Listing.Builder rows = Listing.titled("One bottle over a day of passes, heated back between")
                .words("Pass")
                .figures("Charge before", QuantityKind.MASS)
                .figures("Pressure before", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Pressure after", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Full flow lasts", QuantityKind.TIME)
                .words("Result")
                .words("Heating back");
        int number = 1;
        for (BottleDay.Pass pass : day.passes()) {
            rows.row(
                    String.valueOf(number++),
                    pass.startMass(),
                    pass.startPressure(),
                    pass.endPressure(),
                    pass.seconds(),
                    pass.full() ? "full" : "cut short: out of the band or out of liquid",
                    minutes(pass.reheat()));
        }
        return rows.build();
    }

    /**
     * Filling and heating in figures.
     *
     * @param budget the budget
     * @param day its day
     * @return one row a figure
     */
    public static Listing filling(Budget budget, BottleDay day) {
        BottleSheet sheet = budget.build().bottle();
        return Listing.titled("Filling and heating")
                .words("Figure")
                .mixed("Value")
                .row("charge, by mass", new Cell.Figure(sheet.charge(), QuantityKind.MASS))
                .row("water capacity", new Cell.Figure(sheet.vessel().waterCapacity(), QuantityKind.VOLUME))
                .row(
                        "charge per water capacity",
                        new Cell.Figure(1000 * sheet.vessel().fillingDensity(sheet.charge()), QuantityKind.DENSITY))
                .row(
                        "allowed by 49 CFR 173.304a",
                        new Cell.Figure(1000 * FillingCheck.LARGEST_DENSITY, QuantityKind.DENSITY))
                .row(
                        "liquid fills the whole bottle at",
                        new Cell.Figure(
                                ChargePressure.liquidFullTemperature(sheet.vessel(), sheet.charge()),
                                QuantityKind.TEMPERATURE))
                .row("start of each pass", new Cell.Figure(sheet.startTemperature(), QuantityKind.TEMPERATURE))
                .row("relief disc opens at", new Cell.Figure(sheet.reliefPressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .row("heater", Math.round(sheet.heaterPower()) + " W")
                .row("time to warm from the air's temperature", minutes(day.warmUp()))
                .build();
    }

    /**
     * What the filling asks the reader to mind.
     *
     * @param budget the budget
     * @return sentences, perhaps none
     */
    public static List<String> warnings(Budget budget) {
        return FillingCheck.of(filling(budget)).broken().stream()
                .filter(limit -> !Double.isNaN(limit.margin()))
                .map(limit -> limit.reason(FIGURES))
                .toList();
    }

    /** The sheet knows the disc, not the marking of the cylinder. */
    private static Filling filling(Budget budget) {
        BottleSheet sheet = budget.build().bottle();
        return Filling.of(
                        sheet.vessel(),
                        sheet.charge(),
                        new Cylinder(Double.NaN, sheet.reliefPressure()),
                        sheet.startTemperature(),
                        sheet.hottestSoak(),
                        budget.build().limits().bottlePressureLow(),
                        budget.build().limits().bottlePressureHigh())
                .withHeaterOff(sheet.heaterOff());
    }

    private static String minutes(double seconds) {
        if (Double.isNaN(seconds)) {
            return "never in this air";
        }
        return seconds < 30 ? "none" : Math.round(seconds / 60) + " min";
    }
}
