package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

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

/** Two sheets beside each other: every line that says what differs, and no line where nothing does. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SheetDifferenceTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();
    private static final List<String> TABLES = List.of(
            "compressor-map.csv",
            "injector-dead-time.csv",
            "jets.csv",
            "main-pump.csv",
            "nitrous-fuel-pump.csv",
            "volumetric-efficiency.csv");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // 1540 to 1694 is a tenth more
                "mass: 1540 kg|mass: 1694 kg|vehicle.mass: 1540 kg -> 1694 kg (+10.0 %)",
                // 140 to 105 is a quarter less
                "alternator: 140 A|alternator: 105 A|electrical.alternator: 140 A -> 105 A (-25.0 %)",
                "tyres: 275/35R18|tyres: 255/40R18|vehicle.tyres: 275/35R18 -> 255/40R18",
                "boost: 1.85 bar gauge +/- 0.03 bar|boost: 1.80 bar gauge +/- 0.03 bar|base-pull.boost: 1.85 bar gauge +/- 0.03 bar -> 1.80 bar gauge +/- 0.03 bar",
                "boost: 1.85 bar gauge +/- 0.03 bar|boost: 1.85 bar gauge|base-pull.boost: 1.85 bar gauge +/- 0.03 bar -> 1.85 bar gauge",
                "mass: 1540 kg|mass: 1540 kg +/- 1 kg|vehicle.mass: 1540 kg -> 1540 kg +/- 1 kg (+0.0 %)",
                "mass: 1540 kg|mass: {value: 1540 kg, from: scales}|vehicle.mass: still 1540 kg; reason: assumed -> assumed: scales",
                "drag-area: 0.70 m2|drag-area: 0.70 m2#  rolling-resistance: 0.013|",
                "mass: 1540 kg|mass: 1540000 g|",
                "0.02 mm, from: bore gauge|20 um, from: bore gauge|",
                "note: a rear-drive|note: the rear-drive|",
            })
    void one_change_is_one_line(String before, String after, String line) throws IOException {
        assertEquals(
                line == null ? List.of() : List.of(line),
                lines(text(), text().replace(before, after.replace('#', '\n'))).stream()
                        .filter(said -> !said.contains("rolling-resistance"))
                        .toList());
    }

    /** What is stated in one sheet only has no figure to compare, and a long reason is cut. */
    @Test
    void what_stands_in_one_sheet_only_is_said_so_and_a_long_reason_cut() throws IOException {
        String nozzle = text().replaceAll("(?s)\n  nozzle:.*?\n  arming:", "\n  arming:");
        assertEquals(
                List.of(
                        "nitrous-system.nozzle.nitrous-passage: 1.8 mm -> (not stated); reason: assumed -> (not stated)",
                        "nitrous-system.nozzle.fuel-passage: 1.2 mm -> (not stated); reason: assumed -> (not stated)"),
                lines(text(), nozzle));
        assertEquals(
                "nitrous-system.nozzle.nitrous-passage: (not stated) -> 1.8 mm; reason: (not stated) -> assumed",
                lines(nozzle, text()).get(0));
        String reason = "w".repeat(150);
        String said = lines(text(), text().replace("from: bore gauge,", "from: " + reason + ","))
                .get(0);
        assertEquals(
                "engine.bore: still 85.3 mm +/- 0.02 mm; reason: measured: bore gauge -> measured: ",
                said.substring(0, said.indexOf("www")));
        assertEquals(true, said.length() < 200, said);
    }

    @Test
    void every_table_that_changes_is_named(@TempDir Path folder) throws IOException {
        Job job = copied(folder, text());
        assertEquals(List.of(), Job.load(DemoSheetTest.DEMO).differences(job));
        List<String> paths = List.of(
                "turbo.compressor.map",
                "injection.injector.dead-time-table",
                "nitrous-system.jet-ladder",
                "injection.pumps.curve",
                "nitrous-system.fuel.pumps.curve",
                "engine.volumetric-efficiency");
        for (int i = 0; i < TABLES.size(); i++) {
            Path table = folder.resolve(TABLES.get(i));
            String before = Files.readString(table);
            int last = before.stripTrailing().length() - 1;
            Files.writeString(table, before.substring(0, last) + (before.charAt(last) == '1' ? '2' : '1') + "\n");
            assertEquals(
                    List.of(paths.get(i) + " (table): differs"),
                    job.differences(Job.load(folder)).stream()
                            .map(SheetDifference::toString)
                            .toList());
            Files.writeString(table, before);
        }
    }

    @Test
    void the_curve_of_a_pull_is_a_table_too_and_what_a_loss_makes_of_it_is_not(@TempDir Path folder)
            throws IOException {
        String text = text().replace("  rpm: 6800 rpm\n", "  curve: pull.csv\n")
                .replace("  wheel-power: 590 hp +/- 15 hp\n", "");
        Path curve = folder.resolve("pull.csv");
        Files.writeString(curve, "engine speed [rpm],crank power [hp]\n5000,500\n6800,690\n");
        Job job = copied(folder, text);
        assertEquals(
                List.of("driveline.loss: 14 % -> 15 % (+7.1 %)"),
                job.differences(copied(folder, text.replace("loss: {value: 14 %", "loss: {value: 15 %"))).stream()
                        .map(SheetDifference::toString)
                        .toList());
        assertEquals(
                List.of("base-pull.correction"),
                job
                        .differences(
                                copied(folder, text.replace("  curve: pull", "  correction: din-70020\n  curve: pull")))
                        .stream()
                        .map(SheetDifference::path)
                        .toList());
        Files.writeString(curve, "engine speed [rpm],crank power [hp]\n5000,501\n6800,690\n");
        assertEquals(
                List.of("base-pull.curve (table): differs"),
                job.differences(copied(folder, text)).stream()
                        .map(SheetDifference::toString)
                        .toList());
        assertEquals(
                List.of("base-pull.boost", "base-pull.curve", "base-pull.rpm", "base-pull.wheel-power"),
                job
                        .differences(
                                Job.read(text().replace("boost: 1.85 bar gauge +", "boost: 1.84 bar gauge +"), FOLDER))
                        .stream()
                        .map(SheetDifference::path)
                        .sorted()
                        .toList());
    }

    private static Job copied(Path folder, String text) throws IOException {
        EditedDemo.copyTables(folder);
        Files.writeString(folder.resolve("job.yaml"), text);
        return Job.load(folder);
    }

    private static List<String> lines(String before, String after) {
        return Job.read(before, FOLDER).differences(Job.read(after, FOLDER)).stream()
                .map(SheetDifference::toString)
                .toList();
    }

    private static String text() throws IOException {
        return Files.readString(DemoSheetTest.DEMO);
    }
}
