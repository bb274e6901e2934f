package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Calibration;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/** The figures told of a car, and what the first sheet makes of them, worked out by hand by the habits that stand beside each. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FirstFiguresTest {
    private static final double HP = 745.69987158227022;

    @TempDir
    private Path folder;

    private FirstFigures figures(String... more) {
        return FirstFigures.of(ToldFigures.with(more), folder);
    }

    private List<String> refused(String... more) {
        SheetException refused = assertThrows(SheetException.class, () -> figures(more));
        return refused.problems().stream().map(Problem::sentence).toList();
    }

    /** Four square cylinders of half a litre: d^3 = 4 * 500 / pi cm3, 86.03 mm. */
    @Test
    void what_is_told_and_what_is_taken_otherwise() {
        FirstFigures f = figures();
        assertEquals(86.025e-3, f.bore(), 1e-6);
        assertEquals(f.bore(), f.stroke());
        assertEquals(2e-3, f.displacement(), 1e-12);
        assertTrue(f.square() && !f.mainRail() && !f.curve() && !f.invented());
        assertEquals("my car", f.name());
        assertEquals("same", f.nitrousFuel());
        assertEquals("none", f.correction());
        assertEquals("plenum", f.position());
        assertEquals("rear", f.drive());
        assertEquals(4, f.injectors());
        assertEquals(1, f.pumps());
        assertEquals(1, f.nozzles());
        assertEquals(3, f.passes());
        assertEquals(3, f.compressorRatio());
        assertEquals(200, f.altitude());
        assertEquals(298.15, f.temperature());
        assertEquals(0.78, f.ethanol(), 1e-12);
        assertEquals(1050e-6 / 60, f.injectorFlow(), 1e-12);
        assertEquals(List.of(new FirstFigures.Pulled(6200, 1.3e5, f.strongest().wheelPower())), f.pull());
        assertEquals(330 * HP, f.strongest().wheelPower(), 1e-6);
        for (double silent : new double[] {
            f.redLine(),
            f.ceiling(),
            f.pumpFlow(),
            f.compressorFlow(),
            f.mass(),
            f.nitrousJet(),
            f.fuelJet(),
            f.setBoost()
        }) {
            assertTrue(Double.isNaN(silent));
        }
        assertEquals(0.050, f.inducer(), 1e-12);
        assertEquals(385 * HP, f.target(), 1e-6);
        assertEquals(10 * 0.45359237, f.charge(), 1e-9);
    }

    @Test
    void more_can_be_told() {
        FirstFigures f = figures(
                "displacement",
                "",
                "bore",
                "84 mm",
                "stroke",
                "90 mm",
                "invented",
                "yes",
                "drive",
                "all",
                "injectors",
                "8",
                "pumps",
                "2",
                "nozzles",
                "4",
                "passes",
                "5",
                "compressor-ratio",
                "2.6",
                "altitude",
                "900 m",
                "temperature",
                "31 degC",
                "nitrous-jet",
                "40 thou",
                "fuel-jet",
                "22 thou",
                "position",
                "runner",
                "red-line",
                "7600 rpm",
                "mass",
                "1400 kg",
                "set-boost",
                "1.1 bar gauge",
                "injector",
                "large",
                "injector-flow",
                "",
                "pump",
                "small",
                "boost-ceiling",
                "1.5 bar gauge",
                "correction",
                "din-70020",
                "nitrous-fuel-supply",
                "main-rail",
                "name",
                "it's mine");
        assertTrue(!f.square() && f.invented() && f.mainRail());
        // four of pi/4 84^2 90 mm3
        assertEquals(4 * 0.498759e-3, f.displacement(), 1e-8);
        assertEquals(0.18, f.loss());
        assertEquals(0.12, figures("drive", "front").loss());
        assertEquals(0.14, figures("drive", "rear").loss());
        assertEquals(List.of(8, 2, 4, 5), List.of(f.injectors(), f.pumps(), f.nozzles(), f.passes()));
        assertEquals(2.6, f.compressorRatio());
        assertEquals(900, f.altitude());
        assertEquals(304.15, f.temperature(), 1e-9);
        assertEquals(40 * 25.4e-6, f.nitrousJet(), 1e-12);
        assertEquals(22 * 25.4e-6, f.fuelJet(), 1e-12);
        assertEquals("runner", f.position());
        assertEquals("din-70020", f.correction());
        assertEquals("it's mine", f.name());
        assertEquals("large", f.injector());
        assertEquals(CatalogueParts.injectorFlow("large"), f.injectorFlow());
        assertEquals("small", f.pump());
    }

    @Test
    void what_cannot_stand_together_is_said() {
        assertEquals(
                List.of("The main rail has the fuel of the tank; leave \"nitrous-fuel\" out or say \"same\"."),
                refused("nitrous-fuel-supply", "main-rail", "nitrous-fuel", "methanol"));
        assertEquals(
                List.of(
                        "\"injector\" and \"injector-flow\" both stand here; keep one of them.",
                        "\"pump\" and \"pump-flow\" both stand here; keep one of them."),
                refused("injector", "large", "pump", "small", "pump-flow", "280 L/h"));
        assertEquals(1, refused("nitrous-jet", "40 thou").size(), "the fuel jet is missing");
        assertEquals(1, refused("charge", "").size());
    }

    @Test
    void a_pull_is_told_as_a_table() throws IOException {
        Files.writeString(
                folder.resolve("pull.csv"), "engine speed [rpm],wheel power [hp]\n5000,250\n6100,335\n7000,310\n");
        FirstFigures f = figures("pull", "pull.csv", "pull-power", "", "pull-rpm", "");
        assertTrue(f.curve());
        assertEquals(3, f.pull().size());
        assertEquals(6100, f.strongest().rpm());
        assertEquals(335 * HP, f.strongest().wheelPower(), 1e-3);
        assertEquals(1.3e5, f.strongest().boost(), 1e-6);
    }

    /** Speed, flow and what the pressure ratio has above 1 by their shares, five digits; a pump's current by the root of its flow's. */
    @Test
    void tables_are_scaled() {
        assertEquals(
                "# Estimated, common practice, no source: a generic map scaled to the rated flow and pressure ratio; replace it by"
                        + " points read off the real one.\n# Corrected to 298 K\nspeed,flow,ratio,efficiency\n50000,0.15,1.75,0.7\n",
                FirstTables.compressor(
                        "# generic\n# Corrected to 298 K\nspeed,flow,ratio,efficiency\n100000,0.1,2.5,0.7\n",
                        1.5,
                        0.5,
                        0.5));
        assertEquals(
                "# Estimated, common practice, no source: a generic pump scaled to the flow at 3 bar; replace it by the pump's own"
                        + " sheet.\nvolt,rise,flow,current\n13.5,3,400,20\n",
                FirstTables.pump("volt,rise,flow,current\n13.5,3,100,10\n", 4));
        assertEquals("0.33333", FirstTables.number(1 / 3.0));
        assertEquals("123460", FirstTables.number(123456));
        assertEquals(
                "# Estimated, common practice, no source: from the power of the pull; replace it by what logged air flow and plenum"
                        + " state give.\nengine speed [rpm],volumetric efficiency\n1500,0.812\n7000,0.950\n",
                FirstTables.breathing(new double[] {1500, 7000}, new double[] {0.8124, 0.95}));
        assertEquals(
                "# The pull as it was given.\nengine speed [rpm],wheel power [kW],boost [bar gauge]\n6200,246.08,1.300\n",
                FirstTables.pull(List.of(new FirstFigures.Pulled(6200, 1.3e5, 246_081))));
    }

    private Job sheet(String... more) {
        Path place = folder.resolve("own");
        Starter.write(place, "", ToldFigures.with(more), folder);
        return Job.load(place);
    }

    /**
     * 330 hp at the wheels are 286.1 kW at the crankshaft (14 % lost), which take 0.2861 kg/s of air; a 50 mm inducer passes 0.75 of
     * 241 kg/(s m2), 0.3549 kg/s. The stroke at 21 m/s: 21 * 30 / 0.08603 = 7323 rpm.
     */
    @Test
    void the_first_sheet_follows_from_the_figures() {
        Job job = sheet();
        Car car = job.car();
        assertEquals(7323, car.engine().highestRpm(), 2);
        assertEquals(1.7 * 86.025e-3, car.engine().rodLength(), 1e-4);
        assertEquals(9.2, car.engine().compressionRatio());
        assertEquals(330 * HP, car.basePull().strongest().wheelPower(), 20);
        assertEquals(0.14, car.driveline().proportionalLoss(), 1e-9);
        assertEquals(385 * HP, job.target().wheelPower(), 20);
        assertEquals(5000, job.target().rpmLow());
        assertEquals(7000, job.target().rpmHigh());
        // air of the plenum at 318 K, 2.288 bar: 2.507 kg/m3; 0.2861 / (2e-3 * 6200 / 120 * 2.507) = 1.104 of the
        // volume
        double home = job.air("home").pressure();
        double filling = 0.286136 / (2e-3 * 6200 / 120 * (home + 1.3e5) / (287.05 * 318));
        assertEquals(filling, car.engine().volumetricEfficiency().at(6200), 0.01 * filling);
        // a seventh of the exhaust passes by the turbine on the pull
        double share = Calibration.pulled(car, job.setup(), 6200, 1.3e5)
                .orElseThrow()
                .shaft()
                .wastegateShare();
        assertEquals(1 / 7.0, share, 0.02);
        assertEquals(298.15, job.stated().air().temperature(), 1e-6);
    }

    /** By the fuel's mixture: 11.8 to 1 and 745 kg/m3 of gasoline, 5.1 and 790 of methanol; 1.9 times that from the pump at 3 bar. */
    @ParameterizedTest
    @CsvSource({"gasoline, 11.8, 745", "methanol, 5.1, 790", "ethanol, 7.2, 789"})
    void a_pump_is_guessed_from_the_fuel_of_the_pull(String fuel, double mixture, double density) throws IOException {
        sheet("fuel", fuel, "ethanol", "", "target-power", "700 hp");
        double expected = 1.9 * 0.286136 / mixture / density * 3600e3;
        assertEquals(expected, pump("fuel-pump.csv"), 1e-3 * expected);
        // the trade's 0.0363 kg/s for 100 hp at the crankshaft; 700 hp with 15 % to spare less 330 are 475 at the
        // wheels,
        // 0.2005 kg/s;
        // fuel of 770 kg/m3 is a fifth of that, of methanol a 3.2nd, and the pump gives 2.5 times as much
        double fuelled = 2.5 * 0.0363 * 4.75 / 0.86 / (fuel.equals("methanol") ? 3.2 : 5) / 770 * 3600e3;
        assertEquals(fuelled, pump("nitrous-fuel-pump.csv"), 1e-3 * fuelled);
    }

    /** A small shot has the generic pump as it is, 205.4 L/h. */
    @Test
    void a_pump_for_a_small_shot_is_not_made_smaller() throws IOException {
        sheet();
        assertEquals(205.4, pump("nitrous-fuel-pump.csv"));
    }

    /** L/h of a written pump at 13.5 V and 3 bar. */
    private double pump(String table) throws IOException {
        return Files.readAllLines(folder.resolve("own").resolve(table)).stream()
                .filter(line -> line.startsWith("13.5,3,"))
                .mapToDouble(line -> Double.parseDouble(line.split(",", -1)[2]))
                .findFirst()
                .orElseThrow();
    }

    private static double si(Job job, String path) {
        return job.car().origin(path).orElseThrow().value();
    }

    private static String text(Job job, String path) {
        return job.car().origin(path).orElseThrow().text();
    }

    /**
     * A shot of 112.75 hp at the wheels is 0.04759 kg/s; through 11500 kg/(s m2) that is 4.138 mm2 of jets, 0.55 of a solenoid of 3.095 mm.
     * A single line behind it has 1.4 of that, 4.33 mm; the fuel of three passes of 10 s, twice over, is 0.74 L, and a cell has 2 L.
     */
    @Test
    void the_kit_follows_from_the_shot() {
        Job job = sheet();
        String nitrous = "nitrous-system.nitrous.";
        assertEquals(3.095e-3, si(job, nitrous + "solenoid.bore"), 2e-6);
        assertEquals(0.75 * 3.095e-3, si(job, "nitrous-system.fuel.solenoid.bore"), 2e-6);
        assertEquals(4.333e-3, si(job, nitrous + "line-bore"), 3e-6);
        assertEquals(8.7e-3, si(job, nitrous + "hose-bore"), 1e-9);
        assertEquals(1.2 / 3600, si(job, nitrous + "valve-kv"), 1e-3 / 3600);
        assertEquals(2e-3, si(job, "nitrous-system.fuel.cell-volume"), 1e-9);
        assertEquals(5000 / 60.0 * 60, job.setup().arming().rpmLow(), 1e-6);
        // to four digits: the fastest line of the generic map at 150 000, for a wheel as much larger as 0.3549 is over
        // 0.36 kg/s
        assertEquals(
                150_000 * Math.sqrt(0.36 / 0.35491),
                Double.parseDouble(text(job, "turbo.compressor.max-speed").split(" ", -1)[0]),
                60);
        assertEquals(1.3e5, si(job, "turbo.boost-ceiling"), 1);
        assertEquals(1.3e5, job.car().basePull().strongest().gaugePressure(), 1);
        assertTrue(job.setup().jets().isEmpty());
        assertTrue(!job.car().invented());
        // 1.2 times 385 over 330 are 1.40 of the pull's torque
        double pulled = Calibration.pulled(job.car(), job.setup(), 6200, 1.3e5)
                .orElseThrow()
                .crankTorque();
        assertEquals(1.4 * pulled, job.car().limits().crankTorque(), 0.02 * pulled);
    }

    /** A large shot from the main rail through four nozzles, jets given: 400 hp is 0.1688 kg/s, a hose of 11.1 mm and no cell or pump of its own. */
    @Test
    void what_is_told_stands_in_place_of_the_guess() throws IOException {
        Job job = sheet(
                "displacement",
                "",
                "bore",
                "84 mm",
                "stroke",
                "90 mm",
                "red-line",
                "7700 rpm",
                "invented",
                "yes",
                "inducer",
                "",
                "compressor-flow",
                "0.5 kg/s",
                "compressor-ratio",
                "2.8",
                "boost-ceiling",
                "1.5 bar gauge",
                "correction",
                "din-70020",
                "nitrous-fuel-supply",
                "main-rail",
                "nozzles",
                "4",
                "position",
                "runner",
                "nitrous-jet",
                "40 thou",
                "fuel-jet",
                "22 thou",
                "set-boost",
                "1.1 bar gauge",
                "target-power",
                "634.78 hp",
                "rpm-low",
                "3000 rpm");
        assertTrue(job.car().invented());
        assertEquals(84e-3, job.car().engine().bore(), 1e-9);
        assertEquals(90e-3, job.car().engine().stroke(), 1e-9);
        assertEquals(7700, job.car().engine().highestRpm(), 1e-6);
        assertEquals("84 mm", text(job, "engine.bore"));
        assertTrue(job.car().basePull().correction().isPresent());
        assertEquals(1.5e5, si(job, "turbo.boost-ceiling"), 1);
        assertEquals(11.1e-3, si(job, "nitrous-system.nitrous.hose-bore"), 1e-9);
        assertEquals(4e-3, si(job, "nitrous-system.nitrous.line-bore"), 1e-9);
        assertEquals(1.2 * 11.1 * 11.1 / 75.7 / 3600, si(job, "nitrous-system.nitrous.valve-kv"), 2e-3 / 3600);
        assertTrue(job.car().nitrous().fuel().onMainRail());
        assertTrue(Files.notExists(folder.resolve("own/nitrous-fuel-pump.csv")));
        assertEquals(40 * 25.4e-6, job.setup().jets().orElseThrow().nitrousBore(), 1e-8);
        assertEquals(22 * 25.4e-6, job.setup().jets().orElseThrow().fuelBore(), 1e-8);
        assertEquals(1.1e5, job.setup().boost().armed().highest(), 1);
        assertEquals(0.55 * 7700, job.setup().arming().rpmLow(), 1);
        assertEquals(
                150_000 * Math.sqrt(1.8 / 2 * 0.36 / 0.5),
                Double.parseDouble(text(job, "turbo.compressor.max-speed").split(" ", -1)[0]),
                60);
        // E78 takes 11.8 - 4.4 * 0.78 = 8.368 of air and weighs 770 kg/m3; the kit's fuel comes from the same pump
        double main = 0.286136 / 8.368 / 770;
        double kit = 0.0363 * 4.0 / 0.86 / 5 / 770;
        assertEquals(1.9 * (main + kit) * 3600e3, pump("fuel-pump.csv"), 0.3);
        String sheet = Files.readString(folder.resolve("own/job.yaml"));
        assertTrue(
                sheet.contains("# a generic map scaled to 0.5 kg/s (the rated flow told) at a pressure ratio of 2.8"),
                sheet);
        assertTrue(!sheet.contains("nitrous-fuel-pump:") && !sheet.contains("fuel-cell-level:"));
    }
}
