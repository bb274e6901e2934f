package org.shotledger.engine;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.shotledger.curve.Curve;
import org.shotledger.fuel.Fuel;

/** The single-cylinder engine of ASTM D2699 (82.55 mm by 114.3 mm, rod 254 mm) at 600 rpm, spark 13 degrees before centre. */
final class ResearchEngine {
    private static final double RPM = 600;
    private static final double EXHAUST = 1.02e5;
    /** Spark 13 degrees before centre and half burned near 9 degrees after it, as measured (Kolodziej and Wallner 2017). */
    private static final Wiebe BURNING = Wiebe.of(-13, 42);
    /** Share evaporated behind the carburettor, as measured there. */
    private static final double EVAPORATED = 0.65;

    private ResearchEngine() {}

    static double knock(
            KnockModel model, Fuel fuel, double compressionRatio, double pressure, double air, double lambda) {
        Engine engine = new Engine(
                "research",
                1,
                0.08255,
                0.1143,
                0.254,
                compressionRatio,
                Curve.constant("volumetric efficiency", 0.9),
                1500);
        var supplied = new Intake.FuelSupplied(fuel, 293, EVAPORATED);
        Intake intake = new Intake(pressure, air, 0.005, 0, 0, supplied, lambda, supplied, 0);
        Charge charge = ChargeMixing.mix(intake, engine.breathedVolume(RPM));
        var inside = new TrappedCharge.Inside(EXHAUST, 1000, 0.5);
        TrappedCharge trapped = TrappedCharge.reacting(engine, RPM, charge, inside);
        return model.index(
                Cylinder.of(engine), EndGas.of(intake, charge, trapped), trapped.cycle(RPM, BURNING, 430, EXHAUST, 95));
    }

    /** Rows of a table of this package without comments and heading. */
    static List<String[]> rows(String file) {
        Path shown = Path.of("../../data/measured", file); // those that a notebook shows as well
        try (var in = new BufferedReader(new InputStreamReader(
                Files.exists(shown) ? Files.newInputStream(shown) : ResearchEngine.class.getResourceAsStream(file),
                StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(l -> !l.startsWith("#"))
                    .skip(1)
                    .map(l -> l.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
