package org.shotledger.track;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.boost.ChargeCooler;
import org.shotledger.boost.FlowLoss;
import org.shotledger.bottle.PassEnd;
import org.shotledger.car.Car;
import org.shotledger.car.Turbo;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PassOutcome.Moment;
import org.shotledger.evaluate.PointModel;
import org.shotledger.job.Job;
import org.shotledger.limits.Limits;
import org.shotledger.nitrous.JetPair;
import org.shotledger.pass.NitrousSupply;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** The field at its nodes is the model itself; the shaft, the wastegate and the bottle beside it by hand. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class EngineFieldTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final BoostTable OFF = BoostTable.of(new double[] {1000, 9000}, new double[] {0.8e5, 0.8e5});
    private static final BoostTable ARMED = BoostTable.of(new double[] {1000, 9000}, new double[] {1.2e5, 1.2e5});
    private static final Setup SETUP =
            JOB.setup().withBoost(new BoostTarget(OFF, ARMED, 5_000)).withJets(new JetPair(1.0e-3, 0.52e-3));
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final PointModel MODEL = Evaluate.model(CAR, SETUP, AT);
    private static final double AMBIENT = AT.air().pressure();
    /** Two thirds of the way of twelve steps over the engine speeds. */
    private static final double RPM = speed();
    /** The fourth of six steps of 20 kPa. */
    private static final double PLENUM = AMBIENT + 0.8e5;

    private static double speed() {
        double low = CAR.engine().volumetricEfficiency().low();
        return low + (CAR.engine().highestRpm() - low) * 8 / 12;
    }

    private static Outcome outcome(Setup setup, Optional<PassOutcome> pass, OperatingPoint... armed) {
        return new Outcome(CAR, setup, AT, List.of(), List.of(armed), List.of(), pass, new Limits(List.of()));
    }

    private static EngineField field(Setup setup) {
        return EngineField.of(outcome(setup, Optional.empty()));
    }

    private static OperatingPoint off(double plenum) {
        return MODEL.at(RPM, plenum, Mode.BOOST_ALONE);
    }

    private static OperatingPoint on(double plenum) {
        return MODEL.at(RPM, plenum, Mode.NITROUS);
    }

    private static double shaft(OperatingPoint point) {
        return point.compressor().rpm() * Math.PI / 30;
    }

    private static double part(double nitrous, double off, double on) {
        return (1 - nitrous) * off + nitrous * on;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.25, 1})
    void at_a_node_every_figure_is_that_of_the_model_and_between_closed_and_open_its_part(double nitrous) {
        EngineField field = field(SETUP);
        OperatingPoint off = off(PLENUM);
        OperatingPoint on = on(PLENUM);
        assertSameFigure(
                part(nitrous, off.crankTorque(), on.crankTorque()), field.torque(RPM, PLENUM, nitrous), "torque");
        assertSameFigure(part(nitrous, off.lambda(), on.lambda()), field.lambda(RPM, PLENUM, nitrous), "lambda");
        assertSameFigure(
                part(nitrous, off.cylinder().peakPressure(), on.cylinder().peakPressure()),
                field.peak(RPM, PLENUM, nitrous),
                "peak pressure");
        assertSameFigure(
                part(nitrous, MODEL.shaftSurplus(off), MODEL.shaftSurplus(on)),
                field.surplus(RPM, PLENUM, nitrous),
                "surplus");
        assertSameFigure(
                part(
                        nitrous,
                        off.main().massFlow(),
                        on.main().massFlow() + on.nitrousFuel().massFlow()),
                field.fuel(RPM, PLENUM, nitrous),
                "both fuels");
    }

    private static void assertSameFigure(double expected, double figure, String what) {
        assertEquals(expected, figure, 1e-6 * Math.abs(expected), what);
    }

    @Test
    void the_field_ends_with_the_breathing_the_ambient_and_the_boost_that_is_asked_for() {
        EngineField field = field(SETUP);
        assertEquals(AMBIENT, field.ambient);
        assertEquals(CAR.engine().highestRpm(), field.highestRpm);
        double top = AMBIENT + 1.2e5;
        assertSameFigure(shaft(on(top)), field.shaftWanted(RPM, 1), "armed boost");
        assertSameFigure(part(0.5, shaft(off(top)), shaft(on(top))), field.shaftWanted(RPM, 0.5), "half open");
        // without jets nothing is armed
        assertSameFigure(shaft(off(PLENUM)), field(SETUP.withoutJets()).shaftWanted(RPM, 1), "boost alone");
        assertEquals(
                field.torque(RPM, top, 1), field.torque(RPM, top + 5e4, 1), 1e-9, "nothing is known above: it holds");
    }

    /** At the shaft speed of a node the plenum is the node's; half way to the next, half way; beyond both ends it holds. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1})
    void the_plenum_follows_from_the_shaft(double nitrous) {
        EngineField field = field(SETUP);
        double low = part(nitrous, shaft(off(PLENUM)), shaft(on(PLENUM)));
        double high = part(nitrous, shaft(off(PLENUM + 0.2e5)), shaft(on(PLENUM + 0.2e5)));
        assertTrue(high > 1.01 * low);
        assertEquals(PLENUM, field.plenum(RPM, low, nitrous), 10);
        assertEquals(PLENUM + 0.1e5, field.plenum(RPM, (low + high) / 2, nitrous), 10);
        assertEquals(PLENUM + 0.05e5, field.plenum(RPM, low + 0.25 * (high - low), nitrous), 10);
        assertEquals(AMBIENT, field.plenum(RPM, 0, nitrous), 1e-6);
        assertEquals(AMBIENT + 1.2e5, field.plenum(RPM, 1e6, nitrous), 1e-6);
    }

    /** Coasting falls to the shaft without boost with a second; the wastegate brings it to the target with a twentieth; between, its inertia. */
    @Test
    void the_shaft_takes_the_slower_of_its_inertia_and_the_wastegate() {
        EngineField field = field(SETUP);
        FieldEngine engine = new FieldEngine(field, 1e-4, 4500);
        double idle = field.shaftWithoutBoost(RPM);
        double wanted = field.shaftWanted(RPM, 0);
        double half = (idle + wanted) / 2;
        assertEquals(field.shaftWithoutBoost(4500), engine.turboAtStart());
        assertTrue(engine.turboAtStart() > 0 && idle < wanted);
        assertEquals(idle - half, engine.turboRate(RPM, 0, half, 0), 1e-9 * wanted);
        assertEquals(idle - half, engine.turboRate(RPM, -1, half, 0), 1e-9 * wanted);
        double surplus = field.surplus(RPM, field.plenum(RPM, half, 0), 0);
        assertTrue(surplus > 0);
        double wastegate = (wanted - half) / 0.05;
        // so heavy a shaft is slower than the wastegate, so light a one is held by it
        double heavy = surplus / (half * wastegate / 2);
        assertEquals(wastegate / 2, new FieldEngine(field, heavy, 4500).turboRate(RPM, 1, half, 0), 1e-6 * wastegate);
        double light = surplus / (half * wastegate * 2);
        assertEquals(wastegate, new FieldEngine(field, light, 4500).turboRate(RPM, 1, half, 0), 1e-6 * wastegate);
        // a trial step at a standing shaft is taken as 100 rad/s
        double still = field.surplus(RPM, AMBIENT, 0) / (1 * 100);
        assertEquals(still, new FieldEngine(field, 1, 4500).turboRate(RPM, 1, 0, 0), 1e-9 * Math.abs(still));
        assertSameFigure(on(PLENUM).crankTorque(), engine.torque(RPM, 1, shaft(on(PLENUM)), 1), "torque by the shaft");
    }

    private static Moment moment(double time, double flow, double lambda, double power) {
        return new Moment(time, 298, 5.5e6, 4, flow, lambda, power);
    }

    /** A moment without an answer is left out: 0.1 and 0.06 kg/s over 4 s are 0.32 kg. The shot fades to what is above the closed engine. */
    @Test
    void the_bottle_of_an_outcome_fades_against_the_same_boost_without_nitrous() {
        OperatingPoint on = on(PLENUM);
        double closed = off(PLENUM).wheelPower();
        double gain = on.wheelPower() - closed;
        PassOutcome pass = new PassOutcome(
                1,
                List.of(
                        moment(0, 0.10, 0.78, on.wheelPower()),
                        moment(1, 5, Double.NaN, on.wheelPower()),
                        moment(2, 5, 0.78, Double.NaN),
                        moment(4, 0.06, 0.75, closed + gain / 2)),
                4,
                0.32,
                PassEnd.FULL_TIME,
                1,
                1);
        Outcome outcome = outcome(SETUP, Optional.of(pass), on);
        BottleOverMass bottle = (BottleOverMass) BottleOverMass.of(outcome, EngineField.of(outcome));
        assertEquals(0.32, bottle.known(), 1e-12);
        assertEquals(1, bottle.strength(0), 1e-9);
        assertEquals(0.5, bottle.strength(0.32), 1e-6);
        assertEquals(0.08, bottle.massFlow(0.16), 1e-12);
        assertEquals(-0.03, bottle.lambdaChange(0.5), 1e-12, "the last state holds");
    }

    /** Behind a blocked charge cooler, 0.9 bar at 10 g/s and 81 times that at 90, no engine speed has an answer. */
    @Test
    void an_engine_without_any_answer_has_no_pass() {
        Turbo own = CAR.turbo();
        ChargeCooler blocked = new ChargeCooler("blocked", 0.7, new FlowLoss("blocked", 9e4, 0.01, 3));
        Car car = CAR.with(new Turbo(
                own.map(), own.turbine(), own.inlet(), blocked, own.exhaustTemperature(), own.boostCeiling()));
        Outcome none =
                new Outcome(car, SETUP, AT, List.of(), List.of(), List.of(), Optional.empty(), new Limits(List.of()));
        String said = assertThrows(IllegalArgumentException.class, () -> EngineField.of(none))
                .getMessage();
        assertEquals(
                "The models have no answer at any engine speed with the nitrous closed; a pass in time needs one.",
                said);
    }

    @Test
    void two_moments_are_a_bottle_and_one_is_none() {
        OperatingPoint on = on(PLENUM);
        List<Moment> two = List.of(moment(0, 0.1, 0.78, on.wheelPower()), moment(1, 0.1, 0.78, on.wheelPower()));
        for (int n = 1; n <= 2; n++) {
            PassOutcome pass = new PassOutcome(1, two.subList(0, n), 1, 0.1, PassEnd.FULL_TIME, 1, 1);
            Outcome outcome = outcome(SETUP, Optional.of(pass), on);
            NitrousSupply supply = BottleOverMass.of(outcome, EngineField.of(outcome));
            assertEquals(n == 2, supply instanceof BottleOverMass);
            if (n == 1) {
                assertSame(NitrousSupply.NONE, supply);
            }
        }
    }
}
