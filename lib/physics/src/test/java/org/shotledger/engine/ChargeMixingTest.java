package org.shotledger.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;

class ChargeMixingTest {
    private static Intake intake(double nitrous, double evaporated) {
        var fuel = new Intake.FuelSupplied(Fuels.GASOLINE, 298.15, evaporated);
        double enthalpy = NitrousOxide.saturatedLiquid(293.15).enthalpy();
        return new Intake(250e3, 320, 0, nitrous, enthalpy, fuel, Double.POSITIVE_INFINITY, fuel, 0);
    }

    /** Volume that breathes 0.60 kg/s of dry air at 320 K and 250 kPa. */
    private static final double VOLUME = 0.60 / 28.9644e-3 * 8.31446261815324 * 320 / 250e3;

    @Test
    void displacement_and_cooling_of_a_shot_nearly_cancel() {
        // 0.0363 kg/s of N2O in 0.60 kg/s of air: mole ratio (0.0363/44.013)/(0.60/28.9644) = 3.98 %.
        Charge charge = ChargeMixing.mix(intake(0.0363, 0), VOLUME);
        assertEquals(-0.0398, charge.displacement(), 2e-4);
        assertEquals(0.05, charge.cooling(), 0.01);
        assertTrue(Math.abs(charge.netAirChange()) < 0.02);
    }

    @Test
    void air_alone_keeps_its_temperature() {
        Charge charge = ChargeMixing.mix(intake(0, 0), VOLUME);
        assertEquals(0.60, charge.mixture().dryAir(), 0.60 * 1e-9);
        assertEquals(0, charge.netAirChange(), 0);
    }

    @Test
    void more_nitrous_oxide_than_the_engine_can_breathe_is_refused() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> ChargeMixing.mix(intake(3, 0), VOLUME));
        assertTrue(thrown.getMessage().startsWith("The charge has no balance"), thrown.getMessage());
    }

    private static Charge mixed(Fuel fuel, double nitrous, double stated) {
        var supplied = new Intake.FuelSupplied(fuel, 298.15, stated);
        double enthalpy = NitrousOxide.saturatedLiquid(293.15).enthalpy();
        double extra = nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / (0.78 * fuel.oxygenDemand());
        Intake intake =
                new Intake(250e3, 320, 0.008, nitrous, enthalpy, supplied, 0.8, supplied, extra, Intake.Warming.USUAL);
        return ChargeMixing.mix(intake, VOLUME);
    }

    /**
     * No charge holds more fuel vapour than the vapour pressure of its fuel at its own temperature: partial pressure of ethanol and
     * methanol within half a per cent, worked out by Antoine's equation here once more (NIST Chemistry WebBook, from memory), whatever the sheet says.
     */
    @Test
    void no_more_fuel_is_vapour_than_its_vapour_pressure_allows() {
        Map<Fuel, double[]> antoine = Map.of(
                Fuels.ETHANOL, new double[] {5.24677, 1598.673, -46.424, 46.069e-3},
                Fuels.METHANOL, new double[] {5.20409, 1581.341, -33.500, 32.042e-3});
        antoine.forEach((fuel, a) -> {
            for (double nitrous : new double[] {0, 0.03, 0.06, 0.12, 0.18}) {
                Charge charge = mixed(fuel, nitrous, 0.9);
                Mixture mix = charge.mixture();
                double vapour =
                        (mix.mainFlow() * charge.mainEvaporated() + mix.nitrousFuelFlow() * charge.nitrousEvaporated())
                                / a[3];
                double saturated = 1e5 * Math.pow(10, a[0] - a[1] / (charge.temperature() + a[2]));
                double partial = vapour / charge.gasFlow() * charge.pressure();
                assertEquals(1, partial / saturated, 5e-3, fuel.name() + " at " + charge.temperature() + " K");
            }
        });
    }

    /** A share that the charge can hold is taken as it stands, and stating more than it can hold changes nothing. */
    @Test
    void a_stated_share_counts_as_far_as_it_can() {
        assertEquals(0.2, mixed(Fuels.GASOLINE, 0.03, 0.2).mainEvaporated());
        Charge much = mixed(Fuels.METHANOL, 0.12, 0.5);
        assertEquals(much.temperature(), mixed(Fuels.METHANOL, 0.12, 0.9).temperature(), 0.05);
        assertTrue(much.temperature() > 235 && much.mainEvaporated() < 0.1, much::toString);
    }
}
