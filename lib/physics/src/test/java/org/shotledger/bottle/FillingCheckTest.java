package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.bottle.FillingLimit.Kind;

class FillingCheckTest {
    private static final double POUND = 0.45359237;
    private static final double PSI = 6894.757;
    private static final double ATMOSPHERE = 101325;
    private static final Cylinder MARKED = new Cylinder(1800 * PSI + ATMOSPHERE, 3000 * PSI + ATMOSPHERE);
    private static final Bottle BOTTLE = new Bottle(6.7e-3, 7.1, 900);

    private static FillingCheck check(double pounds, double celsius) {
        return FillingCheck.of(Filling.of(
                BOTTLE, pounds * POUND, MARKED, celsius + 273.15, 323.15, 800 * PSI, 1050 * PSI + ATMOSPHERE));
    }

    private static List<Kind> broken(FillingCheck check) {
        return check.broken().stream().map(FillingLimit::kind).toList();
    }

    // computed with an independent implementation of the same equation of state: 0.68 kg/L liquid-full at 30.6 degC and
    // 145.3 bar
    // at 55 degC, 0.75 kg/L 24.2 degC and 186.8 bar; 179.6 bar at 65 degC for 0.68 kg/L, where UN P200 tests at 180 bar
    @ParameterizedTest
    @CsvSource({"6.8, 30.6, 55, 145.3", "7.5, 24.2, 55, 186.8", "6.8, 30.6, 65, 179.6"})
    void pressureOfAChargeInSinglePhaseStates(double mass, double full, double celsius, double bar) {
        Bottle ten = new Bottle(10e-3, 0, 0);
        assertEquals(full, ChargePressure.liquidFullTemperature(ten, mass) - 273.15, 0.05);
        ChargePressure pressure = ChargePressure.of(ten, mass, celsius + 273.15);
        assertEquals(bar, pressure.pressure() / 1e5, 0.1);
        assertFalse(pressure.beyond());
    }

    @Test
    void aLegalChargeBelowItsLiquidFullTemperatureHolds() {
        FillingCheck check = check(9.5, 28);
        assertEquals(List.of(), broken(check));
        assertEquals(10, check.find(Kind.FILLING_DENSITY).orElseThrow().bound() * 6.7 / POUND, 0.05);
    }

    // 10.5 and 11 lb start liquid-full in this bottle, above any working pressure
    @ParameterizedTest
    @ValueSource(doubles = {10.5, 11, 12})
    void anOverfilledBottleBreaksDensityAndStart(double pounds) {
        List<Kind> kinds = broken(check(pounds, 32));
        assertTrue(kinds.containsAll(List.of(Kind.FILLING_DENSITY, Kind.START_TEMPERATURE, Kind.START_PRESSURE_HIGH)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {13, 14, 15, 16, 30, 0.2})
    void noChargeIsTooMuchToBeJudged(double pounds) {
        for (double celsius = -20; celsius <= 60; celsius += 5) {
            FillingCheck check = check(pounds, celsius);
            assertTrue(check.start().pressure() <= ChargePressure.HIGHEST);
            assertEquals(pounds > 10.05, broken(check).contains(Kind.FILLING_DENSITY));
            assertEquals(check.start().pressure(), BOTTLE.pressureAt(pounds * POUND, celsius + 273.15));
            assertTrue(check.soak().pressure() >= check.start().pressure() || celsius > 50);
        }
        assertEquals(pounds >= 14, check(pounds, 50).start().beyond());
    }

    @Test
    void theWordsInviteNobodyToMoveALimit() {
        for (FillingLimit limit : check(15, 34).limits()) {
            String reason = limit.reason(Figures.SI).toLowerCase(Locale.ROOT);
            assertFalse(reason.matches(".*(relieve|loosen|raise|switch off).*"), reason);
            assertEquals(!limit.holds(), reason.contains("this limit is not to be moved"), reason);
        }
        assertTrue(check(15, 34)
                .find(Kind.START_PRESSURE_DISC)
                .orElseThrow()
                .reason(Figures.SI)
                .contains("beyond 500.0 bar absolute, outside the equation of state"));
    }

    @Test
    void boundsMayOnlyGetStricter() {
        Filling filling = Filling.of(BOTTLE, 4, MARKED, 295, 323, 45e5, 70e5);
        assertThrows(IllegalArgumentException.class, () -> filling.stricter(0.75, 0.9));
        assertThrows(IllegalArgumentException.class, () -> filling.stricter(0.68, 1));
        FillingCheck strict = FillingCheck.of(filling.stricter(0.55, 0.7));
        assertTrue(broken(strict).contains(Kind.FILLING_DENSITY));
    }

    // a disc rated for the test pressure on a cylinder with a smaller marking, and a cylinder nobody has looked at
    @Test
    void markingAndDiscAreTwoFigures() {
        Cylinder weak = new Cylinder(1300 * PSI + ATMOSPHERE, 3000 * PSI + ATMOSPHERE);
        List<Kind> kinds = broken(FillingCheck.of(Filling.of(BOTTLE, 4, weak, 295, 323, 45e5, 70e5)));
        assertEquals(List.of(Kind.SERVICE_PRESSURE, Kind.DISC_RATING), kinds);
        FillingCheck unread = FillingCheck.of(Filling.of(BOTTLE, 4, Cylinder.unread(), 295, 323, 45e5, 70e5));
        assertEquals(5, unread.broken().size());
        assertTrue(unread.broken().get(0).reason(Figures.SI).contains("read the marking"));
    }

    @Test
    void theHeaterTurnsOffBeforeLiquidFillsTheBottle() {
        Filling filling = Filling.of(BOTTLE, 10 * POUND, MARKED, 300, 323, 45e5, 73e5);
        assertEquals(List.of(Kind.HEATER_OFF), broken(FillingCheck.of(filling.withHeaterOff(305.15))));
        assertEquals(List.of(), broken(FillingCheck.of(filling.withHeaterOff(303.15))));
    }
}
