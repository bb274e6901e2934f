package org.shotledger.track;

import java.util.List;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.pass.NitrousSupply;

/**
 * What the bottle does over the nitrous oxide taken from it, from the emptying of the outcome: a bottle that gives off fast has no time to
 * take heat from outside, so its state is that of what is left. Known error: what it recovers while a shift closes the valves is left out.
 */
final class BottleOverMass implements NitrousSupply {
    private final double[] used;
    private final double[] flow;
    /** Power that the nitrous adds over what it adds at the first moment; 1 where it adds none there, since nothing can fade. */
    private final double[] strength;

    private final double[] pressure;
    private final double[] lambda;

    BottleOverMass(List<PassOutcome.Moment> moments, double powerWithout) {
        int n = moments.size();
        used = new double[n];
        flow = new double[n];
        strength = new double[n];
        pressure = new double[n];
        lambda = new double[n];
        double gain = moments.get(0).wheelPower() - powerWithout;
        for (int i = 0; i < n; i++) {
            PassOutcome.Moment at = moments.get(i);
            flow[i] = at.massFlow();
            pressure[i] = at.pressure();
            lambda[i] = at.lambda() - moments.get(0).lambda();
            strength[i] = gain > 0 ? (at.wheelPower() - powerWithout) / gain : 1;
            used[i] = i == 0
                    ? 0
                    : used[i - 1]
                            + (flow[i] + flow[i - 1])
                                    / 2
                                    * (at.time() - moments.get(i - 1).time());
        }
    }

    /** Moments without an answer of the engine are left out, the last one before them holds on. */
    static NitrousSupply of(Outcome outcome, EngineField field) {
        List<PassOutcome.Moment> moments = outcome.overPass().stream()
                .filter(moment -> Double.isFinite(moment.wheelPower()) && Double.isFinite(moment.lambda()))
                .toList();
        return moments.size() < 2 || outcome.strongest().isEmpty()
                ? NitrousSupply.NONE
                : new BottleOverMass(moments, without(outcome, field));
    }

    /** Wheel power at the strongest point with the nitrous closed and the same boost. */
    private static double without(Outcome outcome, EngineField field) {
        OperatingPoint strongest = outcome.strongest().orElseThrow();
        double torque = field.torque(strongest.rpm(), strongest.plenumPressure(), 0);
        return outcome.car().driveline().wheelPower(torque * Math.PI / 30 * strongest.rpm(), strongest.rpm());
    }

    @Override
    public double massFlow(double taken) {
        return at(flow, taken);
    }

    @Override
    public double strength(double taken) {
        return at(strength, taken);
    }

    /** Pa absolute. */
    double pressure(double taken) {
        return at(pressure, taken);
    }

    /** Change of lambda with the whole shot against that of the first moment. */
    double lambdaChange(double taken) {
        return at(lambda, taken);
    }

    /** Nitrous oxide for which the bottle was worked out, kg. */
    double known() {
        return used[used.length - 1];
    }

    private double at(double[] values, double taken) {
        int i = Layer.segment(used, taken);
        return values[i] + Layer.share(used, i, taken) * (values[i + 1] - values[i]);
    }
}
