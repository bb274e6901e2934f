package org.shotledger.bottle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.shotledger.bottle.FillingLimit.Kind;

/** Areas, pressures and limits of a bottle by hand, the words in which a limit is told, and what is refused. */
class BottleFiguresTest {
    private static final Bottle TEN = new Bottle(10e-3, 12, 900);
    private static final Cylinder MARKED = new Cylinder(125e5, 200e5);

    // inside three times as long as wide: 0.2 m wide, V = pi/4 D^2 3 D = 18.85 L, A = pi D 3 D + 2 pi/4 D^2 = 0.4398 m2
    @Test
    void areasFollowFromTheWaterCapacity() {
        Bottle bottle = new Bottle(Math.PI / 4 * 0.2 * 0.2 * 0.6, 12, 900);
        assertEquals(0.439823, bottle.wallArea(), 1e-6);
        assertEquals(1.15 * 0.439823, bottle.outerArea(), 1e-6);
        assertEquals(0.68, TEN.fillingDensity(6.8), 1e-12);
    }

    // vapour pressure at 20 degC: 50.5 bar (handbooks); one pressure for every charge that leaves room for vapour
    @Test
    void liquidWithVapourHasOnePressureAndThinVapourIsAnIdealGas() {
        assertEquals(50.5e5, TEN.pressureAt(3, 293.15), 0.3e5);
        assertEquals(TEN.pressureAt(3, 293.15), TEN.pressureAt(6.5, 293.15));
        assertTrue(TEN.pressureAt(8, 293.15) > 1.05 * TEN.pressureAt(3, 293.15), "0.8 kg/L is liquid-full");
        double ideal = 1 * 8.314462618 / 0.0440128 * 300;
        assertEquals(ideal, TEN.pressureAt(0.01, 300), 0.01 * ideal);
        // Lemmon and Span, 2006: critical at 309.52 K, 72.45 bar, 452 kg/m3
        assertEquals(72.45e5, TEN.pressureAt(4.52, 309.52), 0.05e5);
        assertTrue(TEN.pressureAt(4.52, 320) > 80e5);
    }

    @Test
    void whatIsBeyondTheEquationIsSaidAndNotRefused() {
        assertEquals(new ChargePressure(50e6, true), ChargePressure.of(TEN, 12.6, 200));
        assertEquals(new ChargePressure(50e6, true), ChargePressure.of(TEN, 11, 320));
        assertFalse(ChargePressure.of(TEN, 6.8, 330).beyond());
        assertTrue(Double.isNaN(ChargePressure.liquidFullTemperature(TEN, 4.4)));
        double nearly = ChargePressure.liquidFullTemperature(TEN, 5);
        assertTrue(nearly > 305 && nearly < 309.52, "K: " + nearly);
        assertEquals(182.33, ChargePressure.liquidFullTemperature(TEN, 12.6), 0.01);
    }

    @Test
    void aBottleIsChargedWithWhatItCanHold() {
        Charge charge = TEN.charged(6, 293.15);
        assertEquals(6, charge.mass());
        assertEquals(600, charge.state().density(), 1e-6);
        assertEquals(293.15, charge.wallTemperature());
        // of the volume the liquid takes what its density gives: m = rho' V' + rho'' V''
        double liquid = charge.liquidMass();
        assertEquals(6, liquid + charge.vapourMass(), 1e-12);
        assertTrue(liquid > 5 && liquid < 6);
        refused(
                "is not possible",
                () -> TEN.charged(0, 293.15),
                () -> TEN.charged(12.5, 200),
                () -> TEN.charged(-1, 293));
        refused("it may hold 6.8", () -> TEN.charged(11, 320));
    }

    @Test
    void figuresOfBottleAndCylinderHaveTheirRanges() {
        refused("water capacity", () -> new Bottle(0.9e-6, 1, 900), () -> new Bottle(11, 1, 900));
        refused("wall mass", () -> new Bottle(0.01, -1, 900), () -> new Bottle(0.01, 1.1e4, 900));
        refused("wall specific heat", () -> new Bottle(0.01, 1, -1), () -> new Bottle(0.01, 1, 1.1e4));
        refused("wall area", () -> new Bottle(0.01, 1, 900, -1, 1), () -> new Bottle(0.01, 1, 900, 1001, 1));
        refused("outer area", () -> new Bottle(0.01, 1, 900, 1, -1), () -> new Bottle(0.01, 1, 900, 1, 1001));
        assertEquals(10, new Bottle(10, 0, 0, 0, 0).waterCapacity(), "the ends of a range are in it");
        refused("service pressure", () -> new Cylinder(9.9e5, 200e5), () -> new Cylinder(1001e5, 200e5));
        refused("disc", () -> new Cylinder(125e5, 9.9e5), () -> new Cylinder(125e5, 1001e5));
        assertEquals(10e5, new Cylinder(10e5, 1000e5).servicePressure());
        assertEquals(125e5 * 5 / 3, MARKED.testPressure(), 1);
        assertTrue(Double.isNaN(Cylinder.unread().testPressure()));
        refused("charge", () -> Filling.of(TEN, 0, MARKED, 295, 323, 45e5, 70e5));
        refused("start temperature", () -> Filling.of(TEN, 6, MARKED, 182, 323, 45e5, 70e5));
        refused("hottest soak", () -> Filling.of(TEN, 6, MARKED, 295, 526, 45e5, 70e5));
        refused("lowest working", () -> Filling.of(TEN, 6, MARKED, 295, 323, 71e5, 70e5));
    }

    private static void refused(String name, Executable... attempts) {
        Stream.of(attempts).forEach(attempt -> {
            String said = assertThrows(IllegalArgumentException.class, attempt).getMessage();
            assertTrue(said.contains(name), said);
        });
    }

    private static String said(double charge, Kind kind) {
        return FillingCheck.of(Filling.of(TEN, charge, MARKED, 298.15, 323.15, 45e5, 70e5)
                        .withHeaterOff(303.15))
                .find(kind)
                .orElseThrow()
                .reason(Figures.SI);
    }

    // 0.68 kg/L is full of liquid from 30.6 degC on (independent implementation of the same equation of state)
    @Test
    void everyLimitSaysItsValueItsBoundAndItsRule() {
        assertEquals(
                "The charge per water capacity is 0.620 kg per litre; 49 CFR 173.304a(a)(2) allows 0.680 kg per litre for nitrous"
                        + " oxide, 6.80 kg in this bottle by scale.",
                said(6.2, Kind.FILLING_DENSITY));
        assertEquals(
                "The charge per water capacity is 0.750 kg per litre; 49 CFR 173.304a(a)(2) allows 0.680 kg per litre for nitrous"
                        + " oxide, 6.80 kg in this bottle by scale: change the part, the charge or the target; this limit is not"
                        + " to be moved.",
                said(7.5, Kind.FILLING_DENSITY));
        assertEquals(
                "The start temperature is 25.0 degC; liquid fills the bottle from 30.6 degC on.",
                said(6.8, Kind.START_TEMPERATURE));
        assertEquals(
                "The temperature at which the heater turns off is 30.0 degC; liquid fills the bottle from 30.6 degC on.",
                said(6.8, Kind.HEATER_OFF));
        assertEquals(
                "The start temperature is 25.0 degC; so small a charge never fills the bottle with liquid.",
                said(2, Kind.START_TEMPERATURE));
        assertEquals(
                "The service pressure stamped on the cylinder is 125.0 bar absolute; the cylinders listed in 49 CFR"
                        + " 173.304a(a)(2) for this filling are marked 124.1 bar absolute or more.",
                said(6.2, Kind.SERVICE_PRESSURE));
        // the barometer of the place is allowed for: 5/3 of 125 bar and 1.1 bar
        assertEquals(
                "The burst rating of the disc is 200.0 bar absolute; a disc bursts at the latest at the cylinder's test pressure,"
                        + " 209.4 bar absolute.",
                said(6.2, Kind.DISC_RATING));
        assertTrue(said(6.2, Kind.PRESSURE_AT_21).endsWith("allows the service pressure, 125.0 bar absolute."));
        assertTrue(said(6.2, Kind.START_PRESSURE_HIGH).endsWith("the highest working pressure is 70.0 bar absolute."));
        assertTrue(said(6.2, Kind.START_PRESSURE_LOW).endsWith("the lowest working pressure is 45.0 bar absolute."));
        assertTrue(said(6.2, Kind.START_PRESSURE_DISC).endsWith("the disc may open from 180.0 bar absolute on."));
        assertTrue(said(6.2, Kind.SOAK_PRESSURE_DISC).endsWith("the disc may open from 180.0 bar absolute on."));
    }

    @Test
    void aFigureAtItsBoundHoldsAndOneThatIsNotReadDoesNot() {
        assertTrue(new FillingLimit(Kind.START_PRESSURE_HIGH, 70e5, 70e5, false, 6).holds());
        assertTrue(new FillingLimit(Kind.START_PRESSURE_LOW, 45e5, 45e5, false, 6).holds());
        assertFalse(new FillingLimit(Kind.START_PRESSURE_LOW, 44e5, 45e5, false, 6).holds());
        assertFalse(
                new FillingLimit(Kind.START_PRESSURE_HIGH, 50e6, 60e6, true, 6).holds(),
                "beyond is more than its figure");
        for (FillingLimit unread : new FillingLimit[] {
            new FillingLimit(Kind.DISC_RATING, Double.NaN, 200e5, false, 6),
            new FillingLimit(Kind.PRESSURE_AT_21, 50e5, Double.NaN, false, 6)
        }) {
            assertFalse(unread.holds());
            assertTrue(unread.reason(Figures.SI).contains("cannot be judged"), unread.reason(Figures.SI));
        }
        assertTrue(Kind.PRESSURE_AT_21.upper());
        assertFalse(Kind.SERVICE_PRESSURE.upper());
        assertEquals("pressure at 21 degC", Kind.PRESSURE_AT_21.words());
    }
}
