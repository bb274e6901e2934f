package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTestPlan;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.NozzlePassages;
import org.shotledger.nitrous.TestInstruments;
import org.shotledger.nitrous.WetKit;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.units.Require;

/**
 * Which flow test of a plan's jets to make first, what it is worth and what it costs, before it is made.
 *
 * <p>Worth: the mixture's standard deviation from both flows, {@code s = hypot(a_N s_N, a_F s_F)} with {@code a} the change of lambda for
 * a change of 1 of the logarithm of a flow, before the test and after it (first order). Cost: the discharge after which the
 * factor is known to the wanted deviation, {@link FlowTestPlan#of}, with the instruments' errors in it.
 *
 * @param plan the plan
 * @param wanted wanted standard deviation of the logarithm of a factor in the state of the test
 * @param tests the tests, the one that narrows the mixture most first
 */
public record FlowTestAdvice(Plan plan, double wanted, List<Worth> tests) {
    /** Below this the scatter from state to state, {@link FlowFactor#OTHER_STATES}, is most of what is left: our choice. */
    public static final double USUAL_PRECISION = 0.03;

    /** A test cannot be much better than its state is known. */
    private static final double STATE_SHARE = 1.2;

    private static final double STEP = 0.02;

    /** Copies the list. */
    public FlowTestAdvice {
        tests = List.copyOf(tests);
    }

    /**
     * One test.
     *
     * @param side which jets
     * @param bore hole of the jets to fit, m
     * @param known what is known of their factor now
     * @param flow flow expected during the test, kg/s: nitrous into the open from the bottle as the setup starts it, fuel at the set
     *     pressure into the open
     * @param seconds discharge needed, s; 0 when the jets are known well enough
     * @param mass what goes through meanwhile, kg
     * @param volume volume of what is caught, m3; NaN for nitrous
     * @param lambdaNow one standard deviation of lambda from the flows of both sides now
     * @param lambdaAfter the same after this test alone
     * @param powerNow one standard deviation of the wheel power from this side's flow now, W
     * @param powerAfter the same after this test, W
     */
    public record Worth(
            JetSide side,
            double bore,
            FlowFactor known,
            double flow,
            double seconds,
            double mass,
            double volume,
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
     * @param wanted wanted standard deviation of the logarithm of a factor, 0.005 to 0.2; where an instrument reads the state worse
     *     than that, the best that can be had is planned
     * @param with the instruments
     * @return the advice; without tests when the plan uses no nitrous
     */
    public static FlowTestAdvice of(Plan plan, double wanted, TestInstruments with) {
        Require.within("wanted precision of a flow test", wanted, 0.005, 0.2, "");
        return plan.setup().jets().isEmpty() || plan.stated().withNitrous().isEmpty()
                ? new FlowTestAdvice(plan, wanted, List.of())
                : new FlowTestAdvice(plan, wanted, new Sizing(plan, wanted, with).tests());
    }

    /**
     * How sure the plan is before any test and after each, if the tests find what is expected here.
     *
     * @param name what was done
     * @param chances the chances then
     */
    public record Step(String name, Chances chances) {}

    /**
     * The chances of the plan from what is not known of its flows alone, all else as planned: now, after the first of the tests, and after
     * all of them.
     *
     * @param draws number of draws, as in {@link ConfidenceStudy#quick}
     * @param seed seed
     * @return one entry a state of knowledge; none without tests
     */
    public List<Step> chances(int draws, long seed) {
        if (tests.isEmpty()) {
            return List.of();
        }
        List<Unknown> unknowns = Unknowns.of(plan).stream()
                .filter(unknown -> unknown.name().equals(Factor.NITROUS_FLOW.words())
                        || unknown.name().equals(Factor.FUEL_JET_FLOW.words()))
                .toList();
        List<Step> steps = new ArrayList<>();
        steps.add(step("now", unknowns, draws, seed));
        String done = "";
        for (Worth test : tests) {
            unknowns = unknowns.stream().map(u -> narrowed(u, test)).toList();
            done += (done.isEmpty() ? "after a test of the " : " and of the ")
                    + test.side().words();
            steps.add(step(done, unknowns, draws, seed));
        }
        return steps;
    }

    private Step step(String name, List<Unknown> unknowns, int draws, long seed) {
        return new Step(name, ConfidenceStudy.quick(plan, unknowns, draws, seed).stated());
    }

    private Unknown narrowed(Unknown unknown, Worth test) {
        Factor factor = test.side() == JetSide.NITROUS ? Factor.NITROUS_FLOW : Factor.FUEL_JET_FLOW;
        if (!unknown.name().equals(factor.words()) || test.seconds() == 0) {
            return unknown;
        }
        FlowBand band = FlowBand.around(1, Math.hypot(wanted, FlowFactor.OTHER_STATES));
        return Unknown.model(
                factor, band, Provenance.MEASURED, "as it would be after the flow test", unknown.measurement());
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
            List<Sized> both = List.of(nitrous(), fuel());
            List<FlowTestPlan.Gain> gains =
                    FlowTestPlan.rank(both.stream().map(Sized::candidate).toList());
            return gains.stream()
                    .map(gain -> both.stream()
                            .filter(one -> one.side.words().equals(gain.name()))
                            .findFirst()
                            .orElseThrow()
                            .worth(gain))
                    .toList();
        }

        private Sized nitrous() {
            double start = plan.setup().bottle().startTemperature();
            double warm = Math.min(start, NitrousOxide.CRITICAL_TEMPERATURE - 1);
            double pressure = NitrousOxide.saturationPressure(warm);
            double flow = nitrous(pressure);
            double off = TestInstruments.deviation(with.gauge() * pressure);
            double state = Math.abs(Math.log(nitrous(Math.min(pressure + off, 0.98 * NitrousOxide.CRITICAL_PRESSURE))
                            / nitrous(pressure - off)))
                    / 2;
            double mass = Math.sqrt(2) * TestInstruments.deviation(with.scale());
            FlowFactor known = kit.lastTest(JetSide.NITROUS)
                    .map(FlowTested::after)
                    .orElseGet(() -> FlowFactor.untested(
                            plan.stated().strongest().orElseThrow().nitrous().band()));
            return sized(JetSide.NITROUS, jets.nitrousBore(), known, flow, mass, state, Double.NaN);
        }

        private double nitrous(double pressure) {
            return kit.nitrousPath(jets)
                    .massFlow(NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(pressure)), ambient);
        }

        private Sized fuel() {
            double drop = plan.setup().nitrousRegulator().basePressure();
            double density =
                    plan.car().fuels().nitrous().density(plan.car().fuels().temperature());
            FuelCircuit.Jets holes = new FuelCircuit.Jets(
                    kit.nozzles(),
                    jets.fuelBore(),
                    kit.passages().map(NozzlePassages::fuelBore).orElse(Double.POSITIVE_INFINITY));
            FlowFactor known = kit.lastTest(JetSide.FUEL)
                    .map(FlowTested::after)
                    .orElseGet(() -> FlowFactor.untested(kit.fuel().jet().factors()));
            double flow = kit.fuel().flowOfFactor(density, holes, drop).applyAsDouble(Math.exp(known.logarithm()));
            double mass = density * TestInstruments.deviation(with.cylinder());
            double state = TestInstruments.deviation(with.gauge()) / 2;
            return sized(JetSide.FUEL, jets.fuelBore(), known, flow, mass, state, density);
        }

        private Sized sized(
                JetSide side, double bore, FlowFactor known, double flow, double mass, double state, double density) {
            double aim = Math.max(wanted, STATE_SHARE * state);
            FlowTestPlan test =
                    FlowTestPlan.of(known, aim, flow, mass, TestInstruments.deviation(with.stopwatch()), state);
            Factor factor = side == JetSide.NITROUS ? Factor.NITROUS_FLOW : Factor.FUEL_JET_FLOW;
            OperatingPoint more = at(factor, Math.exp(STEP));
            OperatingPoint less = at(factor, Math.exp(-STEP));
            double own = known.deviation() > aim
                    ? 1 / Math.sqrt(1 / (aim * aim) - 1 / (known.deviation() * known.deviation()))
                    : Double.POSITIVE_INFINITY;
            return new Sized(
                    side,
                    bore,
                    known,
                    flow,
                    test,
                    test.mass() / density,
                    own,
                    (more.lambda() - less.lambda()) / (2 * STEP),
                    (more.wheelPower() - less.wheelPower()) / (2 * STEP));
        }

        private OperatingPoint at(Factor factor, double value) {
            OperatingPoint point = plan.stated().strongest().orElseThrow();
            Case at = plan.stated().at();
            double was = at.factors().of(factor);
            return Evaluate.model(plan.car(), plan.setup(), at.with(factor, was * value))
                    .at(point.rpm(), point.plenumPressure(), point.mode());
        }
    }

    private record Sized(
            JetSide side,
            double bore,
            FlowFactor known,
            double flow,
            FlowTestPlan test,
            double volume,
            double testDeviation,
            double lambda,
            double power) {
        /** What planning rests on: after a test widened for other states than the tested. */
        private FlowFactor planned() {
            double whole =
                    known.tests() == 0 ? known.deviation() : Math.hypot(known.deviation(), FlowFactor.OTHER_STATES);
            return new FlowFactor(known.logarithm(), whole, known.tests());
        }

        FlowTestPlan.Candidate candidate() {
            return new FlowTestPlan.Candidate(side.words(), lambda, planned(), testDeviation);
        }

        Worth worth(FlowTestPlan.Gain gain) {
            double now = planned().deviation();
            double after =
                    Math.hypot(1 / Math.hypot(1 / known.deviation(), 1 / testDeviation), FlowFactor.OTHER_STATES);
            double tested = Math.min(now, after);
            return new Worth(
                    side,
                    bore,
                    known,
                    flow,
                    test.seconds(),
                    test.mass(),
                    volume,
                    gain.before(),
                    gain.after(),
                    Math.abs(power) * now,
                    Math.abs(power) * tested);
        }
    }
}
