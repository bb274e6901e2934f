package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.BasePull;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/**
 * A base pull in every way in which it may be written. The driveline keeps 14 %; a horsepower is 745.69987 W; 6800 rpm are 712.094 rad/s.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PullSectionTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();
    private static final double HP = 745.69987158;
    private static final String STATED = "  wheel-power: 590 hp +/- 15 hp\n";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "wheel-power: 590 hp|590|0.02",
                "crank-power: 686.0465 hp|590|0.02",
                "wheel-torque: 617.84 N m|590|0.02", // 590 * 745.7 / 712.094
                "crank-torque: 718.42 N m|590|0.02",
                "wheel-power: 590 hp +/- 15 hp|590|0.014678", // 15/590 over the root of 3
                "crank-torque: 718.42 N m +/- 10 N m|590|0.008036", // 10/718.42 over the root of 3
                "wheel-power: 600 hp +/- 15 hp#  correction-factor: 1.02|588.235|0.014434", // 600/1.02; 15/600
                "wheel-power: 590 hp#  correction: none|590|0.02",
            })
    void one_figure_becomes_power_at_the_wheels_as_observed(String line, double horsepower, double uncertainty)
            throws IOException {
        BasePull pull = pull(line);
        assertEquals(horsepower * HP, pull.strongest().wheelPower(), 2e-5 * horsepower * HP);
        assertEquals(uncertainty, pull.uncertainty(), 1e-6);
        assertEquals(6800, pull.strongest().rpm(), 1e-9);
        assertEquals(1.85e5, pull.strongest().gaugePressure(), 1e-6);
        assertEquals(0.80, pull.lambda(), 1e-12);
        assertEquals(291.15, pull.air().temperature(), 1e-9);
        assertEquals(line.contains("factor"), pull.correction().isPresent());
    }

    @Test
    void a_stated_factor_holds_and_names_itself_and_a_standard_brings_its_own() throws IOException {
        var stated = pull("wheel-power: 600 hp\n  correction-factor: 1.02")
                .correction()
                .orElseThrow();
        assertEquals("the factor stated in the sheet", stated.standard());
        assertEquals(1.02, stated.factor());
        assertTrue(stated.holds());
        // DIN 70020: 1013 mbar over 989.45 mbar, root of 291.15 K over 293 K
        var din = pull("wheel-power: 600 hp\n  correction: din-70020")
                .correction()
                .orElseThrow();
        assertEquals(1013 / 989.45 * Math.sqrt(291.15 / 293), din.factor(), 2e-4);
    }

    @Test
    void the_fuel_of_that_day_is_that_of_the_car_unless_it_is_said() throws IOException {
        Job plain = Job.load(DemoSheetTest.DEMO);
        String same = Files.readString(DemoSheetTest.DEMO)
                .replace("  fuel:\n    kind: ethanol-blend\n    ethanol: 78 %\n", "");
        assertEquals(
                plain.car().fuels().main(),
                Job.read(same, FOLDER).car().basePull().fuel());
        String other = Files.readString(DemoSheetTest.DEMO).replace("    ethanol: 78 %\n", "    ethanol: 60 %\n");
        BasePull leaner = Job.read(other, FOLDER).car().basePull();
        // less ethanol is more heat in a kilogram and less of it in a litre
        assertTrue(leaner.fuel().lowerHeatingValue()
                > 1.04 * plain.car().fuels().main().lowerHeatingValue());
        assertEquals(
                Optional.empty(),
                Stream.of(plain.car().basePull())
                        .filter(p -> !p.fuel().equals(plain.car().fuels().main()))
                        .findAny());
    }

    @Test
    void a_curve_has_its_points_by_speed_with_the_boost_of_each_or_that_of_the_sheet(@TempDir Path folder)
            throws IOException {
        // 500 hp at 5000 rpm; 617.84 N m at the wheels at 6800 rpm
        BasePull torque = curve(
                folder,
                "",
                "engine speed [rpm],wheel torque [N m],boost [bar gauge]\n6800,617.84,1.85\n5000,712.09,1.6\n");
        assertEquals(
                List.of(5000L, 6800L),
                torque.points().stream().map(p -> Math.round(p.rpm())).toList());
        assertEquals(500 * HP, torque.points().get(0).wheelPower(), 20);
        assertEquals(1.6e5, torque.points().get(0).gaugePressure(), 1e-6);
        assertEquals(590 * HP, torque.strongest().wheelPower(), 20);
        assertEquals(0.02, torque.uncertainty());
        // lb ft and hp are the same number at 5252 rpm
        BasePull both = curve(
                folder,
                "  boost: 1.85 bar gauge\n",
                "engine speed [rpm],wheel power [hp],wheel torque [lb ft]\n5252,400,406\n6800,590,447\n");
        assertEquals(400 * HP, both.points().get(0).wheelPower(), 1);
        BasePull crank = curve(
                folder, "  boost: 1.85 bar gauge\n", "engine speed [rpm],crank power [hp]\n5000,500\n6800,686.0465\n");
        assertEquals(430 * HP, crank.points().get(0).wheelPower(), 1);
        assertEquals(1.85e5, crank.points().get(0).gaugePressure(), 1e-6);
        BasePull shown = curve(
                folder,
                "  boost: 1.85 bar gauge\n  correction-factor: 1.1\n",
                "engine speed [rpm],wheel power [hp]\n6800,649\n");
        assertEquals(590 * HP, shown.strongest().wheelPower(), 1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boost: 1.85 bar gauge|engine speed [rpm]#6800#|curve: The table of the pull has neither power nor torque; add a column wheel power, wheel torque, crank power or crank torque.",
                "|engine speed [rpm],wheel power [hp]#6800,590#|curve: The table of the pull has no column boost and the sheet states none; add one of the two.",
                "boost: 1.85 bar gauge#wheel-power: 590 hp +/- 15 hp|engine speed [rpm],wheel power [hp]#6800,590#|wheel-power: The pull is given as a curve and as wheel power; keep the one that was measured.",
                "boost: 1.85 bar gauge|engine speed [rpm],wheel power [hp],wheel torque [lb ft]#5252,400,407#6800,590,500#|curve: At 6,800 rpm the column wheel torque gives 10 % more power than the column wheel power, where it may be 2 % off; mend the one that is wrong, or leave its column out.",
                "boost: 1.85 bar gauge|engine speed [rpm],crank power [hp],crank torque [lb ft]#5252,400,391#|curve: At 5,252 rpm the column crank torque gives 2 % less power than the column crank power, where it may be 2 % off; mend the one that is wrong, or leave its column out.",
            })
    void a_curve_that_says_too_little_or_too_much_is_refused(
            String lines, String table, String message, @TempDir Path folder) {
        Problem first = assertThrows(
                        SheetException.class,
                        () -> curve(
                                folder,
                                lines == null ? "" : "  " + lines.replace("#", "\n  ") + "\n",
                                table.replace('#', '\n')))
                .problems()
                .get(0);
        assertEquals("base-pull." + message, first.field() + ": " + first.sentence());
    }

    @Test
    void a_standard_and_a_factor_are_refused() {
        Problem first = assertThrows(
                        SheetException.class,
                        () -> pull("wheel-power: 590 hp\n  correction: din-70020\n  correction-factor: 1.02"))
                .problems()
                .get(0);
        assertEquals("base-pull.correction-factor", first.field());
        assertEquals(
                "The pull's power is corrected by a standard and by a factor; keep the one that the chart states.",
                first.sentence());
    }

    @Test
    void two_figures_of_one_pull_are_refused() {
        Problem first = assertThrows(SheetException.class, () -> pull("wheel-power: 590 hp\n  crank-torque: 700 N m"))
                .problems()
                .get(0);
        assertEquals("base-pull.crank-torque", first.field());
        assertEquals(
                "The pull is given as wheel power and as crank torque; keep the one that was measured.",
                first.sentence());
    }

    private static BasePull pull(String line) throws IOException {
        String text = Files.readString(DemoSheetTest.DEMO).replace(STATED, "  " + line.replace('#', '\n') + "\n");
        return Job.read(text, FOLDER).car().basePull();
    }

    private static BasePull curve(Path folder, String lines, String table) throws IOException {
        EditedDemo.copyTables(folder);
        Files.writeString(folder.resolve("pull.csv"), table);
        String text = Files.readString(DemoSheetTest.DEMO)
                .replace(
                        "  rpm: 6800 rpm\n  boost: 1.85 bar gauge +/- 0.03 bar\n" + STATED,
                        "  curve: pull.csv\n" + lines);
        return Job.read(text, folder).car().basePull();
    }
}
