package org.shotledger.nitrous;

import java.util.function.DoubleUnaryOperator;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.FlowTest;
import org.shotledger.flow.FlowTestPlan;
import org.shotledger.flow.JetFlow;

/**
 * A kit set up for a flow test: what it should pass, and what a reading tells of its jets. Tests that were made and tests that are
 * advised are worked out here, so that the advice foretells what the test then does.
 *
 * @param kit the kit as it was before the test
 * @param side which jets are tested
 * @param bore hole diameter of each jet fitted, m
 * @param nozzles number of nozzles open
 * @param pressure mean bottle pressure during the discharge, or flowing pressure of the liquid at its rail, Pa absolute
 * @param untested what the factor on the jets is taken for when nobody has tested them
 * @param flowOfFactor flow of the whole arrangement, kg/s, over the factor on its jets
 * @param stateDeviation one standard deviation of the logarithm of that flow from what is not known of the state
 */
public record FlowTestRig(
        WetKit kit,
        JetSide side,
        double bore,
        int nozzles,
        double pressure,
        FlowBand untested,
        DoubleUnaryOperator flowOfFactor,
        double stateDeviation) {

    /** A test cannot be much better than its state is known: our choice. */
    private static final double STATE_SHARE = 1.2;

    /** Known to within this factor of the wanted precision is known well enough: another test would be of seconds (our choice). */
    private static final double ENOUGH = 1.1;

    /**
     * Nitrous oxide discharged into the open.
     *
     * @param kit the kit
     * @param nozzles number of nozzles open, 1 to 16
     * @param bore hole diameter of each jet fitted, m
     * @param bottle the bottle meanwhile
     * @param ambient ambient pressure, Pa
     * @return the rig
     */
    public static FlowTestRig nitrous(WetKit kit, int nozzles, double bore, TestBottle bottle, double ambient) {
        WetKit open = kit.withNozzles(nozzles);
        JetFlow jet = open.nitrousPath(new JetPair(bore, bore))
                .flow(bottle.liquid(0), ambient)
                .jets()
                .get(0);
        double best = kit.nitrous().jet().measured().map(FlowBand::best).orElse(1.0);
        FlowBand untested = new FlowBand(jet.low(), jet.massFlow(), jet.high()).times(best / jet.massFlow());
        double low = open.nitrousFlowOfFactor(bore, bottle.liquid(-1), ambient).applyAsDouble(best);
        double high = open.nitrousFlowOfFactor(bore, bottle.liquid(1), ambient).applyAsDouble(best);
        return new FlowTestRig(
                kit,
                JetSide.NITROUS,
                bore,
                nozzles,
                bottle.pressure(),
                untested,
                open.nitrousFlowOfFactor(bore, bottle.liquid(0), ambient),
                Math.abs(Math.log(high / low)) / 2);
    }

    /**
     * Fuel or water caught in a measure.
     *
     * @param kit the kit
     * @param nozzles number of nozzles open, 1 to 16
     * @param bore hole diameter of each jet fitted, m
     * @param density density of the liquid, kg/m3
     * @param drop flowing pressure over ambient, Pa, above 0
     * @param dropDeviation one standard deviation of it, Pa
     * @param ambient ambient pressure, Pa
     * @return the rig
     */
    public static FlowTestRig fuel(
            WetKit kit, int nozzles, double bore, double density, double drop, double dropDeviation, double ambient) {
        // Bernoulli: the flow goes as the root of the pressure drop
        double state = dropDeviation / drop / 2;
        return new FlowTestRig(
                kit,
                JetSide.FUEL,
                bore,
                nozzles,
                ambient + drop,
                kit.fuel().jet().factors(),
                kit.fuel().flowOfFactor(density, kit.withNozzles(nozzles).fuelJets(bore), drop),
                state);
    }

    /**
     * What is known of the jets before the test.
     *
     * @return what earlier tests tell of jets of this size; the untested factor where there was none
     */
    public FlowFactor known() {
        return kit.known(side, bore).orElseGet(() -> FlowFactor.untested(untested));
    }

    /**
     * The flow to expect.
     *
     * @return kg/s, at the mean of what is known
     */
    public double expected() {
        return flowOfFactor.applyAsDouble(Math.exp(known().logarithm()));
    }

    /**
     * What a reading tells.
     *
     * @param name name of the test
     * @param test the reading
     * @return the test with what is known after it
     * @throws IllegalArgumentException when no factor explains the flow, or the jets hardly matter to it
     */
    public FlowTested told(String name, FlowTest test) {
        FlowFactor before = known();
        FlowFactor after = before.after(test, flowOfFactor, stateDeviation);
        return new FlowTested(name, side, test, bore, nozzles, pressure, expected(), stateDeviation, before, after);
    }

    /**
     * The discharge after which the factor on the jets is known to a wanted precision, or, where the state is not known so well, to
     * the best that can be had. What lines, solenoid and passages take damps the jets' share in the flow and makes every error larger.
     *
     * @param wanted wanted standard deviation of the logarithm of the factor, above 0
     * @param massDeviation one standard deviation of the mass gone, kg
     * @param secondsDeviation one standard deviation of the time, s
     * @return seconds and kilograms; zero when it is known well enough, or the flow says nothing of the jets
     */
    public FlowTestPlan discharge(double wanted, double massDeviation, double secondsDeviation) {
        double effect = known().effect(flowOfFactor);
        double state = stateDeviation / effect;
        double aim = Math.max(wanted, STATE_SHARE * state);
        if (effect < FlowFactor.LEAST_EFFECT || known().deviation() <= ENOUGH * aim) {
            return new FlowTestPlan(0, 0);
        }
        return FlowTestPlan.of(known(), aim, expected(), massDeviation / effect, secondsDeviation / effect, state);
    }
}
