package org.shotledger.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.shotledger.car.SheetPaths;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.QuantityKind;

/** Each figure of a ledger is made again from the figures it names, in every case and on changed cars. */
class LedgersTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));

    private static void recompute(Ledger ledger, String where) {
        for (Entry entry : ledger.entries()) {
            if (entry.formula().isEmpty()) {
                assertTrue(entry.inputs().isEmpty(), where + ": no formula for " + entry.key());
                continue;
            }
            double again = ledger.recomputed(entry.key()).orElseThrow();
            assertEquals(entry.value(), again, entry.tolerance() * Math.abs(entry.value()), where + ": " + entry.key());
        }
    }

    @Test
    void every_figure_is_made_again_in_every_case() {
        for (Case at : JOB.cases()) {
            recompute(Ledgers.of(Evaluate.of(JOB.car(), SETUP, at), JOB.target()), at.name());
        }
    }

    @Test
    void every_figure_is_made_again_where_the_models_are_off_and_the_sheet_does_not_hold() {
        Case off = JOB.stated();
        for (Factor factor : Factor.values()) {
            off = off.with(factor, 1.03);
        }
        recompute(Ledgers.of(Evaluate.of(JOB.car(), SETUP.withMixture(0.82).withRetard(9), off)), "factors");
        recompute(Ledgers.of(Evaluate.of(JOB.car(), SETUP.withoutJets(), JOB.stated())), "without nitrous");
        Case last = JOB.stated().withBottle(BottleState.LAST);
        recompute(Ledgers.of(Evaluate.of(JOB.car(), SETUP.withoutJets(), last)), "without nitrous, at the end");
    }

    /** Fifty cars, three figures of the sheet moved at random by up to a per cent, each read and calibrated anew. */
    @Test
    void every_figure_is_made_again_on_changed_cars() {
        SplittableRandom random = new SplittableRandom(20261129);
        List<String> paths = List.of(
                SheetPaths.BORE,
                SheetPaths.STROKE,
                SheetPaths.COMPRESSION_RATIO,
                SheetPaths.NITROUS_FUEL_PRESSURE,
                SheetPaths.NITROUS_SOLENOID,
                SheetPaths.CHARGE,
                SheetPaths.COOLER,
                SheetPaths.DRIVELINE_LOSS,
                SheetPaths.ETHANOL);
        int refused = 0;
        for (int i = 0; i < 50; i++) {
            Job job = JOB;
            try {
                for (int k = 0; k < 3; k++) {
                    String path = paths.get(random.nextInt(paths.size()));
                    var origin = JOB.car().origin(path).orElseThrow();
                    double value = origin.value() * (0.99 + 0.02 * random.nextDouble());
                    job = job.with(path, text(value, origin.kind()));
                }
            } catch (SheetException words) {
                refused++;
                continue;
            }
            Setup setup = job.setup().withBoost(BoostTarget.constant(1.2e5)).withJets(new JetPair(0.95e-3, 0.52e-3));
            recompute(Ledgers.of(Evaluate.of(job.car(), setup, job.stated())), "car " + i);
        }
        assertTrue(refused < 10, "refused: " + refused);
    }

    private static String text(double si, QuantityKind kind) {
        return switch (kind) {
            case LENGTH, BORE -> String.format(Locale.ROOT, "%.5f mm", 1e3 * si);
            case MASS -> String.format(Locale.ROOT, "%.5f kg", si);
            case PRESSURE_DIFFERENCE -> String.format(Locale.ROOT, "%.5f bar", si * 1e-5);
            case FRACTION -> String.format(Locale.ROOT, "%.5f %%", 100 * si);
            default -> String.format(Locale.ROOT, "%.5f", si);
        };
    }

    @Test
    void every_sheet_path_that_is_named_here_stands_in_the_demonstration_sheet_or_is_another_way_to_say_it() {
        List<String> silent = List.of(
                SheetPaths.NITROUS_RATIO,
                SheetPaths.CIRCUIT_LAMBDA,
                SheetPaths.BOTTLE_PRESSURE,
                SheetPaths.NITROUS_JET,
                SheetPaths.FUEL_JET);
        List<String> missing = new ArrayList<>();
        for (var field : SheetPaths.class.getFields()) {
            try {
                String path = (String) field.get(null);
                if (JOB.car().origin(path).isEmpty() && !silent.contains(path)) {
                    missing.add(path);
                }
            } catch (IllegalAccessException e) {
                throw new AssertionError(e);
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void a_figure_of_the_sheet_says_where_it_stands_and_one_that_was_changed_does_not() {
        Outcome outcome = Evaluate.of(JOB.car(), SETUP, JOB.stated());
        Ledger ledger = Ledgers.of(outcome, JOB.target());
        Entry bore = ledger.find("bore").orElseThrow();
        assertEquals(SheetPaths.BORE, bore.origin().orElseThrow().path());
        assertEquals(Provenance.MEASURED, bore.provenance());
        Entry target = Ledgers.of(outcome, JOB.target().withWheelPower(500e3))
                .find("target")
                .orElseThrow();
        assertTrue(target.source().contains("720 hp"), target.source());
        assertTrue(target.origin().isEmpty());
    }

    @Test
    void the_power_rests_on_engine_bottle_jets_and_fuels() {
        Ledger ledger = Ledgers.of(Evaluate.of(JOB.car(), SETUP, JOB.stated()));
        List<String> below = ledger.why("wheel-power").stream().map(Entry::key).toList();
        for (String key : List.of("bore", "start-temperature", "nitrous-jet", "fuel-jet", "ethanol", "base-power")) {
            assertTrue(below.contains(key), key);
        }
        assertTrue(ledger.entries().stream().noneMatch(e -> e.source().isBlank()));
    }

    /** One standard uncertainty: the same figure wherever it is asked for, and at least that of the base pull's share. */
    @Test
    void the_power_is_known_as_well_as_the_base_pull_and_the_shot_allow() {
        Outcome outcome = Evaluate.of(JOB.car(), SETUP, JOB.stated());
        Ledger ledger = Ledgers.of(outcome);
        Entry wheel = ledger.find("wheel-power").orElseThrow();
        double off = ledger.find("off-power").orElseThrow().value();
        assertEquals(PowerUncertainty.of(JOB.car(), outcome.strongest().orElseThrow(), off), wheel.uncertainty());
        assertTrue(wheel.uncertainty() > JOB.car().basePull().uncertainty() * off);
        double added = wheel.value() - off;
        assertTrue(
                wheel.uncertainty() < Math.hypot(JOB.car().basePull().uncertainty() * off, added),
                "less than the shot itself");
    }
}
