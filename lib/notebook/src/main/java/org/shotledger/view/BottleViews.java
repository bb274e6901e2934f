package org.shotledger.view;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.bottle.Filling;
import org.shotledger.car.BottleSheet;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleFill;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Filling and heating of the bottle. */
public final class BottleViews {
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
        Filling filling = Filling.of(sheet.vessel(), fill.charge(), sheet.reliefPressure());
        return Listing.titled("Filling and heating")
                .words("Figure")
                .mixed("Value")
                .row("charge, by mass", new Cell.Figure(fill.charge(), QuantityKind.MASS))
                .row("water capacity", new Cell.Figure(sheet.vessel().waterCapacity(), QuantityKind.VOLUME))
                .row(
                        "charge per water capacity",
                        new Cell.Figure(1000 * filling.fillingDensity(), QuantityKind.DENSITY))
                .row(
                        "allowed by 49 CFR 173.304a",
                        new Cell.Figure(1000 * Filling.LARGEST_DENSITY, QuantityKind.DENSITY))
                .row(
                        "liquid fills the whole bottle at",
                        new Cell.Figure(filling.liquidFullTemperature(), QuantityKind.TEMPERATURE))
                .row("start of each pass", new Cell.Figure(fill.startTemperature(), QuantityKind.TEMPERATURE))
                .row("hottest the full bottle may stand", new Cell.Figure(sheet.hottestSoak(), QuantityKind.TEMPERATURE))
                .row(
                        "pressure then",
                        new Cell.Figure(sheet.hottestPressure(fill.charge()), QuantityKind.ABSOLUTE_PRESSURE))
                .row("relief disc opens at", new Cell.Figure(sheet.reliefPressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .row("heater", Math.round(sheet.heaterPower()) + " W")
                .build();
    }

    /**
     * What the filling asks the reader to mind.
     *
     * @param plan the plan
     * @return sentences, perhaps none
     */
    public static List<String> warnings(Plan plan) {
        BottleSheet sheet = plan.car().bottle();
        BottleFill fill = plan.setup().bottle();
        Filling filling = Filling.of(sheet.vessel(), fill.charge(), sheet.reliefPressure());
        List<String> warnings = new ArrayList<>(filling.warnings());
        if (filling.liquidFullTemperature() < fill.startTemperature()) {
            warnings.add("The full bottle has no vapour left at its start temperature: liquid fills it from "
                    + Both.of(QuantityKind.TEMPERATURE, filling.liquidFullTemperature())
                    + " on, and every further degree then raises the pressure steeply. Warm it no further than the plan, and watch"
                    + " the gauge, not the clock.");
        }
        return warnings;
    }
}
