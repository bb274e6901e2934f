package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;
import org.shotledger.flow.FlowTestPlan;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FlowTestRig;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.TestBottle;
import org.shotledger.nitrous.TestInstruments;
import org.shotledger.nitrous.WetKit;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.units.Require;

/**
 * Which flow test of a plan's jets to make first, what it is worth and what it costs, before it is made.
 *
 * <p>Each test is made on paper: the reading that is expected is given to the same {@link FlowTestRig} that reads the flow tests of a
 * sheet, and what follows is worked out for the kit after it. Cost: the discharge after which the factor is known to the wanted
 * precision, with the instruments' errors in it. Worth: the standard deviation of the mixture from both flows,
 * {@code hypot(a_N s_N, a_F s_F)} with {@code s} the deviations of the bands that the plan rests on and {@code a} the change of lambda for a
 * change of 1 of the logarithm of a flow (first order), before the test and after it.
 *
 * @param plan the plan
 * @param tests the tests, the one that narrows the mixture most first
 */
public record FlowTestAdvice(Plan plan, List<Worth> tests) {
    /** Below this the scatter from state to state, {@link FlowFactor#OTHER_STATES}, is most of what is left: our choice. */
    public static final double USUAL_PRECISION = 0.03;

    /** A test takes at most this share of a full bottle: beyond it the pressure falls too far meanwhile (our choice). */
    private static final double SHARE_OF_CHARGE = 0.5;

    private static final double STEP = 0.02;

    public FlowTestAdvice {
        tests = List.copyOf(tests);
    }

    /**
     * One test.
     *
     * @param side which jets
     * @param bore hole of the jets to fit, m
     * @param pressure bottle pressure, or flowing pressure of the fuel at its rail, Pa absolute
     * @param known what is known of their factor now
     * @param flow flow expected during the test, kg/s: nitrous into the open from the bottle as the setup starts it, fuel at the set
     *     pressure into the open
     * @param seconds discharge needed, s; 0 when the jets are known well enough
     * @param mass what goes through meanwhile, kg
     * @param volume volume of what is caught, m3; NaN for nitrous
     * @param after what is known of the factor after the test, if it finds what is expected
     * @param kit the nitrous system after the test
     * @param lambdaNow one standard deviation of lambda from the flows of both sides now
     * @param lambdaAfter the same after this test alone
     * @param powerNow one standard deviation of the wheel power from this side's flow now, W
     * @param powerAfter the same after this test, W
     */
    public record Worth(
            JetSide side,
            double bore,
            double pressure,
            FlowFactor known,
            double flow,
            double seconds,
            double mass,
            double volume,
            FlowFactor after,
            WetKit kit,
            double lambdaNow,
            double lambdaAfter,
            double powerNow,
            double powerAfter) {}

    /**
     * Advice with usual instruments and precision.
     *
     * @param plan a plan with nitrous
     * @return the advice; without tests when the plan uses no nitrous
     */
    public static FlowTestAdvice of(Plan plan) {
        return of(plan, USUAL_PRECISION, TestInstruments.USUAL);
    }

    /**
     * Advice.
     *
     * @param plan a plan
     * @param wanted wanted standard deviation of the logarithm of a factor in the state of the test, 0.005 to 0.2; where an instrument
     *     reads the state worse than that, or half the bottle does not suffice, the best that can be had is planned
     * @param with the instruments
     * @return the advice; without tests when the plan uses no nitrous
     */
    public static FlowTestAdvice of(Plan plan, double wanted, TestInstruments with) {
        Require.within("wanted precision of a flow test", wanted, 0.005, 0.2, "");
        return plan.setup().jets().isEmpty() || plan.stated().withNitrous().isEmpty()
                ? new FlowTestAdvice(plan, List.of())
                : new FlowTestAdvice(plan, new Sizing(plan, wanted, with).tests());
    }

    /**
     * How sure the plan is before any test and after each, if the tests find what is expected here.
     *
     * @param name what was done
     * @param plan the plan then: the same setup, what is known of the jets changed
     * @param chances the chances then
     */
    public record Step(String name, Plan plan, Chances chances) {}

    /**
     * The chances of the plan now, after the first of the tests, and after all of them.
     *
     * @param drawn which of the unknowns of {@link Unknowns#of} are drawn beside the flows of both sides; all else is as planned
     * @param draws number of draws, as in {@link ConfidenceStudy#quick}
     * @param seed seed
     * @return one entry a state of knowledge; none without tests worth making
     */
    public List<Step> chances(Predicate<Unknown> drawn, int draws, long seed) {
        List<Worth> worth = tests.stream().filter(test -> test.seconds() > 0).toList();
        if (worth.isEmpty()) {
            return List.of();
        }
        List<Step> steps = new ArrayList<>();
        steps.add(step("now", plan, drawn, draws, seed));
        WetKit kit = plan.car().nitrous();
        String done = "";
        for (Worth test : worth) {
            kit = kit.after(test.kit().lastTest(test.side()).orElseThrow());
            done += (done.isEmpty() ? "after a test of the " : " and of the ")
                    + test.side().words();
            Plan then = Plan.of(plan.job().with(plan.car().with(kit)), plan.setup());
            steps.add(step(done, then, drawn, draws, seed));
        }
        return steps;
    }

    private static Step step(String name, Plan plan, Predicate<Unknown> drawn, int draws, long seed) {
        List<String> flows = List.of(Factor.NITROUS_FLOW.words(), Factor.FUEL_JET_FLOW.words());
        List<Unknown> unknowns = Unknowns.of(plan).stream()
                .filter(unknown -> flows.contains(unknown.name()) || drawn.test(unknown))
                .toList();
        return new Step(
                name, plan, ConfidenceStudy.quick(plan, unknowns, draws, seed).stated());
    }

    /** Works the tests of one plan out. */
    private static final class Sizing {
        private final Plan plan;
        private final WetKit kit;
        private final JetPair jets;
        private final double wanted;
        private final TestInstruments with;
        private final double ambient;

        Sizing(Plan plan, double wanted, TestInstruments with) {
            this.plan = plan;
            this.kit = plan.car().nitrous();
            this.jets = plan.setup().jets().orElseThrow();
            this.wanted = wanted;
            this.with = with;
            this.ambient = plan.stated().at().air().pressure();
        }

        List<Worth> tests() {
            return Stream.of(nitrous(), fuel())
                    .sorted(Comparator.comparingDouble(Worth::lambdaAfter))
                    .toList();
        }

        private Worth nitrous() {
            double start = plan.setup().bottle().startTemperature();
            double pressure = NitrousOxide.saturationPressure(Math.min(start, NitrousOxide.CRITICAL_TEMPERATURE - 1));
            TestBottle bottle =
                    new TestBottle(pressure, TestInstruments.deviation(with.gauge() * pressure), Double.NaN);
            FlowTestRig rig = FlowTestRig.nitrous(kit, kit.nozzles(), jets.nitrousBore(), bottle, ambient);
            double most = SHARE_OF_CHARGE * plan.setup().bottle().charge();
            return worth(rig, Math.sqrt(2) * TestInstruments.deviation(with.scale()), most, Double.NaN);
        }

        private Worth fuel() {
            double drop = plan.setup().nitrousRegulator().basePressure();
            double density =
                    plan.car().fuels().nitrous().density(plan.car().fuels().temperature());
            double gauge = TestInstruments.deviation(with.gauge() * drop);
            FlowTestRig rig = FlowTestRig.fuel(kit, kit.nozzles(), jets.fuelBore(), density, drop, gauge, ambient);
            double mass = density * TestInstruments.deviation(with.cylinder());
            return worth(rig, mass, Double.POSITIVE_INFINITY, density);
        }

        private Worth worth(FlowTestRig rig, double massDeviation, double most, double density) {
            double watch = TestInstruments.deviation(with.stopwatch());
            FlowTestPlan discharge = rig.discharge(wanted, massDeviation, watch);
            double mass = Math.min(discharge.mass(), most);
            double seconds = mass / rig.expected();
            WetKit after =
                    mass > 0 ? kit.after(rig.told("advised", new FlowTest(mass, massDeviation, seconds, watch))) : kit;
            Factor factor = rig.side() == JetSide.NITROUS ? Factor.NITROUS_FLOW : Factor.FUEL_JET_FLOW;
            double power = Math.abs(slope(factor, OperatingPoint::wheelPower));
            return new Worth(
                    rig.side(),
                    rig.bore(),
                    rig.pressure(),
                    rig.known(),
                    rig.expected(),
                    seconds,
                    mass,
                    mass / density,
                    after.lastTest(rig.side()).map(FlowTested::after).orElseGet(rig::known),
                    after,
                    lambda(kit),
                    lambda(after),
                    power * deviation(kit, factor),
                    power * deviation(after, factor));
        }

        private double lambda(WetKit with) {
            return Math.hypot(
                    slope(Factor.NITROUS_FLOW, OperatingPoint::lambda) * deviation(with, Factor.NITROUS_FLOW),
                    slope(Factor.FUEL_JET_FLOW, OperatingPoint::lambda) * deviation(with, Factor.FUEL_JET_FLOW));
        }

        /** Of the logarithm of the flow of one side, as {@link Unknowns} draw it. */
        private double deviation(WetKit with, Factor side) {
            return side == Factor.FUEL_JET_FLOW
                    ? with.suited(jets).fuel().jet().factors().logarithmicDeviation()
                    : at(with, plan.stated().at()).nitrous().band().logarithmicDeviation();
        }

        private double slope(Factor factor, ToDoubleFunction<OperatingPoint> figure) {
            return (figure.applyAsDouble(at(factor, Math.exp(STEP)))
                            - figure.applyAsDouble(at(factor, Math.exp(-STEP))))
                    / (2 * STEP);
        }

        private OperatingPoint at(Factor factor, double value) {
            Case at = plan.stated().at();
            return at(kit, at.with(factor, value * at.factors().of(factor)));
        }

        private OperatingPoint at(WetKit with, Case at) {
            OperatingPoint point = plan.stated().strongest().orElseThrow();
            return Evaluate.model(plan.car().with(with), plan.setup(), at)
                    .at(point.rpm(), point.plenumPressure(), point.mode());
        }
    }
}
