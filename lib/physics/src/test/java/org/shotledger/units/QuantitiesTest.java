package org.shotledger.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.shotledger.units.Quantities.barGauge;
import static org.shotledger.units.Quantities.degF;
import static org.shotledger.units.Quantities.hp;
import static org.shotledger.units.Quantities.lbPerMin;
import static org.shotledger.units.Quantities.psi;
import static org.shotledger.units.Quantities.psiGauge;
import static org.shotledger.units.Quantities.thou;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

@DisplayNameGeneration(ReplaceUnderscores.class)
class QuantitiesTest {

    @Test
    void a_gauge_reading_knows_its_ambient() {
        GaugePressure atHome = barGauge(1.85, new AbsolutePressure(98_945));
        assertEquals(283_945, atHome.absolute().pascals(), 1e-6);
        assertEquals(196_445, atHome.at(new AbsolutePressure(87_500)).pascals(), 1e-6);
        assertEquals(
                101_325 + 950 * 6894.757293168,
                psiGauge(950).absolute().pascals(),
                1e-6,
                "standard atmosphere of ISO 2533");
    }

    @Test
    void a_pressure_without_its_zero_must_be_told() {
        assertEquals(psiGauge(950), psi(950).gauge());
        assertEquals(950 * 6894.757293168, psi(950).abs().pascals(), 1e-6);
        assertEquals(QuantityKind.PRESSURE_DIFFERENCE, psi(50).difference().kind());
    }

    @Test
    void pressures_below_vacuum_are_refused() {
        assertEquals(
                "An absolute pressure is -1.0 Pa; give a finite one, not below 0, or a gauge pressure with its ambient.",
                assertThrows(IllegalArgumentException.class, () -> new AbsolutePressure(-1))
                        .getMessage());
        assertEquals(
                "A gauge reads -200000.0 Pa at an ambient of 101325.0 Pa, which lies below vacuum; check the sign and the"
                        + " ambient.",
                assertThrows(IllegalArgumentException.class, () -> barGauge(-2)).getMessage());
    }

    @Test
    void short_words_give_si() {
        assertEquals(581_645.9, hp(780).si(), 0.01);
        assertEquals(0.0015748, thou(62).si(), 1e-12);
        assertEquals(304.2611111111, degF(88).si(), 1e-9);
        assertEquals(62, thou(62).in("thou"), 1e-12);
        assertEquals("37.80 g/s (5.000 lb/min)", lbPerMin(5).toString());
    }

    /** The independent library converts the same figures. */
    @Test
    void amounts_go_to_the_measure_api_and_back() {
        assertEquals(
                2.5,
                Amount.of(Quantities.getQuantity(2500, Units.GRAM), QuantityKind.MASS)
                        .si(),
                1e-12);
        assertEquals(
                300.15,
                Amount.of(Quantities.getQuantity(27, Units.CELSIUS), QuantityKind.TEMPERATURE)
                        .si(),
                1e-9);
        assertEquals(
                100 / 3.6,
                Amount.of(Quantities.getQuantity(100, Units.KILOMETRE_PER_HOUR), QuantityKind.SPEED)
                        .si(),
                1e-9);
        for (QuantityKind kind : QuantityKind.values()) {
            assertEquals(0.5, Amount.of(new Amount(kind, 0.5).quantity(), kind).si(), 1e-9, kind.words());
        }
    }

    @Test
    void a_quantity_of_another_dimension_is_refused() {
        assertEquals(
                "The quantity 5 kg is not a length; give one whose unit converts to m.",
                assertThrows(
                                UnitException.class,
                                () -> Amount.of(Quantities.getQuantity(5, Units.KILOGRAM), QuantityKind.LENGTH))
                        .getMessage());
    }

    /** Steps of the drill series confirmed against a public chart: 80, 25, 21, 10, 7, 1, A, Z. */
    @Test
    void drills_grow_from_80_to_1_and_from_A_to_Z() {
        double last = 0;
        for (double diameter : DrillSizes.all().values()) {
            org.junit.jupiter.api.Assertions.assertTrue(diameter > last);
            last = diameter;
        }
        assertEquals(106, DrillSizes.all().size());
        double[] inches = {0.0135, 0.1495, 0.1590, 0.1935, 0.2010, 0.2280, 0.234, 0.413};
        String[] names = {"80", "25", "21", "10", "7", "1", "A", "Z"};
        for (int i = 0; i < names.length; i++) {
            assertEquals(inches[i] * 0.0254, DrillSizes.diameter(names[i]), 1e-9, names[i]);
        }
    }

    @Test
    void aBriefFigureHasNoDecimalsBeyondThreeDigitsThatCount() {
        assertEquals("67.3 lb/min", QuantityKind.MASS_FLOW.brief(67.307 * 0.45359237 / 60, UnitSystem.US));
        assertEquals("2192 psi abs", QuantityKind.ABSOLUTE_PRESSURE.brief(2192.0 * 6894.757293, UnitSystem.US));
        assertEquals("0.800", QuantityKind.RATIO.brief(0.8, UnitSystem.SI));
        assertEquals(
                "0.51 bar gauge",
                QuantityKind.GAUGE_PRESSURE.brief(0.51e5, UnitSystem.SI),
                "not more than the trade reads");
        assertEquals("0.00 bar gauge", QuantityKind.GAUGE_PRESSURE.brief(-1e-3, UnitSystem.SI));
    }
}
