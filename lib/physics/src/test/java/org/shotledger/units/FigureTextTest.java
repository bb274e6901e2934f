package org.shotledger.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Factors: NIST Special Publication 811 (2008), appendix B.8, as printed there to seven digits (recalled, each
 * recomputed from its definition).
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class FigureTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 psi gauge    | GAUGE_PRESSURE | 6894.757",
                "1 inHg abs     | ABSOLUTE_PRESSURE | 3386.389",
                "1 inH2O        | PRESSURE_DIFFERENCE | 249.0889",
                "1 kgf/cm2 abs  | ABSOLUTE_PRESSURE | 98066.5",
                "1 hp           | POWER          | 745.6999",
                "1 PS           | POWER          | 735.4988",
                "1 lbf ft       | TORQUE         | 1.355818",
                "1 Btu          | ENERGY         | 1055.056",
                "1 Btu/lb       | SPECIFIC_ENERGY | 2326",
                "1 lb/min       | MASS_FLOW      | 0.007559873",
                "1 lb/h         | MASS_FLOW      | 0.0001259979",
                "1 US gal/min   | VOLUME_FLOW    | 6.309020e-05",
                "1 ft3/min      | VOLUME_FLOW    | 4.719474e-04",
                "1 imp gal      | VOLUME         | 4.54609e-03",
                "1 US fl oz     | VOLUME         | 2.957353e-05",
                "1 oz avdp      | MASS           | 0.02834952",
                "1 lb/ft3       | DENSITY        | 16.01846",
                "1 lb/US gal    | DENSITY        | 119.8264",
                "1 ft2          | AREA           | 0.09290304",
                "1 mph          | SPEED          | 0.44704",
                "1 lb ft2       | INERTIA        | 0.04214011",
            })
    void the_factors_are_those_of_the_national_table(String text, QuantityKind kind, double si) {
        assertEquals(si, FigureText.read(text, kind).value(), 6e-7 * si);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "84.5 mm        | LENGTH  | 0.0845",
                "0.062 in       | BORE    | 0.0015748",
                "62 thou        | BORE    | 0.0015748",
                "5/64 in        | BORE    | 0.001984375",
                "drill 52       | BORE    | 0.0016129",
                "drill F        | BORE    | 0.0065278",
                "-12 degF       | TEMPERATURE | 248.7055555556",
                "27 C           | TEMPERATURE | 300.15",
                "27°C           | TEMPERATURE | 300.15",
                "−40 °F         | TEMPERATURE | 233.15",
                "9 degF difference | TEMPERATURE_DIFFERENCE | 5",
                "1050 cc/min    | VOLUME_FLOW | 1.75e-05",
                "10 lb          | MASS    | 4.5359237",
                "35 %           | FRACTION | 0.35",
                "0.72           | FRACTION | 0.72",
                "9.2            | RATIO   | 9.2",
                "8000 rpm       | ROTATION | 8000",
                "1.85 bar gauge | GAUGE_PRESSURE | 185000",
                "875 hPa        | ABSOLUTE_PRESSURE | 87500",
                "3.0 bar        | PRESSURE_DIFFERENCE | 300000",
                "950 psig       | GAUGE_PRESSURE | 6550019.4240",
                "14.7 psia      | ABSOLUTE_PRESSURE | 101352.9322",
                "1.5 barg       | GAUGE_PRESSURE | 150000",
                "0.98 bara      | ABSOLUTE_PRESSURE | 98000",
                "100 %          | FRACTION | 1",
                "104 %          | RATIO | 1.04",
                "drill #80      | BORE   | 0.0003429",
                "drill Z        | BORE   | 0.0104902",
                "20 C difference | TEMPERATURE_DIFFERENCE | 20",
                "20 K           | TEMPERATURE_DIFFERENCE | 20",
                "900 N·m        | TORQUE  | 900",
                "70 A h         | CHARGE  | 252000",
                "0.70 m²        | AREA    | 0.70",
            })
    void figures_are_read_as_the_trade_writes_them(String text, QuantityKind kind, double si) {
        assertEquals(si, FigureText.read(text, kind).value(), 1e-9 * Math.abs(si));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "590 hp +/- 15 hp       | POWER | 11185.49807",
                "590 +/- 15 hp          | POWER | 11185.49807",
                "590 hp +/- 15          | POWER | 11185.49807",
                "590 hp ± 2 %           | POWER | 8799.258484",
                "27 degC +/- 2          | TEMPERATURE | 2",
                "27 degC +/- 9 degF     | TEMPERATURE | 5",
                "1.85 bar gauge +/- 0.02 | GAUGE_PRESSURE | 2000",
                "35 % +/- 5 %           | FRACTION | 0.05",
                "0.80 +/- 0.01          | RATIO | 0.01",
            })
    void a_band_after_plus_minus_is_a_difference(String text, QuantityKind kind, double halfWidth) {
        assertEquals(halfWidth, FigureText.read(text, kind).halfWidth(), 1e-9 * halfWidth);
    }

    /** JCGM 100:2008, 4.3.7: the standard uncertainty of a band of half-width a is a/sqrt(3). */
    @Test
    void a_band_becomes_a_standard_uncertainty() {
        assertEquals(
                1 / Math.sqrt(3),
                FigureText.read("100 K +/- 1", QuantityKind.TEMPERATURE).uncertainty(),
                1e-12);
        assertTrue(
                Double.isNaN(FigureText.read("100 K", QuantityKind.TEMPERATURE).uncertainty()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "84.5|LENGTH|\"84.5\" has no unit; write a length such as \"84.5 mm\" or \"84.5 in\".",
                "84.5 kg|LENGTH|\"84.5 kg\" is a mass; a length is wanted, in mm, in, thou, m, ft, cm, um, km, mi.",
                "84.5 mn|LENGTH|\"84.5 mn\" has the unknown unit \"mn\"; the nearest name is \"mm\"; a length is written in mm, in, thou, m, ft, cm, um, km, mi.",
                "950 psi|GAUGE_PRESSURE|\"950 psi\" does not say which pressure; write \"950 psi gauge\" or \"950 psi abs\".",
                "950 psi|ABSOLUTE_PRESSURE|\"950 psi\" does not say which pressure; write \"950 psi gauge\" or \"950 psi abs\".",
                "950 psi abs|GAUGE_PRESSURE|\"950 psi abs\" is of another kind; a gauge pressure is wanted, written like \"950 psi gauge\" (convert the number if it was meant otherwise).",
                "3 bar gauge|PRESSURE_DIFFERENCE|\"3 bar gauge\" is of another kind; a difference of two pressures is wanted, written like \"3 bar\" (convert the number if it was meant otherwise).",
                "5 degC|TEMPERATURE_DIFFERENCE|\"5 degC\" is of another kind; a difference of two temperatures is wanted, written like \"5 degC difference\" (convert the number if it was meant otherwise).",
                "8 oz|MASS|\"8 oz\" does not say which \"oz\"; write \"8 oz avdp\".",
                "8 oz|VOLUME|\"8 oz\" does not say which \"oz\"; write \"8 US fl oz\" or \"8 imp fl oz\".",
                "2 gal|VOLUME|\"2 gal\" does not say which \"gal\"; write \"2 US gal\" or \"2 imp gal\".",
                "40 gph|VOLUME_FLOW|\"40 gph\" does not say which \"gph\"; write \"40 US gal/h\" or \"40 imp gal/h\".",
                "84,5 mm|LENGTH|\"84,5 mm\" has a comma in its number; write a decimal point, and thousands without a mark.",
                "wide|LENGTH|\"wide\" does not begin with a number; write a number and a unit, such as \"84.5 mm\".",
                "NaN mm|LENGTH|\"NaN mm\" does not begin with a number; write a number and a unit, such as \"84.5 mm\".",
                "1e999 mm|LENGTH|\"1e999 mm\" is too large a number; write one the machine can hold.",
                "72|FRACTION|\"72\" is not a fraction from 0 to 1; write it so, or with a percent sign as \"72 %\".",
                "-300 degC|TEMPERATURE|\"-300 degC\" lies below absolute zero; write a value above it.",
                "drill 99|BORE|There is no drill \"99\"; number drills go from 1 to 80, letters from A to Z.",
                "1050 cc/min at 3 bar|VOLUME_FLOW|\"1050 cc/min at 3 bar\" says under which condition it holds; write \"1050 cc/min\" and the condition as a value of its own beside it, for an injector \"test-pressure\".",
                "100 lb/h|VOLUME_FLOW|\"100 lb/h\" is a mass flow; a volume flow is wanted, in cc/s, cc/min, cc/h, L/s, L/min, L/h, mL/s, mL/min, mL/h, cm3/s, cm3/min, cm3/h, m3/s, m3/min, m3/h, in3/s, in3/min, in3/h, ft3/s, ft3/min, ft3/h, US gal/s, US gal/min, US gal/h, imp gal/s, imp gal/min, imp gal/h.",
                "20 lb|GAUGE_PRESSURE|\"20 lb\" is a mass; a pressure is wanted, in bar gauge, mbar gauge, Pa gauge, hPa gauge, kPa gauge, MPa gauge, psi gauge, atm gauge, inHg gauge, mmHg gauge, inH2O gauge, kgf/cm2 gauge.",
                "20 psi gauge|ABSOLUTE_PRESSURE|\"20 psi gauge\" is of another kind; an absolute pressure is wanted, written like \"20 psi abs\" (convert the number if it was meant otherwise).",
                "5 mm gauge|LENGTH|\"5 mm gauge\" is of another kind; a length without \"gauge\" is wanted, written like \"5 mm\" (convert the number if it was meant otherwise).",
                "6 gal/min|VOLUME_FLOW|\"6 gal/min\" does not say which \"gal/min\"; write \"6 US gal/min\" or \"6 imp gal/min\".",
                "6 gpm|VOLUME_FLOW|\"6 gpm\" does not say which \"gpm\"; write \"6 US gal/min\" or \"6 imp gal/min\".",
                "6 lb/gal|DENSITY|\"6 lb/gal\" does not say which \"lb/gal\"; write \"6 lb/US gal\".",
                "3 fl oz|VOLUME|\"3 fl oz\" does not say which \"fl oz\"; write \"3 US fl oz\" or \"3 imp fl oz\".",
                "40 mil|BORE|\"40 mil\" does not say which \"mil\"; write \"40 thou\" or \"40 mm\".",
                "1e308 MPa abs|ABSOLUTE_PRESSURE|\"1e308 MPa abs\" is too large a number; write one the machine can hold.",
                "35 degF|FRACTION|\"35 degF\" is a temperature; a pure number is wanted, without a unit or in %.",
                "5 mm +/- -1|LENGTH|\"5 mm +/- -1\" has a negative band after +/-; write it without a sign.",
            })
    void what_cannot_be_read_is_refused_in_one_sentence(String text, QuantityKind kind, String message) {
        assertEquals(
                message,
                assertThrows(UnitException.class, () -> FigureText.read(text, kind))
                        .getMessage());
    }

    @Test
    void a_figure_is_no_essay() {
        String text = "1 " + "m".repeat(300);
        assertEquals(
                "\"" + text.substring(0, 57) + "...\" is longer than 200 characters; write a number and a unit.",
                assertThrows(UnitException.class, () -> FigureText.read(text, QuantityKind.LENGTH))
                        .getMessage());
    }

    @Test
    void every_spelling_of_every_unit_is_read_back_as_that_unit() {
        for (UnitName unit : UnitTable.get().all()) {
            for (String spelling : unit.spellings()) {
                assertEquals(unit, UnitTable.get().find(spelling), spelling);
                assertEquals(spelling, UnitReader.normal(spelling), "the spelling must be normal: " + spelling);
            }
            assertEquals(unit, UnitTable.get().find(unit.name()));
        }
    }

    @Test
    void every_kind_reads_what_it_shows() {
        for (QuantityKind kind : QuantityKind.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                double si = kind == QuantityKind.FRACTION ? 0.25 : 412;
                String text = kind.shown(si, system) + " " + kind.unit(system);
                assertEquals(si, FigureText.read(text, kind).value(), 1e-9 * si, kind + " " + text);
            }
        }
    }
}
