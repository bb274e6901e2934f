package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.MapReference;
import org.shotledger.sheet.CsvColumn;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.SheetException;
import org.shotledger.supply.Pump;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TablesTest {
    private static final String MAP = """
            # invented
            speed [rpm],flow [kg/s],pressure ratio,efficiency [%]
            100000,0.20,2.6,70
            100000,0.30,2.5,75
            100000,0.40,2.2,70
            60000,0.10,1.5,66
            60000,0.20,1.4,72
            60000,0.28,1.2,65
            """;

    @Test
    void speed_lines_are_sorted_whatever_their_order() {
        CompressorMap map = map(MAP, MapReference.SI);
        assertEquals(60_000, map.lines().get(0).correctedRpm());
        assertEquals(0.75, map.lines().get(1).points().get(1).efficiency());
    }

    /** 1 lb/min = 0.45359237/60 kg/s, exact. */
    @Test
    void a_map_in_pounds_a_minute_is_the_same_map() {
        StringBuilder pounds = new StringBuilder("speed [rpm];flow [lb/min];pressure ratio;efficiency [%]\n");
        MAP.lines().skip(2).forEach(line -> {
            String[] c = line.split(",", -1);
            double flow = Double.parseDouble(c[1]) * 60 / 0.45359237;
            pounds.append(c[0] + ";" + String.valueOf(flow).replace('.', ',') + ";" + c[2].replace('.', ',') + ";"
                    + c[3] + "\n");
        });
        CompressorMap map = map(pounds.toString(), MapReference.SI);
        assertEquals(0.30, map.lines().get(1).points().get(1).correctedFlow(), 1e-12);
    }

    /** Ideal gas at 85 F and 28.4 inHg: 96 173 Pa / (287.05 * 302.594 K) = 1.1072 kg/m3. */
    @Test
    void a_map_in_volume_flow_takes_the_density_of_its_own_reference() {
        String volume = MAP.replace("flow [kg/s]", "volume flow [m3/s]");
        CompressorMap map = map(volume, MapReference.US);
        assertEquals(0.30 * 1.1072, map.lines().get(1).points().get(1).correctedFlow(), 1e-4);
    }

    @Test
    void a_bad_speed_line_is_named_with_its_line() {
        String bad = MAP.replace("100000,0.30,2.5,75", "100000,0.20,2.5,75") + "80000,0.2,2.0,70\n";
        SheetException e = assertThrows(SheetException.class, () -> map(bad, MapReference.SI));
        assertEquals(
                List.of(
                        "map.csv, line 9: The speed line at 80000.0 rpm has 1 points; give at least three.",
                        "map.csv, line 3: The speed line at 100000.0 rpm has the flow 0.2 kg/s twice; give each point once."),
                e.problems().stream().map(Object::toString).toList());
    }

    @Test
    void a_map_with_both_flows_or_none_is_refused() {
        String none = MAP.replace("flow [kg/s],", "").replaceAll("(?m)^(\\d+),[0-9.]+,", "$1,");
        assertEquals(
                "map.csv: The map must have either \"flow\" as mass per time or \"volume flow\" at its reference state; it has"
                        + " neither.",
                assertThrows(SheetException.class, () -> map(none, MapReference.SI))
                        .getMessage());
    }

    @Test
    void a_curve_sorts_its_rows_and_names_a_repeated_one() {
        CsvTable table =
                table("engine speed [rpm],volumetric efficiency\n6000,1.0\n2000,0.8\n", Tables.VOLUMETRIC_EFFICIENCY);
        assertEquals(
                0.9,
                Tables.curve("ve", table, "engine speed", "volumetric efficiency")
                        .at(4000),
                1e-12);
        CsvTable twice = table(
                "engine speed [rpm],volumetric efficiency\n6000,1.0\n2000,0.8\n6000,1.1\n",
                Tables.VOLUMETRIC_EFFICIENCY);
        assertEquals(
                "map.csv, line 4, engine speed: This value of \"engine speed\" stands twice, first on line 2; keep one of the"
                        + " rows.",
                assertThrows(
                                SheetException.class,
                                () -> Tables.curve("ve", twice, "engine speed", "volumetric efficiency"))
                        .getMessage());
    }

    @Test
    void a_map_with_both_flows_is_refused_too_and_lines_that_cross_are_named_with_the_file() {
        String both =
                MAP.replace("flow [kg/s],", "flow [kg/s],volume flow [m3/s],").replaceAll("(?m)^(\\d+),", "$1,0.1,");
        assertEquals(
                "map.csv: The map must have either \"flow\" as mass per time or \"volume flow\" at its reference state; it has"
                        + " both.",
                assertThrows(SheetException.class, () -> map(both, MapReference.SI))
                        .getMessage());
        String crossed = assertThrows(
                        SheetException.class,
                        () -> map(MAP.replace("60000,0.10,1.5,66", "60000,0.10,2.7,66"), MapReference.SI))
                .getMessage();
        assertTrue(
                crossed.startsWith("map.csv: The lines at 60000.0 and 100000.0 rpm of the compressor map map cross"),
                crossed);
    }

    /** 60 L/h are 1/60 L/s; between 2 and 4 bar lies the mean. */
    @Test
    void a_pump_sorts_voltages_and_pressures_and_names_what_is_wrong_with_its_line() {
        String rows = "voltage [V],pressure [bar],flow [L/h],current [A]\n13,4,60,9\n13,2,120,7\n9,4,30,6\n9,2,60,5\n";
        Pump pump = Tables.pump("p", table(rows, Tables.PUMP));
        assertEquals("p", pump.name());
        assertEquals(
                List.of(9.0, 13.0),
                pump.lines().stream().map(Pump.Line::voltage).toList());
        assertEquals(90e-3 / 3600, pump.lines().get(1).flow().at(3e5), 1e-12);
        assertEquals(8, pump.lines().get(1).current().at(3e5), 1e-12);
        assertEquals("current of p at 13.0 V", pump.lines().get(1).current().name());
        assertEquals(
                "map.csv, line 5, pressure: This value of \"pressure\" stands twice, first on line 4; keep one of the rows.",
                assertThrows(
                                SheetException.class,
                                () -> Tables.pump("p", table(rows.replace("9,2,60", "9,4,60"), Tables.PUMP)))
                        .getMessage());
        String rising = assertThrows(
                        SheetException.class,
                        () -> Tables.pump("p", table(rows.replace("9,2,60", "9,2,10"), Tables.PUMP)))
                .getMessage();
        assertTrue(rising.startsWith("map.csv, line 4: "), rising);
    }

    @Test
    void a_ladder_holds_its_bores() {
        assertEquals(
                List.of(20 * 25.4e-6, 40 * 25.4e-6),
                java.util.Arrays.stream(Tables.ladder(table("bore [thou]\n40\n20\n", Tables.JET_LADDER))
                                .bores())
                        .mapToObj(b -> Math.round(b * 1e9) / 1e9)
                        .toList());
    }

    private static CompressorMap map(String text, MapReference reference) {
        return Tables.compressorMap("map", table(text, Tables.COMPRESSOR_MAP), reference, 150_000);
    }

    private static CsvTable table(String text, List<CsvColumn> columns) {
        return CsvTable.read(new StringReader(text), "map.csv", columns);
    }
}
