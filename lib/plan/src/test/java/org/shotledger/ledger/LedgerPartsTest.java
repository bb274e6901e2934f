package org.shotledger.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.car.Car;
import org.shotledger.car.OnMainRail;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.job.Job;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/** What a ledger says where the car is built or known otherwise: tested jets, one rail, a corrected pull, another fuel, another state of the bottle. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LedgerPartsTest {
    private static final Path FOLDER = Path.of("../../data/whimbrel");
    private static final double THOU = 25.4e-6;
    private static final String TESTS = """
            flow-tests:
              first:
                kind: nitrous
                jets: 43 thou
                seconds: 10 s +/- 0.2 s
                before: 24 kg +/- 20 g
                after: 22.9 kg +/- 10 g
                bottle-pressure: 900 psi gauge
              second:
                kind: nitrous
                jets: 43 thou
                seconds: 10 s
                before: 22 kg
                after: 20.9 kg
                bottle-pressure: 900 psi gauge
              petrol:
                kind: fuel
                jets: 22 thou
                liquid: water
                seconds: 30 s
                volume: 3.0 L
                flowing-pressure: 3.5 bar gauge
            """;

    private final Job job = Job.load(FOLDER);
    private final Setup setup = set(job);

    private static Setup set(Job job) {
        return job.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(43 * THOU, 22 * THOU));
    }

    private static Job edited(String... edits) throws IOException {
        String text = Files.readString(FOLDER.resolve("job.yaml"));
        for (int i = 0; i < edits.length; i += 2) {
            assertTrue(text.contains(edits[i]), edits[i]);
            text = text.replace(edits[i], edits[i + 1]);
        }
        return Job.read(text, FOLDER);
    }

    private static Ledger of(Job job) {
        return Ledgers.of(Evaluate.of(job.car(), set(job), job.stated()));
    }

    private static Entry entry(Ledger ledger, String key) {
        return ledger.find(key).orElseThrow();
    }

    private static double value(Ledger ledger, String key) {
        return entry(ledger, key).value();
    }

    /** What runs a calibration or a pass anew; made again in {@link LedgerFiguresTest}. */
    private static final List<String> SLOW = List.of("cycle-share", "base-air-power", "pass-seconds", "passes");

    /** Every figure that rests on others is made again from them. */
    private static void assertMadeAgain(Ledger ledger) {
        for (Entry entry : ledger.entries()) {
            assertEquals(entry.inputs().isEmpty(), entry.formula().isEmpty(), entry.key());
            if (entry.formula().isPresent() && !SLOW.contains(entry.key())) {
                double again = ledger.recomputed(entry.key()).orElseThrow();
                assertEquals(entry.value(), again, entry.tolerance() * Math.abs(entry.value()), entry.key());
            }
        }
    }

    @Test
    void the_reasoning_goes_from_what_is_asked_to_the_wheels() {
        Ledger ledger = Ledgers.of(Evaluate.of(job.car(), setup, job.stated()), job.target());
        assertEquals(
                "target mixture-asked engine-speed nitrous-jet fuel-jet lambda-main spark-retard voltage"
                        + " ambient-temperature humidity altitude ambient-pressure humidity-ratio ambient-density"
                        + " boost-target plenum-pressure boost"
                        + " bore stroke cylinders compression-ratio displacement volumetric-efficiency"
                        + " charge start-temperature bottle-temperature bottle-pressure nitrous-enthalpy"
                        + " nozzles nitrous-solenoid jet-inlet-pressure nitrous-flow"
                        + " fuel-temperature main-evaporated oxide-evaporated wall-heat ethanol"
                        + " main-fuel-oxygen main-fuel-heat main-fuel-density main-pressure main-reference main-rail"
                        + " nitrous-evaporated nitrous-fuel-oxygen nitrous-fuel-heat nitrous-fuel-density"
                        + " fuel-pressure boost-reference fuel-rail nitrous-fuel-flow"
                        + " compressor-flow back-pressure-factor breathed-volume compressor-outlet turbo-speed"
                        + " compressor-power cooler-effectiveness air-temperature",
                String.join(
                        " ",
                        ledger.entries().stream()
                                .map(Entry::key)
                                .takeWhile(key -> !key.equals("charge-temperature"))
                                .toList()));
        for (String key : List.of("heat", "peak-pressure", "exhaust-temperature", "exhaust-pressure")) {
            assertTrue(entry(ledger, key).formula().isPresent(), key);
        }
        assertEquals(
                "feed path and jets: law \"class\"; limited by nitrous jet (choked)",
                entry(ledger, "nitrous-flow").basis());
        assertEquals(
                "pressure at the main fuel rail", entry(ledger, "main-rail").name());
        assertEquals("p_a + p_F + k_b (p_m - p_a)", entry(ledger, "fuel-rail").basis());
        assertEquals(
                "sqrt(2 rho (p_r - p_m)) over solenoid, jets and nozzle passages in series",
                entry(ledger, "nitrous-fuel-flow").basis());
        assertEquals("P_b / (pi N / 30)", entry(ledger, "crank-torque").basis());
        assertEquals(Provenance.CALCULATED, entry(ledger, "nitrous-flow").provenance());
        double flow = value(ledger, "nitrous-flow");
        assertTrue(entry(ledger, "nitrous-flow").uncertainty() < flow
                && entry(ledger, "nitrous-flow").uncertainty() > 0.02 * flow);
        assertMadeAgain(ledger);
    }

    /** Words and figures of a case whose models are off. */
    @Test
    void the_factors_of_a_case_are_told() {
        Case off = job.stated()
                .with(Factor.ENGINE_WORK, 0.97)
                .with(Factor.BREATHING, 1.02)
                .with(Factor.FUEL_JET_FLOW, 0.95);
        Ledger ledger = Ledgers.of(Evaluate.of(job.car(), setup, off));
        for (String[] told :
                new String[][] {{"indicated", "0.97"}, {"breathed-volume", "1.02"}, {"nitrous-fuel-flow", "0.95"}}) {
            String basis = entry(ledger, told[0]).basis();
            assertTrue(basis.endsWith(", times the case's factor of " + told[1]), basis);
        }
        assertTrue(!entry(ledger, "peak-pressure").basis().contains("factor"));
        assertMadeAgain(ledger);
        // the table of breathing and the back pressure's factor stay as they are: 2 % more is breathed for the same two
        double plain = value(ledger, "volumetric-efficiency")
                * value(ledger, "displacement")
                * value(ledger, "engine-speed")
                / 120;
        assertEquals(1.02 * plain * value(ledger, "back-pressure-factor"), value(ledger, "breathed-volume"), 1e-9);
    }

    /** The factor of tested jets: what the test left of the class, with the test in words; the flow rests on it. */
    @Test
    void tested_jets_carry_their_test() {
        Job tested = job.adding(TESTS);
        Ledger ledger = of(tested);
        Entry nitrous = entry(ledger, "nitrous-jet-factor");
        FlowTested second = tested.flowTests().get(1);
        assertEquals(Math.exp(second.after().logarithm()), nitrous.value(), 1e-9);
        // the band of 90 %, widened by 0.06 for other states (measured holes)
        assertEquals(Math.hypot(second.after().deviation(), 0.06), nitrous.uncertainty() / nitrous.value(), 1e-9);
        assertTrue(
                nitrous.basis()
                        .startsWith(
                                "flow test \"second\" and 1 before it: 1.100 kg in 10.00 s through 6 of 43.0 thou, 110.00 g/s where "),
                nitrous.basis());
        assertEquals("flow of the nitrous jets over that of their class", nitrous.name());
        assertTrue(nitrous.source().contains("Gelman") && nitrous.source().contains("job"), nitrous.source());
        Entry fuel = entry(ledger, "fuel-jet-factor");
        assertTrue(fuel.basis().startsWith("flow test \"petrol\": "), fuel.basis());
        assertTrue(
                fuel.basis()
                        .endsWith(
                                " was expected; further from what was known than two standard deviations, so check the test and the sheet"),
                fuel.basis());
        assertTrue(nitrous.basis().endsWith(" was expected"), nitrous.basis());
        assertEquals(Provenance.MEASURED, entry(ledger, "nitrous-flow").provenance());
        assertEquals(Provenance.MEASURED, entry(ledger, "nitrous-fuel-flow").provenance());
        assertTrue(entry(ledger, "nitrous-flow").inputs().contains("nitrous-jet-factor"));
        assertTrue(entry(ledger, "nitrous-fuel-flow").inputs().contains("fuel-jet-factor"));
        assertMadeAgain(ledger);
        Ledger other = Ledgers.of(
                Evaluate.of(tested.car(), set(tested).withJets(new JetPair(55 * THOU, 22 * THOU)), tested.stated()));
        String basis = entry(other, "nitrous-flow").basis();
        assertTrue(
                basis.contains("; outside what was measured: The flow test \"second\" was made with nitrous jets"),
                basis);
    }

    /** Both fuels from one pump that is too small: pump and jets meet below the regulator's pressure, and the injectors pass less. */
    @Test
    void one_rail_for_both_fuels() {
        Setup one = OnMainRail.setup(setup);
        Ledger held = Ledgers.of(Evaluate.of(OnMainRail.car(job.car(), 6e-4), one, job.stated()));
        assertEquals(
                "pressure at the main fuel rail, for both fuels",
                entry(held, "main-rail").name());
        assertEquals(
                "p_a + set pressure + reference (p_m - p_a)",
                entry(held, "main-rail").basis());
        assertTrue(
                held.find("fuel-rail").isEmpty() && held.find("fuel-pressure").isEmpty());
        assertTrue(held.find("injector-share").isEmpty());
        assertMadeAgain(held);
        Ledger fallen = Ledgers.of(Evaluate.of(OnMainRail.car(job.car(), 1.4e-4), one, job.stated()));
        double ambient = value(fallen, "ambient-pressure");
        double plenum = value(fallen, "plenum-pressure");
        double regulated = plenum + value(fallen, "main-pressure");
        double rail = value(fallen, "main-rail");
        assertTrue(rail < regulated - 1e3, rail + " below " + regulated);
        assertEquals(1, value(fallen, "main-reference"));
        double share = Math.sqrt((rail - plenum) / (regulated - plenum));
        assertEquals(share, value(fallen, "injector-share"), 1e-9);
        // the straight pump: 1.4e-4 m3/s at no pressure, nothing at 9 bar
        double pumped = value(fallen, "main-fuel-density") * 1.4e-4 * (1 - (rail - ambient) / 9e5);
        double used = value(fallen, "main-fuel-flow") + value(fallen, "nitrous-fuel-flow");
        assertEquals(pumped, used, 1e-4 * pumped);
        double asked =
                0.2314 * value(fallen, "air-flow") / value(fallen, "lambda-main") / value(fallen, "main-fuel-oxygen");
        assertEquals(share * asked, value(fallen, "main-fuel-flow"), 2e-4 * asked);
        assertTrue(entry(fallen, "main-fuel-flow").basis().endsWith(", times the share that the injectors pass"));
        assertMadeAgain(fallen);
    }

    /** A pull corrected to DIN 70020: 1013 mbar over 989.45 mbar, root of 291.15 K over 293 K; the engine is held against what was seen. */
    @Test
    void a_corrected_pull_is_taken_back_to_what_was_observed() throws IOException {
        double factor = 1013 / 989.45 * Math.sqrt(291.15 / 293);
        Ledger ledger = of(
                edited("  wheel-power: 590 hp +/- 15 hp", "  wheel-power: 590 hp +/- 15 hp\n  correction: din-70020"));
        Entry shown = entry(ledger, "base-power-shown");
        assertEquals(590 * 745.6999, shown.value(), 1);
        Entry observed = entry(ledger, "base-power");
        assertEquals(shown.value() / factor, observed.value(), 2e-4 * observed.value());
        assertEquals(15 / 590.0 / Math.sqrt(3), observed.uncertainty() / observed.value(), 1e-6);
        assertEquals("P_c / 1.0206, the factor of the correction on the air of that day", observed.basis());
        assertTrue(observed.source().contains("DIN 70020"), observed.source());
        assertMadeAgain(ledger);
    }

    /** Methanol for the shot does not change with the ethanol in the tank; a driveline that drags takes its torque first. */
    @Test
    void another_fuel_and_a_drag() throws IOException {
        Job methanol = edited(
                "    kind: same", "    kind: methanol",
                "driveline:\n", "driveline:\n  drag-torque: 12 N m\n");
        Ledger ledger = of(methanol);
        assertEquals(
                List.of("fuel-temperature"),
                entry(ledger, "nitrous-fuel-density").inputs());
        assertEquals(List.of(), entry(ledger, "nitrous-fuel-oxygen").inputs());
        assertEquals(List.of("ethanol"), entry(ledger, "main-fuel-oxygen").inputs());
        // CH3OH + 1.5 O2: 1.5 * 31.9988 / 32.0419 = 1.4980 (atomic masses of IUPAC)
        assertEquals(1.4980, value(ledger, "nitrous-fuel-oxygen"), 1e-4);
        double drag = 12 * value(ledger, "engine-speed") * Math.PI / 30;
        double wheels = (value(ledger, "brake") - drag) * 0.86;
        assertEquals(wheels, value(ledger, "wheel-power"), 1e-6 * wheels);
        assertMadeAgain(ledger);
    }

    @Test
    void without_an_answer_there_is_nothing_to_reason() {
        Setup beyond = setup.withBoost(BoostTarget.constant(2.9e5));
        Ledger ledger = Ledgers.of(Evaluate.of(job.car(), beyond, job.stated()), job.target());
        assertEquals(List.of(), List.copyOf(ledger.entries()));
    }

    /** Saturated at a given temperature; at the end of the last pass colder, and by the energy balance. */
    @Test
    void the_bottle_is_as_the_case_says() {
        Ledger given = Ledgers.of(Evaluate.of(job.car(), setup, job.stated().withBottle(BottleState.at(285))));
        Entry temperature = entry(given, "bottle-temperature");
        assertEquals(285, temperature.value());
        assertEquals("given", temperature.basis());
        // Lemmon and Span: 11.85 degC boils under 41.6 bar
        assertEquals(41.6e5, value(given, "bottle-pressure"), 0.3e5);
        assertEquals(
                "saturation pressure at the bottle temperature",
                entry(given, "bottle-pressure").basis());
        assertMadeAgain(given);
        Case last = job.stated().withBottle(BottleState.LAST);
        Ledger end = Ledgers.of(Evaluate.of(job.car(), setup, last));
        assertTrue(value(end, "bottle-temperature") < value(end, "start-temperature") - 5);
        assertTrue(entry(end, "bottle-temperature").basis().endsWith(": energy balance of liquid, vapour and shell"));
        assertMadeAgain(end);
        Ledger full = Ledgers.of(Evaluate.of(job.car(), setup, job.stated().withBottle(BottleState.FULL)));
        assertEquals(value(full, "start-temperature"), value(full, "bottle-temperature"));
        assertEquals(
                "charge and temperature in the bottle's volume",
                entry(full, "bottle-pressure").basis());
        // 7.711 kg in 12.6 L are 612 kg/m3: liquid and vapour at 30 degC, 63.2 bar by Lemmon and Span
        assertEquals(63.2e5, value(full, "bottle-pressure"), 0.3e5);
        assertMadeAgain(full);
    }

    @Test
    void a_law_that_does_not_cover_the_state_says_so() {
        Car gas = job.car().with(job.car().nitrous().withFlowLaw(OrificeLaw.IDEAL_GAS));
        Ledger ledger = Ledgers.of(Evaluate.of(gas, setup, job.stated()));
        assertEquals(
                "feed path and jets: law \"class\", since \"ideal gas\" does not cover what stands before the jets;"
                        + " limited by nitrous jet (choked)",
                entry(ledger, "nitrous-flow").basis());
    }
}
