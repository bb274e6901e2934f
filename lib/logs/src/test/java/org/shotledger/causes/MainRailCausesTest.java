package org.shotledger.causes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.car.Injection;
import org.shotledger.causes.PlantedLog.NoiseOf;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/** Logs of the demonstration car with its nitrous fuel from the main rail: what is wrong there shows in both fuels. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class MainRailCausesTest {
    private static final Outcome OUTCOME = Plan.find(onTheRail()).stated();
    private static final Planted SOUND = Planted.sound(OUTCOME);

    private static Job onTheRail() {
        Path demo = Path.of("../../data/whimbrel");
        try {
            String sheet = Files.readString(demo.resolve("job.yaml"))
                    .replaceFirst("    cell-volume: 6 L.*\n", "    supply: main-rail\n")
                    .replaceFirst("    pumps:\n      count: 1\n.*\n.*nitrous-fuel-pump.csv\n", "")
                    .replaceFirst("    regulator:\n      base-pressure: 3.5 bar\n.*\n      boost-reference: 1\n", "")
                    .replaceFirst("    nitrous-fuel-pump: \\{part:.*\n", "");
            return Job.read(sheet, demo);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Causes causes(Planted planted, long seed) {
        return Causes.of(
                OUTCOME, new PlantedLog(planted).findings(seed, seed % 2 == 0 ? NoiseOf.WHITE : NoiseOf.CORRELATED));
    }

    @Test
    void only_causes_that_a_rail_can_have_are_asked() {
        List<Cause> asked =
                Hypotheses.of(OUTCOME, 0).stream().map(Hypothesis::cause).toList();
        assertTrue(asked.contains(Cause.MAIN_FUEL_PUMP));
        Stream.of(Cause.NITROUS_FUEL_PUMP, Cause.NITROUS_FUEL_PRESSURE, Cause.NITROUS_FUEL_REFERENCE)
                .forEach(own -> assertFalse(asked.contains(own), own.words()));
    }

    @Test
    void weak_main_pumps_come_first() {
        for (long seed = 0; seed < 3; seed++) {
            double ohm = 0.42 + 0.04 * seed;
            Planted weak = SOUND.car(car -> wired(car, ohm));
            OperatingPoint fallen = org.shotledger.evaluate.Evaluate.of(weak.car(), weak.setup(), weak.at())
                    .strongest()
                    .orElseThrow();
            assertTrue(fallen.nitrousFuel().pumpLimited(), "planted as meant: " + fallen.main());
            Causes causes = causes(weak, seed);
            assertEquals(Cause.MAIN_FUEL_PUMP, causes.first().orElseThrow().cause(), causes.toString());
        }
    }

    private static Car wired(Car car, double ohm) {
        Injection old = car.injection();
        PumpGroup pumps = old.pumps();
        return car.with(new Injection(
                old.injector(),
                old.count(),
                new PumpGroup(pumps.name(), pumps.pumps(), pumps.arrangement(), ohm),
                old.voltage()));
    }

    @Test
    void another_setting_of_the_one_regulator_comes_first() {
        for (long seed = 0; seed < 3; seed++) {
            double share = 0.88 - 0.02 * seed;
            Planted low = SOUND.setup(s -> s.withMainRegulator(new Regulator(
                    s.mainRegulator().name(),
                    share * s.mainRegulator().basePressure(),
                    s.mainRegulator().boostReference())));
            Causes causes = causes(low, seed);
            assertEquals(Cause.MAIN_FUEL_PRESSURE, causes.first().orElseThrow().cause(), causes.toString());
        }
    }

    @Test
    void a_lost_reference_of_the_one_regulator_comes_first() {
        Planted lost = SOUND.setup(s -> s.withMainRegulator(
                new Regulator(s.mainRegulator().name(), s.mainRegulator().basePressure(), 0)));
        Causes causes = causes(lost, 4);
        assertEquals(Cause.MAIN_FUEL_REFERENCE, causes.first().orElseThrow().cause(), causes.toString());
    }
}
