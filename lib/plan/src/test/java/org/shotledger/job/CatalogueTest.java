package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.DrillSizes;

@DisplayNameGeneration(ReplaceUnderscores.class)
class CatalogueTest {
    private static final Path FOLDER = Path.of("../../data/catalogue");

    @Test
    void every_file_says_where_it_comes_from() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                String head = String.join(" ", Files.readAllLines(file).subList(0, 2));
                assertTrue(
                        head.startsWith("#") && (head.contains("Origin:") || head.contains("invented")),
                        file.toString());
            }
        }
    }

    @Test
    void the_parts_can_be_used_as_they_are() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> parts = files.filter(f -> f.getFileName().toString().matches("(compressor|fuel-pump).*csv"))
                    .toList();
            assertEquals(6, parts.size());
            assertEquals(List.of(), Check.files(parts));
        }
    }

    /** ASTM B258 table as printed in handbooks (from memory): 10 AWG 2.588 mm, 3.277 mohm/m; 12 2.053; 18 1.024; 24 0.511. */
    @ParameterizedTest
    @CsvSource({"10,2.588,3.277", "12,2.053,5.211", "18,1.024,20.95", "24,0.511,84.2"})
    void wire_gauges_are_those_of_the_standard(int gauge, double diameter, double resistance) throws IOException {
        String[] row = rows("wire-gauge.csv").get(gauge + 1).split(",", -1);
        assertEquals(gauge, Integer.parseInt(row[0]));
        assertEquals(diameter, Double.parseDouble(row[1]), 6e-4);
        assertEquals(resistance, Double.parseDouble(row[3]), 2e-3 * resistance);
    }

    /** 49 CFR 173.304a: nitrous oxide up to 68 % of the water capacity by mass. */
    @Test
    void no_bottle_holds_more_than_the_regulation_allows() throws IOException {
        for (String row : rows("bottles.csv").subList(1, rows("bottles.csv").size())) {
            String[] cells = row.split(",", -1);
            double filling = Double.parseDouble(cells[1]) * 0.45359237 / Double.parseDouble(cells[2]);
            assertEquals(0.68, filling, 0.003, row);
        }
    }

    @Test
    void fuels_and_drills_are_the_ones_the_library_computes_with() throws IOException {
        List<Fuel> fuels = List.of(Fuels.ISO_OCTANE, Fuels.N_HEPTANE, Fuels.TOLUENE, Fuels.ETHANOL, Fuels.METHANOL);
        List<String> rows = rows("fuels.csv");
        for (int i = 0; i < fuels.size(); i++) {
            String[] cells = rows.get(i + 1).split(",", -1);
            assertEquals(fuels.get(i).name(), cells[0]);
            assertEquals(fuels.get(i).density(), Double.parseDouble(cells[4]), 1e-9);
            assertEquals(fuels.get(i).octane().orElseThrow().research(), Double.parseDouble(cells[6]), 1e-9);
        }
        assertEquals(DrillSizes.all().size() + 1, rows("drills.csv").size());
    }

    @Test
    void every_file_is_read_with_its_units_and_its_origin() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                Catalogue catalogue = Catalogue.read(file);
                assertTrue(catalogue.origin().matches(".*(Origin:|invented).*"), file.toString());
                assertEquals(
                        rows(file.getFileName().toString()).size() - 1,
                        catalogue.parts().size());
                for (Catalogue.Part part : catalogue.parts()) {
                    assertTrue(part.figures().values().stream().allMatch(a -> a.si() >= 0), part.toString());
                }
            }
        }
    }

    /** SAE J517 100R14, size 6: 7.9 mm (from memory); drill 52 is 0.0635 in (ANSI B94.11M). */
    @Test
    void a_part_is_found_by_its_name_and_its_figures_by_their_headings() {
        Catalogue hoses = Catalogue.read(FOLDER.resolve("hoses.csv"));
        assertEquals(7.9e-3, hoses.part("6").figure("hose bore").si(), 1e-12);
        assertEquals(
                0.375 * 0.0254, hoses.part("6").figure("tube outer diameter").si(), 1e-12);
        Catalogue drills = Catalogue.read(FOLDER.resolve("drills.csv"));
        assertEquals(0.0635 * 0.0254, drills.part("52").figure("diameter").si(), 1e-12);
        DrillSizes.all()
                .forEach((name, d) ->
                        assertEquals(d, drills.part(name).figure("diameter").si(), 1e-12));
        Catalogue.Part large =
                Catalogue.read(FOLDER.resolve("solenoids.csv")).parts().get(2);
        assertEquals("large", large.words().get("class"));
        assertEquals(0.016, large.figure("opening delay").si(), 1e-12);
    }

    @Test
    void what_is_not_there_is_said(@TempDir Path folder) throws IOException {
        Catalogue hoses = Catalogue.read(FOLDER.resolve("hoses.csv"));
        assertEquals(
                "There is no \"99\" in hoses.csv; it has 3, 4, 5, 6, 8, 10, 12, 16.",
                assertThrows(IllegalArgumentException.class, () -> hoses.part("99"))
                        .getMessage());
        assertEquals(
                "The part 4 has no figure \"bore\"; it has tube outer diameter, hose bore.",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> hoses.part("4").figure("bore"))
                        .getMessage());
        Path bad = Files.writeString(folder.resolve("x.csv"), "size,bore [mn],mass [kg]\n1,2\n1,2,many\n");
        assertEquals(
                List.of(
                        "x.csv: The file does not say where its figures come from; write it in comment lines above the"
                                + " heading.",
                        "x.csv, line 1, column 2, bore: There is no unit \"mn\"; mend it.",
                        "x.csv, line 2: The row has 2 cells where the heading has 3; mend it.",
                        "x.csv, line 3, column 3, mass: \"many kg\" does not begin with a number; write a number and a unit,"
                                + " such as \"84.5 mm\"."),
                assertThrows(SheetException.class, () -> Catalogue.read(bad)).problems().stream()
                        .map(Object::toString)
                        .toList());
    }

    private static List<String> rows(String file) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }
}
