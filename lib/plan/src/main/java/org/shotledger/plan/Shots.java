package org.shotledger.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.shotledger.curve.Bracket;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Setup;

/** Sizes smaller shots at the boost of a plan: the same car, boost and fuel pressure, other jets of the ladder. */
public final class Shots {
    /** Relative step to which a jet is found: our choice, less than a rung of a ladder. */
    private static final double CLOSE = 1e-3;
    /** Rounds in which fuel and nitrous come to agree: our choice. */
    private static final int MIXTURE_ROUNDS = 4;
    /** Rungs tried for one shot, the nearest and two on either side. */
    private static final int NEAR_RUNGS = 5;

    private final Plan plan;
    private final OperatingPoint full;
    private final PointModel model;

    Shots(Plan plan) {
        this.plan = plan;
        this.full = plan.stated()
                .strongest()
                .orElseThrow(() -> new IllegalStateException("The plan of "
                        + plan.job().name() + " has no operating point; there is nothing to step up to."));
        this.model = Evaluate.model(plan.car(), plan.setup(), plan.stated().at());
    }

    /**
     * Power at the speed of most power with the nitrous closed, at the boost of the plan.
     *
     * @return W at the wheels
     */
    public double offPower() {
        return model.at(full.rpm(), full.plenumPressure(), Mode.ARMED).wheelPower();
    }

    /**
     * Setups whose jets give about a power at the mixture asked for: the nitrous jet is the rung below the exact one, then those
     * beside it; the fuel jet is the rung that is not leaner.
     *
     * @param wheelPower power at the wheels, W, above {@link #offPower()} and at most that of the plan
     * @return the setups, nearest first; none when the ladder begins above that power
     */
    public Stream<Setup> setupsFor(double wheelPower) {
        JetLadder ladder = plan.car().nitrous().ladder();
        double low = ladder.bores()[0];
        double full = plan.setup().jets().orElseThrow().nitrousBore();
        if (power(low) > wheelPower) {
            return Stream.empty();
        }
        double exact = Bracket.edge(bore -> power(bore) >= wheelPower, full, low, CLOSE * low)
                .inside();
        double nearest = ladder.below(exact);
        return Arrays.stream(ladder.bores())
                .filter(bore -> bore < full)
                .boxed()
                .sorted(Comparator.comparingDouble(bore -> Math.abs(bore - nearest)))
                .limit(NEAR_RUNGS)
                .flatMap(this::setup);
    }

    private Stream<Setup> setup(double nitrous) {
        OptionalDouble fuel = fuelBore(nitrous);
        return fuel.isEmpty()
                ? Stream.empty()
                : Stream.of(plan.setup()
                        .withJets(new JetPair(
                                nitrous, plan.car().nitrous().ladder().above(fuel.getAsDouble()))));
    }

    private double power(double nitrousBore) {
        OptionalDouble fuel = fuelBore(nitrousBore);
        if (fuel.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        return at(nitrousBore, fuel.getAsDouble()).wheelPower();
    }

    private OperatingPoint at(double nitrousBore, double fuelBore) {
        double plenum = full.plenumPressure();
        return model.at(
                full.rpm(), plenum, Mode.NITROUS, model.feed(plenum, nitrousBore), model.nitrousFuel(plenum, fuelBore));
    }

    private OptionalDouble fuelBore(double nitrousBore) {
        double plenum = full.plenumPressure();
        double bore = nitrousBore / 2;
        try {
            for (int round = 0; round < MIXTURE_ROUNDS; round++) {
                double flow = plan.target()
                        .mixture()
                        .fuelFlow(at(nitrousBore, bore).charge().mixture());
                bore = model.fuelBore(plenum, Math.max(1e-6, flow));
            }
            return OptionalDouble.of(bore);
        } catch (NoAnswerException none) {
            return OptionalDouble.empty();
        }
    }
}
