package org.shotledger.view;

import java.util.List;
import org.shotledger.bottle.BottleModel;
import org.shotledger.bottle.ChargePressure;
import org.shotledger.bottle.Figures;
import org.shotledger.bottle.Filling;
import org.shotledger.bottle.FillingCheck;
import org.shotledger.car.BottleSheet;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleFill;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Filling and heating of the bottle. */
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
     * Filling and heating in figures.
     *
     * @param plan the plan
     * @return one row a figure
     */
    public static Listing filling(Plan plan) {
        BottleSheet sheet = plan.car().bottle();
        BottleFill fill = plan.setup().bottle();
        return Listing.titled("Filling and heating")
                .words("Figure")
                .mixed("Value")
                .row("charge, by mass", new Cell.Figure(fill.charge(), QuantityKind.MASS))
                .row("water capacity", new Cell.Figure(sheet.vessel().waterCapacity(), QuantityKind.VOLUME))
                .row(
                        "charge per water capacity",
                        new Cell.Figure(1000 * sheet.vessel().fillingDensity(fill.charge()), QuantityKind.DENSITY))
                .row(
                        "allowed by 49 CFR 173.304a",
                        new Cell.Figure(1000 * FillingCheck.LARGEST_DENSITY, QuantityKind.DENSITY))
                .row(
                        "liquid fills the whole bottle at",
                        new Cell.Figure(
                                ChargePressure.liquidFullTemperature(sheet.vessel(), fill.charge()),
                                QuantityKind.TEMPERATURE))
                .row("start of each pass", new Cell.Figure(fill.startTemperature(), QuantityKind.TEMPERATURE))
                .row(
                        "hottest the full bottle may stand",
                        new Cell.Figure(sheet.hottestSoak(), QuantityKind.TEMPERATURE))
                .row(
                        "pressure then",
                        new Cell.Figure(
                                ChargePressure.of(sheet.vessel(), fill.charge(), sheet.hottestSoak())
                                        .pressure(),
                                QuantityKind.ABSOLUTE_PRESSURE))
                .row("relief disc opens at", new Cell.Figure(sheet.reliefPressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .row(
                        "service pressure of the cylinder",
                        new Cell.Figure(sheet.servicePressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .row("heater", Math.round(sheet.heaterPower()) + " W")
                .row("how the bottle is worked out", model(sheet))
                .build();
    }

    private static String model(BottleSheet sheet) {
        BottleModel model = BottleModel.of(sheet.vessel());
        return model.title() + "; " + model.standing();
    }

    /**
     * What the filling breaks, and what to do about it.
     *
     * @param plan the plan
     * @return sentences, perhaps none
     */
    public static List<String> warnings(Plan plan) {
        return FillingCheck.of(filled(plan)).broken().stream()
                .filter(limit -> !Double.isNaN(limit.margin()))
                .map(limit -> limit.reason(FIGURES))
                .toList();
    }

    private static Filling filled(Plan plan) {
        BottleFill fill = plan.setup().bottle();
        return plan.car()
                .bottle()
                .filling(fill.charge(), fill.startTemperature(), plan.car().limits());
    }
}
