package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;
import org.shotledger.wiring.Importance;
import org.shotledger.wiring.InputStage;
import org.shotledger.wiring.Load;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinExpander;
import org.shotledger.wiring.PinKind;
import org.shotledger.wiring.PinNeed;
import org.shotledger.wiring.PinOption;
import org.shotledger.wiring.PinSignal;
import org.shotledger.wiring.PowerSupply;
import org.shotledger.wiring.SensorInput;
import org.shotledger.wiring.Wiring;
import org.shotledger.workshop.ListedPart;
import org.shotledger.workshop.Parts;
import org.shotledger.workshop.Readings;
import org.shotledger.workshop.Track;
import org.shotledger.workshop.Workshop;

/** Wiring and workshop as they are read, in SI by hand, with what counts where the sheet says nothing. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class WiringFiguresTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();

    @Test
    void supply_rules_and_loads() throws IOException {
        Wiring plain = wiring();
        assertEquals(new PowerSupply(140, 0.8, 252_000, plain.supply().overSpeed(), 900), plain.supply());
        assertEquals(4, plain.outputCurrent());
        assertEquals(353.15, plain.rules().temperature(), 1e-9);
        assertEquals(0.03, plain.rules().allowedDrop(), 1e-12);
        assertEquals(3, plain.rules().bundled());
        assertEquals(
                List.of(
                        new Load("engine management", 24, 24, 0, 1, 1.5, true, false, false, Load.Phase.ALWAYS),
                        new Load("cooling fans", 34, 75, 0.12, 0.6, 2, true, false, false, Load.Phase.ALWAYS)),
                plain.loads().subList(0, 2));
        assertEquals(
                new Load("nitrous solenoid", 13, 13, 0, 1, 4.1, true, true, true, Load.Phase.PASS),
                plain.loads().get(6));
        assertEquals(Load.Phase.WAITING, plain.loads().get(9).phase());
        Wiring bare = wiring(
                "  copper-temperature: 80 degC\n  voltage-drop: {value: 3 %, from: usual for circuits that matter, provenance: common practice}\n",
                "", "  bundled: 3\n", "", "  alternator-share: {value: 80 %, provenance: common practice}\n", "");
        assertEquals(353.15, bare.rules().temperature());
        assertEquals(0.03, bare.rules().allowedDrop());
        assertEquals(3, bare.rules().bundled());
        assertEquals(0.8, bare.supply().share());
    }

    /**
     * Highest rail pressure: 3.0 + 1.85 bar for the main pumps, 3.5 + 1.85 bar for the nitrous fuel. Straight lines between the rows of the
     * tables and the drop in the wires: 12.75 A less 45 mohm, 14.70 A less 50 mohm.
     */
    @Test
    void a_part_brings_its_current_at_the_highest_pressure_behind_its_wires() throws IOException {
        Wiring plain = wiring();
        // at 4.85 bar 12.75 A at 13.5 V and 10.84 A at 12 V: at 12.95 V 12.05 A
        assertEquals(12.05, load(plain, "main pump 1").current(), 0.02);
        // at 5.35 bar 14.70 A at 13.5 V and 12.48 A at 12 V: at 12.81 V 13.68 A
        assertEquals(13.68, load(plain, "nitrous fuel pump").current(), 0.02);
        assertEquals(350 / 13.5, load(plain, "bottle heater").current(), 1e-9);
        assertEquals(30, load(plain, "main pump 1").surge());
        assertEquals(
                "wiring.loads.nitrous-fuel-pump.part: The nitrous fuel comes from the main rail and has no pump of its own; take"
                        + " this load out: the main pump carries both.",
                refused(
                        "    cell-volume: 6 L #",
                        "    supply: main-rail #",
                        "    pumps:\n      count: 1\n      wiring-resistance: 50 mohm\n      curve: nitrous-fuel-pump.csv\n",
                        "",
                        "    regulator:\n      base-pressure: 3.5 bar\n      # 1 follows the boost, 0 does not; compare both\n      boost-reference: 1\n",
                        ""));
    }

    private static Load load(Wiring wiring, String name) {
        return wiring.loads().stream()
                .filter(l -> l.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static final String SIGNAL = "    ready-lamp: {channel: output, need: could, instead: bus}\n";

    private static PinSignal signal(String line) throws IOException {
        return wiring(SIGNAL, SIGNAL + "    own: {" + line + "}\n")
                .pinTask()
                .signals()
                .get(12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "input|ANALOGUE DIGITAL|0|0|0",
                "output|LOW_SIDE|0|0|0",
                "pulse|LOW_SIDE|20|0|0",
                "analogue|ANALOGUE|0|0|0",
                "pull-up|ANALOGUE_PULL_UP|0|1e6|0",
                "thermocouple|THERMOCOUPLE|0|0|0",
                "digital|DIGITAL|0|0|0",
                "frequency|FREQUENCY|150|0|5",
                "low-side|LOW_SIDE|0|0|0",
                "high-side|HIGH_SIDE|0|0|0",
                "half-bridge|HALF_BRIDGE|0|0|0",
            })
    void a_word_for_a_channel_asks_for_a_kind_of_pin(
            String word, String kinds, double frequency, double pullUp, double high) throws IOException {
        PinSignal signal = signal("channel: " + word + ", need: could");
        assertEquals(
                kinds,
                String.join(
                        " ",
                        signal.need().kinds().stream().map(Enum::name).sorted().toList()));
        assertEquals(frequency, signal.need().frequency());
        assertEquals(
                List.of(0.0, pullUp),
                List.of(signal.need().pullUpLow(), signal.need().pullUpHigh()));
        assertEquals(
                List.of(0.0, high), List.of(signal.need().low(), signal.need().high()));
        assertEquals(Importance.COULD, signal.importance());
        assertEquals(10, signal.rate());
        assertEquals("own", signal.command());
        assertTrue(signal.closedWithoutCurrent() && !signal.direct());
        assertEquals(Set.of(), signal.apart());
        assertEquals(List.of(), signal.options());
    }

    @Test
    void a_signal_with_all_that_can_be_said_of_it() throws IOException {
        PinSignal signal = signal(
                "channel: pull-up, need: should, frequency: 5 Hz, current: 20 mA, pull-up-low: 1 kohm,"
                        + " pull-up-high: 3 kohm, level-low: 0.5 V, level-high: 4.5 V, rate: 50 Hz, command: other,"
                        + " closed-without-current: no, apart-from: fuel-solenoid,"
                        + " bus: {part: box, price: 90, frames: 25 Hz}, own-device: {part: lamp, price: 7},"
                        + " relay: {part: small relay, price: 6, current: 150 mA, channel: high-side, frequency: 2 Hz}");
        assertEquals(new PinNeed(Set.of(PinKind.ANALOGUE_PULL_UP), 1000, 3000, 0.5, 4.5, 5, 0.02), signal.need());
        assertEquals(Importance.SHOULD, signal.importance());
        assertEquals(50, signal.rate());
        assertEquals("other", signal.command());
        assertTrue(!signal.closedWithoutCurrent() && !signal.direct());
        assertTrue(signal("channel: input, need: could, on-controller: yes").direct());
        assertEquals(Set.of("fuel solenoid"), signal.apart());
        assertEquals(
                List.of(
                        PinOption.bus("box", 90, 25),
                        PinOption.ownDevice("lamp", 7),
                        PinOption.relay("small relay", 6, new PinNeed(Set.of(PinKind.HIGH_SIDE), 0, 0, 0, 0, 2, 0.15))),
                signal.options());
        PinSignal usual =
                signal("channel: digital, need: could, level-low: 1 V, bus: {part: box}, own-device: {part: lamp},"
                        + " relay: {part: relay}");
        assertEquals(List.of(1.0, 5.0), List.of(usual.need().low(), usual.need().high()));
        assertEquals(
                List.of(
                        PinOption.bus("box", 0, 10),
                        PinOption.ownDevice("lamp", 0),
                        PinOption.relay("relay", 0, new PinNeed(Set.of(PinKind.LOW_SIDE), 0, 0, 0, 0, 0, 0.2))),
                usual.options());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "bus|own on the data bus",
                "local|a device for own alone",
                "multiplexed|a switch by which own takes turns on one input",
            })
    void another_way_in_one_word(String word, String what) throws IOException {
        List<PinOption> options =
                signal("channel: input, need: could, instead: " + word).options();
        assertEquals(
                List.of(what + " 0.0"),
                options.stream().map(o -> o.what() + " " + o.price()).toList());
        assertEquals(
                word.equals("bus") ? Optional.of(10.0) : Optional.<Double>empty(),
                options.get(0).need().map(PinNeed::frequency));
    }

    /** It hangs on the first signal that asks for the same kind and is no twin itself, or on the one that is named. */
    @Test
    void a_twin_hangs_on_what_drives_the_first_of_its_kind() throws IOException {
        List<PinSignal> signals = wiring().pinTask().signals();
        assertEquals("nitrous solenoid", signals.get(7).command());
        assertEquals("fuel solenoid", signals.get(7).name());
        assertEquals(
                "ready",
                signal("channel: pulse, need: could, instead: shared, command: ready")
                        .command());
        assertEquals(
                "nitrous solenoid",
                signal("channel: pulse, need: could, instead: shared").command());
    }

    @Test
    void a_name_that_is_no_signal_keeps_nothing_apart_and_is_refused() {
        assertEquals(
                "wiring.signals.own.apart-from: \"fuel-solenid\" is not among the signals of the sheet; the nearest name is"
                        + " \"fuel-solenoid\".",
                refused(SIGNAL, SIGNAL + "    own: {channel: output, need: could, apart-from: fuel-solenid}\n"));
        assertTrue(refused(SIGNAL, SIGNAL + "    own: {channel: output, need: could, apart-from: qqqqqqqqqqqq}\n")
                .startsWith(
                        "wiring.signals.own.apart-from: \"qqqqqqqqqqqq\" is not among the signals of the sheet; it has"
                                + " bottle-pressure, nitrous-fuel-pressure, "));
    }

    @Test
    void a_twin_without_a_signal_to_share_with_is_refused() {
        assertEquals(
                "wiring.signals.own.instead: No other signal of the sheet asks for the channel of own, so there is none to share"
                        + " with; name in \"command\" what drives both, or choose another way.",
                refused(SIGNAL, SIGNAL + "    own: {channel: half-bridge, need: could, instead: shared}\n"));
    }

    @Test
    void pins_one_by_one_and_what_may_be_bought() throws IOException {
        Wiring told = EditedDemo.job(pins("net: {kind: bus, frames: 100 Hz}"))
                .car()
                .wiring()
                .orElseThrow();
        Wiring usual = EditedDemo.job(pins("net: {kind: bus}")).car().wiring().orElseThrow();
        assertEquals(Pin.bus("net", 200), usual.pinTask().pins().get(12));
        assertEquals(
                List.of(
                        Pin.analogue("A3 1"),
                        Pin.analogue("A3 2"),
                        Pin.pullUp("T1", 2490, true),
                        Pin.pullUp("T2", 1000, false),
                        Pin.thermocouple("K1"),
                        Pin.frequency("F1", 2, 300),
                        Pin.frequency("F2", 2.5, 1000),
                        new Pin("D1", Set.of(PinKind.DIGITAL), 0, 3, 0, 0),
                        new Pin("D2", Set.of(PinKind.DIGITAL), 0, 2.5, 0, 0),
                        Pin.output("Q 1", PinKind.LOW_SIDE, 1, 60),
                        Pin.output("Q2", PinKind.HIGH_SIDE, 2, 0),
                        Pin.output("Q3", PinKind.HALF_BRIDGE, 3, 0),
                        Pin.bus("net", 100)),
                told.pinTask().pins());
        assertEquals(
                List.of("big box 200.0 20.0 50.0 [out 1, out 2, out 3]", "box 0.0 10.0 5.0 [in]"),
                told.pinTask().expanders().stream()
                        .map(WiringFiguresTest::words)
                        .toList());
    }

    private static String[] pins(String bus) {
        return new String[] {
            "  inputs: 16\n  inputs-used: 13\n  outputs: 14\n  outputs-used: 11\n  pulsing-outputs: 8\n  pulsing-outputs-used: {value: 7, from: six injectors and the boost valve}\n",
            """
                  pins:
                    A3: {kind: analogue, count: 2}
                    T1: {kind: pull-up, pull-up: 2.49 kohm, switchable: yes}
                    T2: {kind: pull-up, pull-up: 1 kohm}
                    K1: {kind: thermocouple}
                    F1: {kind: frequency, threshold: 2 V, edges: 300 Hz}
                    F2: {kind: frequency}
                    D1: {kind: digital, threshold: 3 V}
                    D2: {kind: digital}
                    Q-1: {kind: low-side, current: 1 A, pulses: 60 Hz}
                    Q2: {kind: high-side, current: 2 A}
                    Q3: {kind: half-bridge, current: 3 A}
                    %s
                  expanders:
                    big-box: {price: 200, frames: 20 Hz, rate: 50 Hz, pins: {out: {kind: low-side, current: 2 A, count: 3}}}
                    box: {frames: 10 Hz, rate: 5 Hz, pins: {in: {kind: analogue}}}
                """.formatted(bus)
        };
    }

    private static String words(PinExpander e) {
        return e.name() + " " + e.price() + " " + e.frames() + " " + e.rate() + " "
                + e.pins().stream().map(Pin::name).toList();
    }

    @Test
    void how_the_controller_reads_sensors() throws IOException {
        String stage =
                "    supply: 5 V +/- 1 %\n    converter-bits: 12\n    table-points: 12\n    table-spacing: free\n";
        InputStage plain = EditedDemo.job().car().controller().orElseThrow().stage();
        assertEquals(0.01, plain.supplyTolerance(), 1e-12);
        assertEquals(
                "free 12 12 5.0 false",
                SensorInputs.word(plain.spacing()) + " " + plain.points() + " " + plain.bits() + " " + plain.range()
                        + " " + plain.sharedReference());
        InputStage told = EditedDemo.job(
                        stage,
                        "    supply: 4 V +/- 0.1 V\n    shared-reference: yes\n    converter-range: 3.3 V\n    converter-bits: 10\n    table-spacing: even-value\n")
                .car()
                .controller()
                .orElseThrow()
                .stage();
        assertEquals(0.025, told.supplyTolerance(), 1e-12);
        assertEquals(
                "even-value 16 10 3.3 true",
                SensorInputs.word(told.spacing()) + " " + told.points() + " " + told.bits() + " " + told.range() + " "
                        + told.sharedReference());
        InputStage bare = EditedDemo.job(stage, "    supply: 5 V\n")
                .car()
                .controller()
                .orElseThrow()
                .stage();
        assertEquals(InputStage.USUAL, bare);
        assertEquals(
                InputStage.USUAL,
                EditedDemo.job("  sensor-inputs:\n" + stage, "")
                        .car()
                        .controller()
                        .orElseThrow()
                        .stage());
        var counted = EditedDemo.job().car().controller().orElseThrow();
        assertEquals(
                List.of(16, 13, 14, 11, 8, 7),
                List.of(
                        counted.inputs(),
                        counted.inputsUsed(),
                        counted.outputs(),
                        counted.outputsUsed(),
                        counted.pulsingOutputs(),
                        counted.pulsingOutputsUsed()));
    }

    private static final String PROBE = "    exhaust-temperature: {kind: thermocouple-k";

    private static SensorInput input(String line) throws IOException {
        return wiring(PROBE, "    probe: {" + line + "}\n" + PROBE).inputs().stream()
                .filter(one -> one.name().equals("probe"))
                .findFirst()
                .orElseThrow();
    }

    /** Class: a share of 10 bar, or as much as is written. A band of 2 % of the supply counts, and where none stands that of the controller. */
    @Test
    void a_sensor_with_its_class_its_table_and_what_is_known_of_it() throws IOException {
        String line = "kind: ratiometric, high: 10 bar gauge";
        assertEquals(0, input(line).error(5e5).sensor(), 1e-9);
        assertEquals(0.1e5, input(line + ", class: 1 %").error(5e5).sensor(), 1);
        assertEquals(0.2e5, input(line + ", class: 0.2 bar").error(5e5).sensor(), 1);
        assertEquals(
                2 * input(line).error(8e5).supply(),
                input(line + ", supply: 5 V +/- 2 %").error(8e5).supply(),
                1e-6);
        SensorInput idle = input(
                line
                        + ", warm-idle: 3 bar gauge +/- 0.5 bar, table-points: 4, table-spacing: even-value, reads: main-fuel-pressure");
        assertEquals(3e5, idle.warmIdle(), 1e-6);
        assertEquals(0.5e5, idle.warmIdleWidth(), 1e-6);
        assertEquals(4, idle.table().points().size());
        assertEquals("main-fuel-pressure", idle.role().word());
        assertTrue(Double.isNaN(input(line).warmIdle()));
        SensorInput cold = input("kind: thermocouple-k, high: 1000 degC, class: 3 K");
        assertEquals(3, cold.error(773.15).sensor(), 1e-9);
        assertEquals(273.15, cold.sensor().low(), 1e-9);
        assertEquals(
                1.5,
                input("kind: wheel-speed, teeth: 48, tyre-radius: 320 mm, high: 90 m/s, class: 1.5 m/s")
                        .error(20)
                        .sensor(),
                1e-9);
    }

    @Test
    void track_readings_and_parts() throws IOException {
        Workshop plain = EditedDemo.job().workshop();
        // half a mile, with the marks of the quarter before it
        assertEquals(
                0.5 * 1609.344, plain.track().marks().get(plain.track().marks().size() - 1), 1e-9);
        assertEquals(402.336, plain.track().marks().get(plain.track().marks().size() - 2), 1e-3);
        assertEquals(1.05, plain.track().grip());
        assertEquals(new Track.Coming(2, 0.1, 0, 1, 100), plain.track().arming());
        Track told = EditedDemo.job(
                        "  nitrous-delay: 0.1 s\n",
                        "  nitrous-delay: 0.2 s\n  nitrous-ramp: 1 s\n  marks: [60 ft, 200 m]\n  head-wind: 3 m/s\n  start-speed: 10 m/s\n  roll-out: 1 ft\n  speed-hysteresis: 50 rpm\n")
                .workshop()
                .track();
        assertEquals(
                List.of(18.288, 200.0, 804.672),
                told.marks().stream().map(m -> Math.round(m * 1e6) / 1e6).toList());
        assertEquals(new Track.Coming(2, 0.2, 1, 0.4, 50), told.arming());
        assertEquals(List.of(3.0, 10.0), List.of(told.headWind(), told.startSpeed()));
        assertEquals(0.3048, told.rollOut(), 1e-12);
        Track share = EditedDemo.job(
                        "  nitrous-delay: 0.1 s\n", "  nitrous-start-share: 60 %\n  marks: [100 m, 0.5 mi]\n")
                .workshop()
                .track();
        assertEquals(0.6, share.arming().startShare(), 1e-12);
        assertEquals(2, share.marks().size());
        Readings readings = plain.readings();
        assertEquals(99e3, readings.barometer(), 1e-6);
        assertEquals(291.15, readings.air(), 1e-9);
        assertEquals(12, readings.readings().size());
        assertEquals(
                "bottle pressure ENGINE_OFF",
                readings.readings().get(0).sensor() + " "
                        + readings.readings().get(0).state());
        assertEquals(4 * 6894.757293168, readings.readings().get(0).value(), 1e-6);
        assertEquals(
                0.77,
                readings.readings().stream()
                        .filter(r -> r.sensor().equals("ethanol content"))
                        .findFirst()
                        .orElseThrow()
                        .value(),
                1e-12);
        Readings few = EditedDemo.job("  barometer: 990 mbar abs\n  air: 18 degC\n", "")
                .workshop()
                .readings();
        assertTrue(Double.isNaN(few.barometer()) && Double.isNaN(few.air()));
        // a reading may lie as far outside the span of its sensor as that is wide, 1600 psi, and no further
        assertTrue(EditedDemo.job("bottle-pressure: 4 psi gauge", "bottle-pressure: 3199 psi gauge")
                        .workshop()
                        .readings()
                        .readings()
                        .get(0)
                        .value()
                > 2e7);
        assertTrue(refused("bottle-pressure: 4 psi gauge", "bottle-pressure: 3201 psi gauge")
                .startsWith("readings.engine-off.bottle-pressure: "));
        assertTrue(refused("bottle-pressure: 4 psi gauge", "bottle-pressure: -1601 psi gauge")
                .startsWith("readings.engine-off.bottle-pressure: "));
    }

    @Test
    void prices_are_taken_for_one_kilogram_and_one_cubic_metre() throws IOException {
        Parts plain = EditedDemo.job().workshop().parts();
        assertEquals("EUR", plain.currency());
        assertEquals(85, plain.hour());
        assertEquals(14, plain.nitrous(), 1e-12);
        assertEquals(1600, plain.fuel(), 1e-9);
        assertEquals(
                new ListedPart("", ListedPart.Circuit.OTHER, Double.NaN, 38, 5, false, ListedPart.Stage.LATER),
                plain.items().get("nozzles"));
        assertTrue(plain.items().get("bottle").fitted());
        assertEquals(ListedPart.Stage.FIRST_SHOT, plain.items().get("base-tune").before());
        assertEquals(
                "base tune on the dynamometer", plain.items().get("base-tune").what());
        Parts other = EditedDemo.job(
                        "  nitrous-per-kg: 14\n  fuel-per-litre: 1.6\n",
                        "  nitrous-per-lb: 6\n  fuel-per-gallon: 5\n",
                        "relays: {price: 9,",
                        "relays: {count: 4,")
                .workshop()
                .parts();
        assertEquals(6 / 0.45359237, other.nitrous(), 1e-9);
        assertEquals(5 / 3.785411784e-3, other.fuel(), 1e-6); // the US gallon
        assertEquals(4, other.items().get("relays").count());
        assertTrue(Double.isNaN(other.items().get("relays").price()));
        String text = Files.readString(DemoSheetTest.DEMO);
        Job none = Job.read(
                text.substring(0, text.indexOf("# what the controller showed"))
                        + text.substring(text.indexOf("limits:\n  from")),
                FOLDER);
        assertEquals(Parts.NONE, none.workshop().parts());
        assertEquals(Readings.NONE, none.workshop().readings());
        assertEquals(
                "parts.nitrous-per-lb: \"nitrous-per-kg\" and \"nitrous-per-lb\" both stand here; keep one of them.",
                refused("  nitrous-per-kg: 14\n", "  nitrous-per-kg: 14\n  nitrous-per-lb: 6\n"));
    }

    private static String refused(String... edits) {
        Problem first = assertThrows(SheetException.class, () -> EditedDemo.job(edits))
                .problems()
                .get(0);
        return first.field() + ": " + first.sentence();
    }

    private static Wiring wiring(String... edits) throws IOException {
        return EditedDemo.job(edits).car().wiring().orElseThrow();
    }
}
