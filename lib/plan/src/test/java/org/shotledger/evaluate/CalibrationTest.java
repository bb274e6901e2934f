package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.boost.Turbine;
import org.shotledger.car.BasePull;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.Turbo;
import org.shotledger.job.Job;
import org.shotledger.setup.Setup;

/** A calibrated car gives back what was measured on it: power, exhaust temperature, and its own pull as the bound of knock. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CalibrationTest {
    private static final double HP = 745.6998715822702;
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Setup SETUP = JOB.setup();
    private static final BasePull PULL = JOB.car().basePull();
    /** The sheet: 590 hp at 6800 rpm with 1.85 bar. */
    private static final double RPM = 6800;

    private static Car measured(BasePull pull) {
        Car car = JOB.car();
        return car.with(EngineModel.uncalibrated(
                        car.engine(), car.friction(), car.model().cycles()))
                .with(pull);
    }

    private static BasePull pull(BasePull.Point... points) {
        return new BasePull(
                PULL.air(), PULL.fuel(), PULL.lambda(), List.of(points), PULL.uncertainty(), PULL.correction());
    }

    private static OperatingPoint pulled(Car car, double rpm, double gauge) {
        return Calibration.pulled(car, SETUP, rpm, gauge).orElseThrow();
    }

    @Test
    void the_pull_is_given_back_with_its_exhaust_and_its_knock() {
        Car car = Calibration.of(measured(PULL), SETUP);
        OperatingPoint point = pulled(car, RPM, 1.85e5);
        assertEquals(590 * HP, point.wheelPower(), 1e-5 * 590 * HP);
        assertEquals(930 + 273.15, point.exhaustTemperature(), 1);
        // its knock is worked out at eighths of the speeds from 2400 to 8000 rpm; between them lies a straight line
        assertEquals(1, pulled(car, 6600, 1.85e5).cylinder().knock(), 0.005);
        assertEquals(1, pulled(car, 5900, 1.85e5).cylinder().knock(), 0.005);
        assertEquals(
                point.shaft().exhaustPressure() / point.plenumPressure(),
                car.model().backPressure(),
                0.01 * car.model().backPressure());
        assertEquals(0, point.nitrous().massFlow());
        assertEquals(0.80, point.lambda(), 1e-3);
        var knock = car.model().baseKnock().orElseThrow();
        // at 7300 rpm and above the pull's boost lies beyond the compressor map
        assertEquals(6600, knock.high(), 1e-9);
        assertTrue(knock.low() >= 0.3 * 8000 && knock.ordinates().length >= 3);
    }

    /** An engine that makes more of its air: the closed cycle of one cylinder gives what is indicated in it, six of them at half the turns. */
    @Test
    void the_heat_loss_of_the_cylinder_is_that_of_the_pull() {
        Car car = Calibration.of(measured(pull(new BasePull.Point(RPM, 1.85e5, 680 * HP))), SETUP);
        OperatingPoint point = pulled(car, RPM, 1.85e5);
        double work = car.model().cylinder().run(point.cylinder().base()).work();
        assertEquals(point.power().indicated() / (6 * RPM / 120), work, 0.005 * work);
    }

    /** Two points of one pull: their powers are met in sum, and each boost is held where it is the nearest. */
    @Test
    void several_points_are_met_in_sum() {
        BasePull two = pull(new BasePull.Point(5500, 1.6e5, 430 * HP), new BasePull.Point(RPM, 1.85e5, 590 * HP));
        Car car = Calibration.of(measured(two), SETUP);
        double sum =
                pulled(car, 5500, 1.6e5).wheelPower() + pulled(car, RPM, 1.85e5).wheelPower();
        assertEquals(1020 * HP, sum, 1e-5 * sum);
        assertEquals(1, pulled(car, 5200, 1.6e5).cylinder().knock(), 0.005);
        assertEquals(1, pulled(car, 5900, 1.6e5).cylinder().knock(), 0.005);
        assertEquals(1, pulled(car, 6600, 1.85e5).cylinder().knock(), 0.005);
    }

    @Test
    void a_power_that_the_air_cannot_give_is_refused_with_both_ends() {
        String much = refused(pull(new BasePull.Point(RPM, 1.85e5, 900 * HP)));
        assertTrue(much.startsWith("The base pull gives 900 hp (") && much.contains("it can only lie from "), much);
        assertFalse(much.contains("on average"), much);
        String little = refused(pull(new BasePull.Point(RPM, 1.85e5, 150 * HP)));
        assertTrue(little.startsWith("The base pull gives 150 hp ("), little);
        String two =
                refused(pull(new BasePull.Point(5500, 1.6e5, 800 * HP), new BasePull.Point(RPM, 1.85e5, 900 * HP)));
        assertTrue(two.startsWith("The base pull gives 850 hp (") && two.contains("on average"), two);
        double mean = hp(two.replaceFirst("(?s).* to ", ""));
        assertTrue(mean > 430 && mean < 850 && hp(two.replaceFirst("(?s).*lie from ", "")) < 0.5 * mean, two);
        // the ends are those of an engine that reaches four tenths, and all, of the cycle's work
        double most = hp(much.replaceFirst("(?s).* to ", ""));
        double least = hp(much.replaceFirst("(?s).*lie from ", ""));
        assertTrue(least > 150 && least < 0.5 * most && most > 590 && most < 900, much);
    }

    private static double hp(String text) {
        return Double.parseDouble(text.replaceFirst("(?s) hp.*", ""));
    }

    @Test
    void a_pull_without_an_answer_says_where_and_why() {
        String said = refused(pull(new BasePull.Point(RPM, 1.85e5, 590 * HP), new BasePull.Point(7000, 4e5, 600 * HP)));
        assertTrue(said.startsWith("The base pull at 7000 rpm and 58.0 psi gauge"), said);
        assertTrue(said.contains("of the compressor map. Check boost"), said);
        assertEquals(Optional.empty(), Calibration.pulled(JOB.car(), SETUP, 7000, 4e5));
    }

    @Test
    void a_turbine_that_never_gives_the_boost_is_named() {
        Turbo turbo = JOB.car().turbo();
        Turbine old = turbo.turbine();
        Car idle = measured(PULL)
                .with(new Turbo(
                        turbo.map(),
                        new Turbine(
                                old.name(), 5000e-6, old.efficiency(), old.mechanicalEfficiency(), old.exhaustLoss()),
                        turbo.inlet(),
                        turbo.cooler(),
                        turbo.exhaustTemperature(),
                        turbo.boostCeiling()));
        String said = assertThrows(IllegalArgumentException.class, () -> Calibration.of(idle, SETUP))
                .getMessage();
        assertTrue(said.startsWith("By its own figures the turbocharger gives the base pull no boost"), said);
    }

    private static String refused(BasePull pull) {
        return assertThrows(IllegalArgumentException.class, () -> Calibration.of(measured(pull), SETUP))
                .getMessage();
    }
}
