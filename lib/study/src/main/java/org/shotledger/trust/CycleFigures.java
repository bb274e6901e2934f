package org.shotledger.trust;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.engine.FuelAirCycle;
import org.shotledger.engine.KnockModel;
import org.shotledger.flow.FlowBand;
import org.shotledger.fuel.Blend;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.fuel.Part;

/** Fuel-air cycles against a general-purpose chemistry library, and measured charge cooling. */
final class CycleFigures {
    private static final double CLOSE = 0.001;

    /** The other library's compression begins from its own polynomials of the fuel's vapour. */
    private static final double COMPRESSION = 0.005;

    private CycleFigures() {}

    static List<Comparison> cycles(Path data) {
        List<Comparison> all = new ArrayList<>();
        for (List<String> row : Cells.of(data.resolve("published/fuel-air-cycle.csv"))) {
            double lambda = Double.parseDouble(row.get(1));
            double nitrous = Double.parseDouble(row.get(2));
            FuelAirCycle cycle = FuelAirCycle.of(
                    mixture(fuel(row.get(0)), lambda, nitrous),
                    Double.parseDouble(row.get(3)),
                    Double.parseDouble(row.get(4)),
                    Double.parseDouble(row.get(5)));
            String of = " of " + row.get(0) + " at lambda " + lambda + " with " + nitrous + " of nitrous oxide";
            add(all, "work" + of, row.get(6), cycle.workPerAir(), CLOSE);
            add(all, "end of compression" + of, row.get(7), cycle.compressionTemperature(), COMPRESSION);
            add(all, "peak temperature" + of, row.get(8), cycle.peakTemperature(), CLOSE);
            add(all, "peak pressure" + of, row.get(9), cycle.peakPressure(), CLOSE);
            add(all, "end of expansion" + of, row.get(10), cycle.endTemperature(), CLOSE);
        }
        return all;
    }

    private static void add(List<Comparison> all, String what, String cell, double predicted, double allowed) {
        all.add(Comparison.within(
                "general-purpose chemistry library, Cantera 3.2", what, Double.parseDouble(cell), predicted, allowed));
    }

    private static Fuel fuel(String name) {
        double octane = Fuels.ISO_OCTANE.density();
        double ethanol = Fuels.ETHANOL.density();
        return switch (name) {
            case "iso-octane" -> Fuels.ISO_OCTANE;
            case "ethanol" -> Fuels.ETHANOL;
            case "methanol" -> Fuels.METHANOL;
            default ->
                Blend.byVolume(
                        name,
                        List.of(
                                new Part(Fuels.ISO_OCTANE, ethanol / (octane + ethanol)),
                                new Part(Fuels.ETHANOL, octane / (octane + ethanol))));
        };
    }

    private static Mixture mixture(Fuel fuel, double lambda, double nitrous) {
        double oxygen = Oxidisers.OXYGEN_IN_DRY_AIR + nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
        return new Mixture(1, 0, nitrous, fuel, oxygen / (lambda * fuel.oxygenDemand()), fuel, 0);
    }

    /** Drop of temperature behind a carburettor against the share of full evaporation that the knock model credits. */
    static List<Comparison> cooling(Path data) {
        List<Comparison> all = new ArrayList<>();
        double best = KnockModel.BEST.cooling();
        for (List<String> row : Cells.of(data.resolve("measured/charge-cooling.csv"))) {
            double heat = Double.parseDouble(row.get(4)) * 1e3;
            double airFuel = Double.parseDouble(row.get(6)) * Double.parseDouble(row.get(7));
            // air and fuel vapour together, 1.005 and 1.7 kJ/(kg K)
            double full = heat / airFuel / (1005 + 1700 / airFuel);
            all.add(new Comparison(
                    "Combustion Engines 171-4 (2017)",
                    "cooling by " + row.get(0),
                    Double.parseDouble(row.get(10)),
                    best * full,
                    new FlowBand(best / KnockModel.LOW.cooling(), 1, best / KnockModel.HIGH.cooling())));
        }
        return all;
    }
}
