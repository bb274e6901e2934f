package org.shotledger.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
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

    private static List<String> rows(String file) throws IOException {
        return Files.readAllLines(FOLDER.resolve(file)).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
    }
}
