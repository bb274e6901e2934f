package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shotledger.fuel.Blend;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.fuel.Part;

/** The cycle against one made with the general-purpose library Cantera 3.2; the assumptions stand in the file's header. */
class FuelAirCycleTest {
    static List<String> rows() throws Exception {
        try (var in = Files.newBufferedReader(Path.of("../../data/published/fuel-air-cycle.csv"))) {
            return in.lines()
                    .filter(l -> !l.startsWith("#") && !l.startsWith("fuel,"))
                    .toList();
        }
    }

    static Fuel fuel(String name) {
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

    /** One kilogram of dry air, nitrous oxide and fuel at a total lambda. */
    static Mixture mixture(Fuel fuel, double lambda, double nitrous) {
        double oxygen = Oxidisers.OXYGEN_IN_DRY_AIR + nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
        return new Mixture(1, 0, nitrous, fuel, oxygen / (lambda * fuel.oxygenDemand()), fuel, 0);
    }

    @ParameterizedTest
    @MethodSource("rows")
    void agrees_with_a_general_purpose_library(String row) {
        String[] c = row.split(",", -1);
        double lambda = Double.parseDouble(c[1]);
        double nitrous = Double.parseDouble(c[2]);
        FuelAirCycle cycle = FuelAirCycle.of(
                mixture(fuel(c[0]), lambda, nitrous),
                Double.parseDouble(c[3]),
                Double.parseDouble(c[4]),
                Double.parseDouble(c[5]));
        assertEquals(1, cycle.workPerAir() / Double.parseDouble(c[6]), 0.001, "work");
        assertEquals(1, cycle.compressionTemperature() / Double.parseDouble(c[7]), 0.005, "end of compression");
        assertEquals(1, cycle.peakTemperature() / Double.parseDouble(c[8]), 0.001, "peak temperature");
        assertEquals(1, cycle.peakPressure() / Double.parseDouble(c[9]), 0.001, "peak pressure");
        assertEquals(1, cycle.endTemperature() / Double.parseDouble(c[10]), 0.001, "exhaust");
    }

    @Test
    void soot_is_refused() {
        assertThrows(
                IllegalArgumentException.class, () -> FuelAirCycle.of(mixture(Fuels.TOLUENE, 0.3, 0), 300, 1e5, 9));
    }

    /** Inert gas of the charge's own kind: colder peak, and the work of the fresh charge stays within a few per cent. */
    @Test
    void residual_gas_dilutes() {
        Mixture mixture = mixture(Fuels.ISO_OCTANE, 0.9, 0.15);
        FuelAirCycle pure = FuelAirCycle.of(mixture, 320, 2e5, 9);
        double before = pure.peakTemperature();
        for (double residual = 0.02; residual < 0.11; residual += 0.02) {
            FuelAirCycle diluted = FuelAirCycle.of(mixture, 320, 2e5, 9, residual);
            assertTrue(diluted.peakTemperature() < before);
            assertEquals(1, diluted.workPerAir() / pure.workPerAir(), 0.04);
            before = diluted.peakTemperature();
        }
    }
}
