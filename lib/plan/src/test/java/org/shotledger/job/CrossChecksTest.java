package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.car.BasePull;
import org.shotledger.supply.Regulator;

/**
 * Sheets in which several figures do not go with the rest: each is told with the figure that a pocket calculator makes of the sheet.
 * The pull of the sheet: 590 hp at 6800 rpm and 1.85 bar, 536.8 g/s of air and 65.5 g/s of fuel by the model.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CrossChecksTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();

    @Test
    void a_good_sheet_is_said_nothing_of() throws IOException {
        assertEquals(List.of(), said());
    }

    @Test
    void the_whole_sentence_names_place_value_what_was_compared_and_what_is_usual() throws IOException {
        List<String> sentences = sentences(EditedDemo.job("vehicle:\n  mass: 1540 kg", "vehicle:\n  mass: 200 kg"));
        // 720 hp over 0.2 t
        assertEquals(
                List.of(
                        "vehicle.mass|\"vehicle.mass\", 200 kg, does not go with the rest: power asked for over mass in hp"
                                + " for each tonne is 3600; usual is 70 to 1400 (common practice, no source)"),
                sentences.stream().filter(s -> s.contains("tonne")).toList());
    }

    @Test
    void what_is_asked_for() throws IOException {
        assertEquals(
                List.of(
                        "target.wheel-power 0.508 of 0.75 to 2.5", // 300/590
                        "target.rpm-high 0.588 of 0.6 to 1", // 4700/8000
                        "target.rpm-low 0.287 of 0.3 to 0.95", // 2300/8000
                        "nitrous-system.arming.rpm-high 0.537 of 0.55 to 1", // 4300/8000
                        "nitrous-system.arming.rpm-low 0.275 of 0.28 to 0.9", // 2200/8000
                        "must-hold.temperature[0]: The range of \"must-hold.temperature\" from -20 degC to 34 degC is unusually wide",
                        "conditions.event.temperature: \"conditions.event.temperature\" is 40 degC, which lies outside the range of \"must-hold.temperature\"",
                        "must-hold.ethanol[0]: The range of \"must-hold.ethanol\" from 10 % to 72 % is unusually wide",
                        "fuels.main.ethanol: \"fuels.main.ethanol\" is 78 % +/- 1 %, which lies outside the range of \"must-hold.ethanol\"",
                        "must-hold.voltage 0.741 of 0.8 to 1", // 10/13.5
                        "bottle.charge 15 of 0.35 to 12", // a fifth of 590 hp, 12 s, 0.08 lb/s for 100 hp: 1.133 lb of
                        // 17
                        "target.pass-time 13.4 of 15 to 130", // root of 300 * 745.7 W * 4 s / 5000 kg
                        "vehicle.mass 60 of 70 to 1400"), // 300 hp over 5 t
                said(
                        "wheel-power: {value: 720 hp",
                        "wheel-power: {value: 300 hp",
                        "pass-time: {value: 10 s",
                        "pass-time: {value: 4 s",
                        "mass: 1540 kg",
                        "mass: 5000 kg",
                        "  rpm-low: 5800 rpm\n  rpm-high: 7800 rpm\n  passes",
                        "  rpm-low: 2300 rpm\n  rpm-high: 4700 rpm\n  passes",
                        "    rpm-low: 5800 rpm\n    rpm-high: 7800 rpm",
                        "    rpm-low: 2200 rpm\n    rpm-high: 4300 rpm",
                        "temperature: 27 degC",
                        "temperature: 40 degC",
                        "[12 degC, 34 degC]",
                        "[-20 degC, 34 degC]",
                        "[62 %, 82 %]",
                        "[10 %, 72 %]",
                        "voltage: 12.8 V",
                        "voltage: 10 V"));
    }

    /** The ends of a range belong to it, and 45 K are not yet wide. */
    @Test
    void a_value_at_the_end_of_its_range_is_within() throws IOException {
        assertEquals(List.of(), said("[12 degC, 34 degC]", "[-18 degC, 27 degC]", "[62 %, 82 %]", "[78 %, 82 %]"));
        assertEquals(List.of(), said("[12 degC, 34 degC]", "[27 degC, 34 degC]", "[62 %, 82 %]", "[62 %, 78 %]"));
        assertEquals(1, said("[12 degC, 34 degC]", "[28 degC, 34 degC]").size());
    }

    @Test
    void the_mixture() throws IOException {
        assertEquals(
                List.of(
                        "fuels.main.ethanol: \"fuels.main.ethanol\" is 40 % +/- 1 %, which lies outside the range of \"must-hold.ethanol\"",
                        "base-pull.lambda 1.29 of 0.85 to 1.18", // 0.80/0.62
                        "tune.lambda 0.729 of 0.78 to 1.12", // 0.62/0.85
                        "tune.nitrous-lambda 1.26 of 0.85 to 1.12", // 0.78/0.62
                        "tune.nitrous-retard 0.5 of 1 to 20",
                        "fuels.main-evaporated 0.5 of 0.6 to 8", // 40/80
                        "fuels.main.ethanol -38 of -35 to 35"), // 40 less 78
                said(
                        "lambda: {value: 0.80,",
                        "lambda: {value: 0.62,",
                        "nitrous-retard: {value: 6 deg",
                        "nitrous-retard: {value: 0.5 deg",
                        "nitrous-evaporated: {value: 25 %",
                        "nitrous-evaporated: {value: 80 %",
                        "ethanol: {value: 78 % +/- 1 %",
                        "ethanol: {value: 40 % +/- 1 %"));
        assertEquals(
                List.of("fuels.main-evaporated infinite of 0.6 to 8"),
                said("nitrous-evaporated: {value: 25 %", "nitrous-evaporated: {value: 0 %"));
        assertEquals(List.of(), said("nitrous-retard: {value: 6 deg", "nitrous-retard: {value: 0 deg"));
        // the mixture of the circuit alone is another figure than that of all fuel and air
        assertEquals(List.of(), said("nitrous-lambda: {value: 0.78", "nitrous-circuit-lambda: {value: 1.1"));
    }

    /**
     * Seven injectors of 5000 cc/min: 2100 L/h. A pump at 3 bar behind 250 mohm stands at 11.46 V, where it draws 8.16 A and gives
     * 221.2 L/h, both on straight lines between 9 and 12 V of its table.
     */
    @Test
    void injectors_pumps_and_regulators() throws IOException {
        assertEquals(
                List.of(
                        "injection.pumps.curve 0.211 of 0.35 to 4.5", // 2 * 221.2 / 2100
                        "injection.count: \"injection.count\" is 7 where the engine has 6 cylinders",
                        "injection.regulator.boost-reference: \"injection.regulator.boost-reference\" is 0.4, where regulators follow the boost once, in part of a fixed ratio, or not at all: 0, or 0.5 to 2",
                        "nitrous-system.fuel.regulator.boost-reference: \"nitrous-system.fuel.regulator.boost-reference\" is 2.2, where regulators follow the boost once, in part of a fixed ratio, or not at all: 0, or 0.5 to 2",
                        "injection.pumps.wiring-resistance 2.04 of -1 to 2"), // 13.5 - 11.46
                said(
                        "flow: {value: 1130 cc/min +/- 2 %",
                        "flow: {value: 5000 cc/min",
                        "count: 6\n  voltage",
                        "count: 7\n  voltage",
                        "    base-pressure: 3.0 bar\n    boost-reference: 1\n",
                        "    base-pressure: 3.0 bar\n    boost-reference: 0.4\n",
                        "compare both\n      boost-reference: 1",
                        "compare both\n      boost-reference: 2.2",
                        "wiring-resistance: {value: 45 mohm",
                        "wiring-resistance: {value: 250 mohm"));
        assertEquals(
                List.of(),
                said(
                        "    base-pressure: 3.0 bar\n    boost-reference: 1\n",
                        "    base-pressure: 3.0 bar\n    boost-reference: 0.5\n",
                        "compare both\n      boost-reference: 1",
                        "compare both\n      boost-reference: 2",
                        "count: 6\n  voltage",
                        "count: 12\n  voltage"));
    }

    /** At 3.5 bar the pump draws 6.575 A at 9 V and 10.16 A at 12 V: behind 260 mohm 9.12 A at 11.13 V. */
    @Test
    void the_wires_of_the_nitrous_fuel_pump() throws IOException {
        assertEquals(
                List.of("nitrous-system.fuel.pumps.wiring-resistance 2.37 of -1 to 2"),
                said("wiring-resistance: 50 mohm", "wiring-resistance: 260 mohm"));
    }

    /**
     * One pump at 3 + 1.85 bar behind 45 mohm gives 228 L/h of 778 g/L; six injectors of 900 cc/min of n-heptane at 3 bar pass
     * 65.7 g/s of a fuel of that density, and stay shut for 1.1 ms of the 17.65 ms of a cycle besides.
     */
    @Test
    void what_the_pull_asks_of_injectors_and_pumps() throws IOException {
        assertEquals(
                List.of(
                        "injection.injector.flow 1.06 of 0.18 to 1.05", // 65.5/65.7 + 1.1/17.65
                        "injection.pumps.curve 0.752 of 1 to 5"), // 228 * 0.778 / 3.6 / 65.5
                said(
                        "flow: {value: 1130 cc/min +/- 2 %",
                        "flow: {value: 900 cc/min", "    count: 2\n", "    count: 1\n"));
    }

    @Test
    void a_regulator_beyond_the_curve_of_its_pump_is_told_and_not_judged() throws IOException {
        Job job = EditedDemo.job();
        Job beyond = job.with(job.setup()
                .withMainRegulator(new Regulator("main", 9e5, 1))
                .withNitrousRegulator(new Regulator("nitrous", 8.5e5, 1)));
        assertEquals(
                List.of(
                        "injection.pumps.curve: The curve of \"injection.pumps.curve\" does not hold the pressure of its"
                                + " regulator and the voltage of the car",
                        "injection.pumps.curve 0 of 1 to 5",
                        "nitrous-system.fuel.pumps.curve: The curve of \"nitrous-system.fuel.pumps.curve\" does not hold"
                                + " the pressure of its regulator and the voltage of the car"),
                said(beyond));
    }

    /** With losses as small as these the pull breathes 538.7 g/s of air, and 604.4 g/s leave it; a loss goes with the square of its flow. */
    @Test
    void the_turbocharger() throws IOException {
        assertEquals(
                List.of(
                        "turbo.compressor.max-speed 1.27 of 0.7 to 1.25", // 150/118
                        "turbo.boost-ceiling 2.68 of 0.6 to 2.6", // 4.95/1.85
                        "turbo.inlet-loss.at-flow 0.232 of 1 to 120", // 0.2 * (538.7/500)^2
                        "turbo.charge-cooler.loss.at-flow 1.16 of 5 to 600", // (538.7/500)^2
                        "turbo.turbine.exhaust-loss.at-flow 1.21 of 3 to 900", // (604.4/550)^2
                        "limits.exhaust-temperature 370 of -20 to 300", // 1300 less 930
                        "limits.crank-torque 3.48 of 0.95 to 2.8", // 590 * 745.7 W / 0.86 / 712.1 rad/s = 718.4 N m
                        "limits.peak-pressure 2.61 of 0.95 to 2.6"), // 400 bar over 153.4
                said(
                        "max-speed: 118000 rpm",
                        "max-speed: 150000 rpm",
                        "boost-ceiling: {value: 1.85",
                        "boost-ceiling: {value: 4.95",
                        "base-pressure: 3.5",
                        "base-pressure: 3.0",
                        "inlet-loss:\n    pressure: 15 mbar",
                        "inlet-loss:\n    pressure: 0.2 mbar",
                        "loss:\n      pressure: 0.12 bar",
                        "loss:\n      pressure: 1 mbar",
                        "exhaust-loss:\n      pressure: 0.15 bar",
                        "exhaust-loss:\n      pressure: 1 mbar",
                        "  crank-torque: 900 N m",
                        "  crank-torque: 2500 N m\n  exhaust-temperature: 1300 degC",
                        "peak-pressure: {value: 160",
                        "peak-pressure: {value: 400"));
    }

    /** A turbine of a third of the area takes a third of what it took at the same pressure, so its exhaust is dammed and the rest goes past it. */
    @Test
    void a_turbine_too_small_sends_the_exhaust_past_itself_under_pressure() throws IOException {
        List<String> said = said("effective-area: {value: 1350", "effective-area: {value: 250");
        assertEquals(2, said.size(), said.toString());
        double past = Double.parseDouble(said.get(0).split(" ", -1)[1]);
        double dammed = Double.parseDouble(said.get(1).split(" ", -1)[1]);
        assertTrue(said.get(0).startsWith("turbo.turbine.effective-area ")
                && said.get(0).endsWith(" of -0.1 to 0.6"));
        assertTrue(past > 0.6 && past < 1, said.toString());
        assertTrue(said.get(1).startsWith("turbo.turbine.effective-area ")
                && said.get(1).endsWith(" of 0.55 to 2.3"));
        // a flow that goes with area and pressure, at more than 1: 536.8 + 65.5 g/s split as said, 2.839 bar in the
        // plenum
        double took = 0.45209817 / (1350 * 2.96456706);
        assertEquals(1 - past, 250 * took * dammed * 2.83945 / 0.60232, 0.05);
    }

    @Test
    void the_nitrous_system() throws IOException {
        assertEquals(
                List.of(
                        "nitrous-system.nitrous.solenoid.bore 0.149 of 0.17 to 0.95", // 1.3/8.7
                        "nitrous-system.nitrous.valve-kv 2.76 of 0.4 to 1.7", // 6.2 mm * root of 15, over 8.7
                        "nitrous-system.nitrous.line-bore 5 of 0.5 to 4.5", // 6.5/1.3
                        "nitrous-system.fuel.solenoid.bore 2.23 of 0.4 to 1.6", // 2.9/1.3
                        "nitrous-system.nozzle.nitrous-passage 74 of 0.4 to 9", // 5 * (5/1.3)^2 = 73.96
                        "nitrous-system.nozzle.fuel-passage 0.08 of 0.35 to 1.3", // 0.4/5
                        "nitrous-system.nozzles: \"nitrous-system.nozzles\" is 5 where the nozzles spray in each runner of 6 cylinders",
                        // 130 hp more: 0.104 lb/s of nitrous oxide, a fifth of it as fuel of 770 g/L, 30 s: 0.3676 L
                        "nitrous-system.fuel.cell-volume 408 of 0.7 to 60"),
                said(
                        "bore: 4.1 mm",
                        "bore: 1.3 mm",
                        "valve-kv: {value: 1.2",
                        "valve-kv: {value: 15",
                        "line-bore: 4.0",
                        "line-bore: 6.5",
                        "nitrous-passage: 1.8",
                        "nitrous-passage: 5",
                        "fuel-passage: 1.2",
                        "fuel-passage: 0.4",
                        "nozzles: 6",
                        "nozzles: 5",
                        "cell-volume: 6 L",
                        "cell-volume: 150 L"));
    }

    @Test
    void a_plenum_takes_up_to_four_nozzles_whatever_the_cylinders() throws IOException {
        assertEquals(List.of(), said("position: runner\n  nozzles: 6", "position: plenum\n  nozzles: 4"));
        assertEquals(
                List.of(
                        "nitrous-system.nozzles: \"nitrous-system.nozzles\" is 5 where the nozzles spray at the plenum of 6 cylinders"),
                said("position: runner\n  nozzles: 6", "position: plenum\n  nozzles: 5"));
    }

    /** 1210 hp more: 0.968 lb/s, 410.6 L/h of fuel; the pump at 3.5 bar behind 50 mohm stands at 12.94 V and gives 273.5 L/h. */
    @Test
    void bottle_fuel_cell_and_gears() throws IOException {
        assertEquals(
                List.of(
                        "target.wheel-power 3.05 of 0.75 to 2.5", // 1800/590
                        "nitrous-system.fuel.pumps.curve 0.666 of 0.8 to 30", // 273.5/410.6
                        "nitrous-system.fuel.cell-volume 0.555 of 0.7 to 60", // 1.9 L over 410.6 L/h for 30 s, 3.42 L
                        "bottle.charge 0.0516 of 0.35 to 12", // 1.5 lb over 29.04
                        "bottle.charge 0.054 of 0.3 to 0.7", // 0.680 kg over 12.6 L
                        "bottle.shell-mass 3.17 of 0.5 to 2.8", // 40 kg over 12.6 L
                        "limits.bottle-pressure-high 3.24 of 1.05 to 2.3", // 12.64 psi of air at 1250 m added to both
                        "vehicle.gears[1] 4.02 of 1.03 to 2.4", // 9.0/2.24
                        "vehicle.gears[4]: \"vehicle.gears\" does not fall from gear to gear: 1.21 stands behind 1.21"),
                said(
                        "charge: 17 lb",
                        "charge: 1.5 lb",
                        "shell-mass: 12.4",
                        "shell-mass: 40",
                        "bottle-pressure-low: 700",
                        "bottle-pressure-low: 300",
                        "wheel-power: {value: 720 hp",
                        "wheel-power: {value: 1800 hp",
                        "cell-volume: 6 L",
                        "cell-volume: 1.9 L",
                        "[3.71, 2.24, 1.58, 1.21, 1.00, 0.81]",
                        "[9.0, 2.24, 1.58, 1.21, 1.21, 0.5]"));
        assertEquals(List.of(), said("[3.71, 2.24, 1.58, 1.21, 1.00, 0.81]", "[3.71]"));
        String none = Files.readString(DemoSheetTest.DEMO).replaceAll("(?s)\nvehicle:.*?\n\n", "\n\n");
        assertEquals(List.of(), said(job(none)));
    }

    /** A bore of 110 mm and a stroke of 50.87 mm displace what 85.3 mm and 84.6 mm do. */
    @Test
    void the_engine_and_its_pull() throws IOException {
        assertEquals(
                List.of(
                        "engine.stroke 0.462 of 0.55 to 1.5", // 50.87/110
                        "engine.rod-length 2.89 of 1.3 to 2.6", // 147/50.87
                        "engine.red-line 30.5 of 12 to 30", // 2 * 50.87 mm * 300/s
                        "base-pull.rpm 0.378 of 0.4 to 1.02", // 6800/18000
                        "target.rpm-high 0.433 of 0.6 to 1", // 7800/18000
                        "nitrous-system.arming.rpm-high 0.433 of 0.55 to 1"),
                said(
                        "bore: {value: 85.3 mm +/- 0.02 mm",
                        "bore: {value: 110 mm",
                        "stroke: {value: 84.6",
                        "stroke: {value: 50.87",
                        "red-line: 8000",
                        "red-line: 18000"));
        assertEquals(
                List.of("conditions.home.temperature 43 of 3 to 42"),
                said("temperature: 18 degC", "temperature: 43 degC"));
        // 400 hp: 487 N m at the crank and 0.555 of the cycle, where 590 hp are 718 N m; friction takes the same of
        // both
        List<String> weak = said("wheel-power: 590 hp +/- 15 hp", "wheel-power: 400 hp");
        assertEquals(List.of("base-pull.boost 0.555 of 0.62 to 0.97"), weak);
    }

    /** 2.9007 L. The pull is told under the name under which it was written. */
    @Test
    void a_pull_that_no_engine_of_the_size_gives_is_named_as_it_was_written() throws IOException {
        for (String as : List.of(
                "wheel-power: 590 hp",
                "wheel-torque: 617.8 N m",
                "crank-power: 686.05 hp",
                "crank-torque: 718.4 N m")) {
            Job job = EditedDemo.job("wheel-power: 590 hp +/- 15 hp", as);
            BasePull pull = job.car().basePull();
            BasePull.Point strongest = pull.strongest();
            BasePull weak = new BasePull(
                    pull.air(),
                    pull.fuel(),
                    pull.lambda(),
                    List.of(new BasePull.Point(
                            strongest.rpm(), strongest.gaugePressure(), strongest.wheelPower() / 10)),
                    pull.uncertainty(),
                    pull.correction());
            assertEquals(
                    "base-pull." + as.split(":", -1)[0] + " 20.3 of 25 to 420", // 59 hp over 2.9007 L
                    said(job.with(job.car().with(weak))).get(0));
        }
    }

    @Test
    void tables_that_say_nothing(@TempDir Path folder) throws IOException {
        Files.copy(DemoSheetTest.DEMO, folder.resolve("job.yaml"));
        EditedDemo.copyTables(folder);
        assertEquals(List.of(), said(Job.load(folder)));
        Files.writeString(
                folder.resolve("volumetric-efficiency.csv"),
                Files.readString(folder.resolve("volumetric-efficiency.csv")).replace("1000,0.7\n", "1000,1.35\n"));
        assertEquals(List.of("engine.volumetric-efficiency 1.35 of 0.7 to 1.3"), said(Job.load(folder)));
        Files.writeString(
                folder.resolve("volumetric-efficiency.csv"),
                "engine speed [rpm],volumetric efficiency\n2000,1.0\n6000,1.0015\n8500,1.0\n");
        Files.writeString(
                folder.resolve("main-pump.csv"),
                Files.readString(folder.resolve("main-pump.csv")).replaceAll("(?m)^9,(\\d),[^,]*", "9,$1,90"));
        Files.writeString(
                folder.resolve("nitrous-fuel-pump.csv"),
                Files.readString(folder.resolve("nitrous-fuel-pump.csv")).replaceAll("(?m)^9,(\\d),[^,]*", "9,$1,80"));
        Files.writeString(
                folder.resolve("compressor-map.csv"),
                Files.readString(folder.resolve("compressor-map.csv"))
                        .replaceAll("(?m)^60000,([^,]*),[^,]*", "60000,$1,1.2"));
        assertEquals(
                List.of(
                        "engine.volumetric-efficiency: The table \"volumetric-efficiency.csv\" has the same value everywhere: volumetric efficiency",
                        "turbo.compressor.map: The compressor map's line of 60000 rpm has one pressure ratio at every flow",
                        "injection.pumps.curve: The table \"main-pump.csv\" has the same value everywhere: flow of main fuel pump at 9.0 V",
                        "nitrous-system.fuel.pumps.curve: The table \"nitrous-fuel-pump.csv\" has the same value everywhere: flow of nitrous fuel pump at 9.0 V"),
                said(Job.load(folder)));
    }

    private static List<String> said(String... edits) throws IOException {
        return said(EditedDemo.job(edits));
    }

    /** Place, figure and what is usual; other sentences whole. */
    private static List<String> said(Job job) {
        return sentences(job).stream()
                .map(s -> s.replaceFirst(
                        "^([^|]*)\\|.* does not go with the rest: .* is (\\S+); usual is (.*) \\(common practice, no source\\)$",
                        "$1 $2 of $3"))
                .map(s -> s.replace("|", ": "))
                .toList();
    }

    private static List<String> sentences(Job job) {
        List<String> list = new ArrayList<>();
        new CrossChecks(job, (path, sentence) -> list.add(path + "|" + sentence)).all();
        return list;
    }

    private static Job job(String text) {
        return Job.read(text, FOLDER);
    }
}
