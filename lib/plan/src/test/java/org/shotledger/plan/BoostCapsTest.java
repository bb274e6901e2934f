package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.boost.Turbine;
import org.shotledger.car.Car;
import org.shotledger.car.OtherLimits;
import org.shotledger.car.Turbo;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** The most boost a search may use: every case keeps its margins there, and somewhat more would not. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BoostCapsTest {
    private static final double PSI = 6894.757293168361;
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Case COLD = JOB.cases().stream()
            .filter(at -> at.name().equals("cold"))
            .findFirst()
            .orElseThrow();
    private static final List<CaseModel> CASES = List.of(model(JOB.stated()), model(COLD));
    private static final List<String> OF_BOOST =
            List.of("peak-pressure", "crank-torque", "knock", "turbo-speed", "boost-ceiling", "compressor-choke");

    private static CaseModel model(Case at) {
        Setup base = JOB.setup().withBoost(BoostTarget.constant(CAR.turbo().boostCeiling()));
        return CaseModel.of(CAR, base, new JetPair(1e-3, 0.56e-3), at, Double.NaN);
    }

    private static double least(OperatingPoint point) {
        return PointLimits.all(CAR, point, "").stream()
                .filter(limit -> OF_BOOST.contains(limit.key()))
                .mapToDouble(limit -> limit.relativeMargin())
                .min()
                .orElseThrow();
    }

    @Test
    void alone_every_case_keeps_its_margin_and_a_little_more_boost_would_not() {
        BoostTable table = new BoostCaps(CAR, CASES).alone(new double[] {5500, 7000});
        for (BoostTable.Step step : table.steps()) {
            double steps = step.gaugePressure() / (0.1 * PSI);
            assertEquals(Math.rint(steps), steps, 1e-6, "a tenth of a psi");
            for (CaseModel at : CASES) {
                OperatingPoint point = at.off(step.rpm(), step.gaugePressure()).orElseThrow();
                assertTrue(point.shaft().holdsBoost());
                assertTrue(least(point) >= 0.055 - 1e-6, step + ": " + least(point));
            }
            double more = step.gaugePressure() + 0.3 * PSI;
            boolean beyond = more > 0.95 * CAR.turbo().boostCeiling();
            boolean some = CASES.stream()
                    .map(at -> at.off(step.rpm(), more))
                    .anyMatch(point -> point.filter(p -> p.shaft().holdsBoost() && least(p) >= 0.055)
                            .isEmpty());
            assertTrue(beyond || some, step + " could be more");
        }
    }

    /** Piston speed has 1.5 % left at 7000 rpm, whatever the boost: that must not take the boost away. */
    @Test
    void a_limit_that_boost_does_not_move_does_not_hold_it_down() {
        Car slow = OtherLimits.of(CAR, Map.of("pistonSpeed", 2 * 84.6e-3 * 7000 / 60 * 1.015));
        double[] one = {7000};
        assertEquals(new BoostCaps(CAR, CASES).alone(one), new BoostCaps(slow, CASES).alone(one));
    }

    /** A turbine too large for the compressor: the cap is what it holds, though every limit would bear more. */
    @Test
    void the_cap_is_no_more_than_the_turbine_holds() {
        Turbo turbo = CAR.turbo();
        Turbine old = turbo.turbine();
        Car weak = CAR.with(new Turbo(
                turbo.map(),
                new Turbine(old.name(), 2400e-6, old.efficiency(), old.mechanicalEfficiency(), old.exhaustLoss()),
                turbo.inlet(),
                turbo.cooler(),
                turbo.exhaustTemperature(),
                turbo.boostCeiling()));
        Setup base = JOB.setup().withBoost(BoostTarget.constant(1.85e5));
        CaseModel model = CaseModel.of(weak, base, new JetPair(1e-3, 0.56e-3), JOB.stated(), Double.NaN);
        double cap =
                new BoostCaps(weak, List.of(model)).alone(new double[] {7000}).at(7000);
        assertTrue(cap > 0.4e5, "Pa: " + cap);
        assertTrue(model.off(7000, cap).orElseThrow().shaft().holdsBoost());
        assertTrue(!model.off(7000, cap + 0.3 * PSI).orElseThrow().shaft().holdsBoost());
    }

    @Test
    void with_a_shot_the_boost_comes_down_until_torque_and_pressure_have_their_margin() {
        BoostCaps caps = new BoostCaps(CAR, CASES);
        Shot shot = new Shot(0.15, 0.6e-3);
        CaseModel heaviest = caps.heaviest(7000, 1.4e5, shot);
        double held = caps.withShot(7000, 1.4e5, shot, heaviest);
        double load = PointLimits.load(CAR, heaviest.on(7000, held, shot).orElseThrow());
        assertTrue(held < 1.4e5 && load <= (1 - 0.055) * 1.001, "load " + load);
        assertTrue(load > 0.9, "no more is taken back than must be: load " + load);
        double little = caps.withShot(7000, 0.3e5, shot, heaviest);
        assertEquals(0.3e5, little, "where there is room nothing is taken back");
        for (CaseModel at : CASES) {
            assertTrue(load(at, shot) <= load(heaviest, shot));
        }
        assertSame(CASES.get(1), heaviest, "cold air is denser");
    }

    private static double load(CaseModel at, Shot shot) {
        return at.on(7000, 1.4e5, shot).map(p -> PointLimits.load(CAR, p)).orElse(0.0);
    }

    /** The flow of a shot is that of the target's case; another case passes as much more as its own feed path does. */
    @Test
    void a_case_scales_one_feed_path() {
        CaseModel stated = CASES.get(0);
        assertEquals(0.12, stated.feed(0.12).massFlow(), 1e-9);
        CaseModel cold = CaseModel.of(
                CAR,
                JOB.setup().withBoost(BoostTarget.constant(1.85e5)),
                new JetPair(1e-3, 0.56e-3),
                JOB.stated().withBottle(org.shotledger.setup.BottleState.at(285)),
                stated.referenceFlow());
        double share = cold.referenceFlow() / stated.referenceFlow();
        assertTrue(share < 0.9, "a colder bottle passes less: " + share);
        assertEquals(0.12 * share, cold.feed(0.12).massFlow(), 1e-9);
        OperatingPoint point = stated.point(7000, 1.0e5, new Shot(0.12, 0.56e-3));
        assertEquals(0.12, point.nitrous().massFlow(), 1e-9);
        assertEquals(stated.ambient() + 1.0e5, point.plenumPressure(), 1e-6);
        assertEquals(Optional.empty(), stated.on(20_000, 1.0e5, new Shot(0.12, 0.56e-3)));
        assertEquals(Optional.empty(), stated.off(20_000, 1.0e5));
    }

    /** Every limit bears more than the builder's ceiling: 94.5 % of 0.8 bar are 10.97 psi, so 10.9. */
    @Test
    void alone_the_boost_ends_below_the_builders_ceiling() {
        Turbo turbo = CAR.turbo();
        Car low = CAR.with(new Turbo(
                turbo.map(), turbo.turbine(), turbo.inlet(), turbo.cooler(), turbo.exhaustTemperature(), 0.8e5));
        assertEquals(
                10.9 * PSI, new BoostCaps(low, CASES).alone(new double[] {6500}).at(6500), 1e-6 * PSI);
    }

    /** No boost keeps a torque limit of 50 N m: the least of the twelve steps at which there is an answer comes nearest. */
    @Test
    void where_no_boost_keeps_the_margins_the_nearest_is_taken() {
        Car weak = OtherLimits.of(CAR, Map.of("crankTorque", 50.0));
        double cap = 0.95 * CAR.turbo().boostCeiling();
        int least = 1;
        while (CASES.get(0)
                .off(7000, cap * least / 12)
                .filter(p -> p.shaft().holdsBoost())
                .isEmpty()) {
            least++;
        }
        assertTrue(least < 8, "an answer at low boost");
        double found = new BoostCaps(weak, List.of(CASES.get(0)))
                .alone(new double[] {7000})
                .at(7000);
        assertEquals(BoostCaps.roundedDown(cap * least / 12), found, 1e-6);
    }

    @Test
    void without_an_answer_the_boost_held_stays_and_without_boost_nothing_is_taken_back() {
        BoostCaps caps = new BoostCaps(CAR, CASES);
        Shot shot = new Shot(0.15, 0.6e-3);
        assertEquals(1.4e5, caps.withShot(20_000, 1.4e5, shot, CASES.get(0)));
        assertSame(CASES.get(0), caps.heaviest(20_000, 1.4e5, shot), "no case has an answer: the stated one");
    }

    /** Worked out anew, as what a class has once for all its tests is not: a twentieth of a bar more of plenum does not move a choked flow. */
    @Test
    void a_case_is_made_anew() {
        CaseModel stated = model(JOB.stated());
        assertEquals(0.12, stated.feed(0.12).massFlow(), 1e-9);
        double flow = stated.model().nitrousFlow(stated.ambient() + 1e5, 1e-3);
        assertEquals(flow, stated.referenceFlow(), 1e-6 * flow);
        assertEquals(JOB.stated().air().pressure(), stated.ambient());
    }
}
