package org.shotledger.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.engine.MoistAir;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.units.QuantityKind;

/** Figures of the ledger worked out again from the chemistry and the sheet; anew in every test. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LedgerFiguresTest {
    private static final String BORE = "nitrous-system.nitrous.solenoid.bore";
    private final Job job = Job.load(Path.of("../../data/whimbrel"));
    private final Car car = job.car();
    private final Setup setup =
            job.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));

    private static double value(Ledger ledger, String key) {
        return ledger.find(key).orElseThrow().value();
    }

    /** Every figure that is made is made again from what it names, and there are as many as the reasoning has. */
    private static void assertMadeAgain(Ledger ledger, String... made) {
        for (Entry entry : ledger.entries()) {
            if (entry.formula().isPresent()) {
                double again = ledger.recomputed(entry.key()).orElseThrow();
                assertEquals(entry.value(), again, entry.tolerance() * Math.abs(entry.value()), entry.key());
            }
        }
        for (String key : made) {
            assertTrue(ledger.find(key).orElseThrow().formula().isPresent(), key);
        }
    }

    /**
     * Oxygen: 0.2314 of dry air by mass, 15.9994 / 44.0128 of nitrous oxide (atomic masses of IUPAC). The stream of each fuel takes what
     * its flow takes, so that {@code lambda} is what is there over what is taken; the main stream alone is at its own mixture.
     */
    @Test
    void the_mixtures_are_the_oxygen_there_over_the_oxygen_taken() {
        Case off = job.stated().with(Factor.MAIN_FUEL, 1.04);
        Ledger ledger = Ledgers.of(Evaluate.of(car, setup, off));
        double air = 0.2314 * value(ledger, "air-flow");
        double nitrous = 15.9994 / 44.0128 * value(ledger, "nitrous-flow");
        double main = value(ledger, "main-fuel-oxygen") * value(ledger, "main-fuel-flow");
        double fuel = value(ledger, "nitrous-fuel-oxygen") * value(ledger, "nitrous-fuel-flow");
        assertEquals((air + nitrous) / (main + fuel), value(ledger, "lambda"), 1e-4);
        assertEquals(nitrous / fuel, value(ledger, "circuit-lambda"), 1e-4 * nitrous / fuel);
        assertEquals(1.04 * air / value(ledger, "lambda-main"), main, 2e-4 * main);
        assertEquals(
                value(ledger, "nitrous-flow") / value(ledger, "nitrous-fuel-flow"),
                value(ledger, "circuit-ratio"),
                1e-12);
        assertMadeAgain(
                ledger,
                "charge-temperature",
                "air-flow",
                "main-fuel-flow",
                "lambda",
                "circuit-lambda",
                "circuit-ratio",
                "injector-duty");
    }

    /** Without nitrous all of the oxygen is the air's, and the mixture is that of the main fuel. */
    @Test
    void without_nitrous_the_mixture_is_the_main_fuels() {
        Ledger ledger = Ledgers.of(Evaluate.of(car, setup.withoutJets(), job.stated()));
        double air = 0.2314 * value(ledger, "air-flow");
        double main = value(ledger, "main-fuel-oxygen") * value(ledger, "main-fuel-flow");
        assertEquals(air / main, value(ledger, "lambda"), 1e-4);
        assertEquals(value(ledger, "lambda-main"), value(ledger, "lambda"), 1e-9);
        assertTrue(ledger.find("circuit-lambda").isEmpty());
        assertMadeAgain(ledger, "lambda", "main-fuel-flow");
    }

    /** A bore of 4.1 mm in the sheet, told with its line; another one in the setup is told apart from the sheet's. */
    @Test
    void a_given_figure_is_the_sheets_as_long_as_it_is_the_same() {
        LedgerPen pen = new LedgerPen(car);
        pen.sheet("same", "hole", "d", QuantityKind.BORE, 4.1e-3, BORE);
        pen.given("other", "hole", "d", QuantityKind.BORE, 4.100001e-3, BORE, "this setup")
                .enter();
        pen.given("nowhere", "hole", "d", QuantityKind.BORE, 4.1e-3, "no.such.place", "this setup")
                .enter();
        String flow = "injection.injector.flow";
        double metered = car.origin(flow).orElseThrow().value();
        pen.sheet("banded", "flow", "", QuantityKind.VOLUME_FLOW, metered, flow);
        Ledger ledger = pen.ledger();
        Entry same = ledger.find("same").orElseThrow();
        assertEquals("input, '4.1 mm'", same.basis());
        assertEquals(4.1e-3, same.origin().orElseThrow().value(), 1e-15);
        assertEquals(car.origin(BORE).orElseThrow().source(), same.source());
        Entry other = ledger.find("other").orElseThrow();
        assertEquals("given", other.basis());
        assertEquals("this setup; the sheet has '4.1 mm'", other.source());
        assertEquals(Provenance.ASSUMED, other.provenance());
        assertTrue(other.origin().isEmpty());
        Entry nowhere = ledger.find("nowhere").orElseThrow();
        assertEquals("this setup", nowhere.source());
        assertEquals(Provenance.ASSUMED, nowhere.provenance());
        Entry banded = ledger.find("banded").orElseThrow();
        assertEquals(Provenance.MEASURED, banded.provenance());
        // +/- 2 % of 1130 cc/min, every value in it equally likely: 22.6 / sqrt 3 = 13.048 cc/min
        assertEquals(13.048 / 6e7, banded.uncertainty(), 1e-3 / 6e7);
        assertEquals(List.of(same, other, nowhere, banded), List.copyOf(ledger.entries()));
    }

    /** A draft carries what was written of it, and a formula makes the figure from its inputs. */
    @Test
    void a_calculated_figure_carries_what_was_written_of_it() {
        LedgerPen pen = new LedgerPen(car);
        pen.calculated("a", "first", "A", QuantityKind.RATIO, 7).enter();
        pen.calculated("b", "second", "B", QuantityKind.RATIO, 21)
                .by("three times a", "definition")
                .uncertain(0.6)
                .within(1e-3)
                .provenance(Provenance.PUBLISHED)
                .on("a")
                .from(x -> 3 * x[0]);
        Ledger ledger = pen.ledger();
        Entry b = ledger.find("b").orElseThrow();
        assertEquals(
                new Entry(
                        "b",
                        "second",
                        "B",
                        QuantityKind.RATIO,
                        21,
                        0.6,
                        "three times a",
                        "definition",
                        List.of("a"),
                        Provenance.PUBLISHED,
                        Optional.empty(),
                        b.formula(),
                        1e-3),
                b);
        assertEquals(21, ledger.recomputed("b").orElseThrow());
        Entry a = ledger.find("a").orElseThrow();
        assertEquals(Provenance.CALCULATED, a.provenance());
        assertTrue(Double.isNaN(a.uncertainty()));
    }

    /**
     * JCGM 100, 5.1.2: of the pull's share of the power without nitrous, and of what nitrous adds the flow's logarithmic deviation (90 % of
     * a normal law lie within 1.645) and a sixth of the square root of three times the relative width of the share that arrives.
     */
    @Test
    void the_uncertainty_of_the_power_adds_three_in_squares() {
        Outcome outcome = Evaluate.of(car, setup, job.stated());
        OperatingPoint point = outcome.strongest().orElseThrow();
        double off = point.wheelPower() - 60e3;
        double flow =
                Math.log(point.nitrous().band().high() / point.nitrous().band().low()) / 3.29;
        var share = car.model().nitrous();
        double arrives = (share.high() - share.low()) * Math.sqrt(3) / 6;
        assertEquals(flow, PowerUncertainty.nitrousFlow(point), 1e-3 * flow);
        assertEquals(arrives, PowerUncertainty.nitrousShare(car), 1e-12);
        double base = car.basePull().uncertainty() * off;
        double expected = Math.hypot(base, 60e3 * Math.hypot(flow, arrives / share.value()));
        assertEquals(expected, PowerUncertainty.of(car, point, off), 1e-3 * expected);
        assertTrue(60e3 * flow > 0.1 * base && 60e3 * arrives / share.value() > 0.1 * base, "all three weigh");
    }

    /** What a reader looks for in a plan with nitrous stands there; of an engine alone nothing of the nitrous does. */
    @Test
    void the_reasoning_names_every_part_of_the_car() {
        Ledger on = Ledgers.of(Evaluate.of(car, setup, job.stated()), job.target());
        Ledger off = Ledgers.of(Evaluate.of(car, setup.withoutJets(), job.stated()));
        List<String> both = List.of(
                "engine-speed",
                "plenum-pressure",
                "boost",
                "boost-target",
                "cycle-share",
                "base-air-power",
                "indicated",
                "friction",
                "pumping",
                "brake",
                "crank-torque",
                "wheel-power",
                "lambda",
                "injector-duty",
                "main-rail");
        List<String> nitrousOnly = List.of(
                "nitrous-flow",
                "nitrous-fuel-flow",
                "circuit-ratio",
                "off-power",
                "nitrous-power",
                "off-brake",
                "trade-nitrous",
                "pass-seconds",
                "passes");
        for (String key : both) {
            assertTrue(on.find(key).isPresent() && off.find(key).isPresent(), key);
        }
        for (String key : nitrousOnly) {
            assertTrue(on.find(key).isPresent(), key);
            if (!key.startsWith("nitrous")) {
                assertTrue(off.find(key).isEmpty(), key);
            }
        }
        for (Entry entry : on.entries()) {
            assertTrue(!entry.basis().isBlank() && !entry.source().isBlank(), entry.key());
        }
    }

    /** The trade's figure: kg of nitrous oxide in 10 s for each 100 hp of 550 ft lbf/s each, 745.6999 W, at the crankshaft. */
    @Test
    void nitrous_for_power_is_that_of_ten_seconds_and_a_hundred_horsepower() {
        Ledger ledger = Ledgers.of(Evaluate.of(car, setup, job.stated()));
        double hundreds = (value(ledger, "brake") - value(ledger, "off-brake")) / 74569.99;
        double expected = 10 * value(ledger, "nitrous-flow") / hundreds;
        Entry trade = ledger.find("trade-nitrous").orElseThrow();
        assertEquals(expected, trade.value(), 1e-6 * expected);
        double pounds = expected / 0.45359237;
        assertEquals(pounds >= 0.75 && pounds <= 1.12, trade.basis().contains("; inside the band"), trade.basis());
        var share = car.model().nitrous();
        double relative = (share.high() - share.low()) / Math.sqrt(12) / share.value();
        assertEquals(relative * expected, trade.uncertainty(), 1e-6 * expected);
        double added = value(ledger, "wheel-power") - value(ledger, "off-power");
        assertEquals(added, value(ledger, "nitrous-power"), 1e-6);
    }

    /** The pull is known by its stated band, and so is the share of the cycle that it was solved from; the air it takes judges it. */
    @Test
    void the_base_pull_carries_its_band() {
        Ledger ledger = Ledgers.of(Evaluate.of(car, setup, job.stated()));
        double relative = 15 / Math.sqrt(3) / 590;
        Entry pull = ledger.find("base-power").orElseThrow();
        assertEquals(590 * 745.6999, pull.value(), 1);
        assertEquals(relative * pull.value(), pull.uncertainty(), 0.01 * pull.uncertainty());
        Entry share = ledger.find("cycle-share").orElseThrow();
        assertEquals(relative * share.value(), share.uncertainty(), 0.01 * share.uncertainty());
        Entry air = ledger.find("base-air-power").orElseThrow();
        double shown = air.value() / (745.6999 * 60 / 0.45359237);
        assertTrue(air.basis().contains(String.format(Locale.ROOT, "%.2f hp", shown)), air.basis());
        assertEquals(shown >= 9 && shown <= 10.8, air.basis().contains("; inside the band"), air.basis());
        double speed = value(ledger, "engine-speed") * Math.PI / 30;
        double drag = car.driveline().dragTorque() * speed;
        double wheels = (value(ledger, "brake") - drag) * (1 - value(ledger, "driveline-loss"));
        assertEquals(wheels, value(ledger, "wheel-power"), 1e-6 * wheels);
        assertEquals(wheels, ledger.recomputed("wheel-power").orElseThrow(), 1e-6 * wheels);
    }

    /** An altitude makes the pressure by ISO 2533, 101325 Pa (1 - 2.25577e-5 H)^5.25588, H geopotential; another is the case's. */
    @Test
    void the_air_of_the_case_is_told_by_altitude_or_by_pressure() {
        Case stated = job.stated();
        Ledger ledger = Ledgers.of(Evaluate.of(car, setup, stated));
        double p = value(ledger, "ambient-pressure");
        double h = value(ledger, "altitude");
        assertEquals(1250, h);
        double level = h / (1 + h / 6356766);
        assertEquals(101325 * Math.pow(1 - 2.25577e-5 * level, 5.25588), p, 5e-6 * p);
        var air = stated.air();
        Case other = stated.withAir(new MoistAir(air.pressure() * 1.01, air.temperature(), air.relativeHumidity()));
        Ledger changed = Ledgers.of(Evaluate.of(car, setup, other));
        assertTrue(changed.find("altitude").isEmpty());
        Entry pressure = changed.find("ambient-pressure").orElseThrow();
        assertEquals(1.01 * air.pressure(), pressure.value(), 1e-6);
        assertTrue(pressure.formula().isEmpty());
        assertTrue(pressure.source().contains("the case '" + stated.name() + "'"), pressure.source());
    }
}
