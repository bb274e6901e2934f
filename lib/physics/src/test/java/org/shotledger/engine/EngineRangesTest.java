package org.shotledger.engine;

import org.junit.jupiter.api.Test;
import org.shotledger.curve.Curve;
import org.shotledger.units.AllowedRange;

/** The ranges that the documentation states, each tried on both sides. */
class EngineRangesTest {
    private static final Curve VE = Curve.constant("ve", 0.9);

    @Test
    void engine() {
        AllowedRange.check("bore of e", 0.04, 0.16, "m", x -> new Engine("e", 4, x, 0.086, 0.14, 9, VE, 7000));
        AllowedRange.check("stroke of e", 0.03, 0.18, "m", x -> new Engine("e", 4, 0.086, x, 2 * x, 9, VE, 7000));
        AllowedRange.check("rod length of e", 0.06, 0.5, "m", x -> new Engine("e", 4, 0.086, 0.1, x, 9, VE, 7000));
        AllowedRange.check("compression ratio of e", 5, 20, "", x -> new Engine("e", 4, 0.086, 0.1, 0.15, x, VE, 7000));
        AllowedRange.check("red line of e", 1000, 20_000, "rpm", x -> new Engine("e", 4, 0.086, 0.1, 0.15, 9, VE, x));
        AllowedRange.check(
                "volumetric efficiency of e",
                0.2,
                1.5,
                "",
                x -> new Engine("e", 4, 0.086, 0.1, 0.15, 9, Curve.constant("ve", x), 7000));
    }

    @Test
    void air() {
        AllowedRange.check("altitude", -1000, 11_000, "m", StandardAtmosphere::pressure);
        AllowedRange.check("pressure of the standard atmosphere", 22_700, 113_900, "Pa", StandardAtmosphere::altitude);
        AllowedRange.check("station pressure", 30e3, 120e3, "Pa", x -> new MoistAir(x, 300, 0.5));
        AllowedRange.check("air temperature", 220, 340, "K", x -> new MoistAir(1e5, x, 0.5));
        AllowedRange.check("relative humidity", 0, 1, "", x -> new MoistAir(1e5, 300, x));
        AllowedRange.check("temperature of moist air", 220, 400, "K", Steam::saturationPressure);
    }

    @Test
    void burning() {
        AllowedRange.check("start of burning", -90, 60, "deg", x -> Wiebe.of(x, 50));
        AllowedRange.check("duration of burning", 5, 150, "deg", x -> Wiebe.of(-20, x));
        AllowedRange.check("efficiency factor of the burning", 2, 10, "", x -> new Wiebe(-20, 50, x, 2));
        AllowedRange.check("form factor of the burning", 0.5, 5, "", x -> new Wiebe(-20, 50, 5, x));
        AllowedRange.check(
                "factor on the duration of burning",
                0.5,
                2,
                "",
                x -> Wiebe.of(-20, 50).scaled(x));
        AllowedRange.check("crank angle of half burned", -5, 40, "deg", x -> new BurnPhasing(x, -5, 40, 50));
        AllowedRange.check("duration of burning", 20, 120, "deg", x -> new BurnPhasing(12, 8, 18, x));
        AllowedRange.check("octane number for the knock index", 60, 130, "", x -> Knock.delay(x, 1e5, 900));
    }

    @Test
    void factors() {
        AllowedRange.check("share of the fuel-air cycle's work", 0.4, 1, "", EngineFactor::new);
        AllowedRange.check("share of the nitrous work that arrives", 0.5, 1.1, "", x -> new NitrousFactor(x, 0.5, 1.1));
        AllowedRange.check("share of the exhaust heat left at the probe", 0.4, 1.3, "", x -> new ExhaustProbe(x, 400));
        AllowedRange.check("temperature of the exhaust port's wall", 300, 1000, "K", x -> new ExhaustProbe(0.9, x));
        AllowedRange.check("exhaust temperature of the base pull", 600, 1500, "K", x -> ExhaustProbe.calibrate(x, x));
        AllowedRange.check(
                "exhaust to intake pressure ratio", 0, 5, "", x -> BackPressure.idealVolumetricEfficiency(x, 9, 1.3));
        AllowedRange.check("compression ratio", 2, 30, "", x -> BackPressure.idealVolumetricEfficiency(1, x, 1.3));
        AllowedRange.check(
                "gamma of the residual gas", 1.2, 1.4, "", x -> BackPressure.idealVolumetricEfficiency(1, 9, x));
    }
}
