package org.shotledger.budget;

import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;

/**
 * Finds the jets that meet a wheel power at a wanted mixture under one boost schedule.
 *
 * <p>For each nitrous jet the fuel jet follows from the oxygen balance at the speed of most power; the nitrous jet follows from
 * the power there. Both are roots of the full evaluation, not of a shortened copy of it.
 */
final class Sizing {
    private static final double BORE_TOLERANCE = 1e-8;
    private static final double FUEL_BORE_TOLERANCE = 1e-9;
    private static final double LARGEST_TOLERANCE = 2e-5;
    private static final int MOST_EVALUATIONS = 60;
    private static final int MOST_ROUNDS = 20;
    /** Smallest jet tried, m: no jet of the trade is finer. */
    private static final double SMALLEST_BORE = 0.15e-3;

    private static final double GROWTH = 1.5;

    private final Build build;
    private final Band band;
    private final MixtureGoal goal;
    private final double firstRpm;

    Sizing(Build build, Band band, MixtureGoal goal) {
        this.build = build;
        this.band = band;
        this.goal = goal;
        this.firstRpm = Band.strongest(band.without()).rpm();
    }

    /** The most wheel power the ladder's largest jets give. */
    double most() {
        double largest = largestThatBurns();
        return power(largest, strongest(largest, firstRpm));
    }

    /** The exact pair; nothing where no jet between the smallest and the ladder's last rung gives this power. */
    Optional<JetPair> pairFor(double wheelPower) {
        try {
            double rpm = firstRpm;
            Optional<JetPair> pair = pairFor(wheelPower, rpm);
            for (int round = 0; round < MOST_ROUNDS && pair.isPresent(); round++) {
                double strongest = Band.strongest(band.with(pair.get())).rpm();
                if (strongest == rpm) {
                    break;
                }
                rpm = strongest;
                pair = pairFor(wheelPower, rpm);
            }
            return pair;
        } catch (IllegalArgumentException refused) {
            // a charge too cold to balance at some speed of the band
            return Optional.empty();
        }
    }

    private Optional<JetPair> pairFor(double wheelPower, double rpm) {
        return bracket(wheelPower, rpm)
                .map(r -> root(b -> power(b, rpm) - wheelPower, r.low, r.high))
                .map(bore -> new JetPair(bore, fuelBore(bore, rpm)));
    }

    private record Bores(double low, double high) {}

    /** Two jets with the wish between them: grown from the smallest, and halved where a larger one is refused. */
    private Optional<Bores> bracket(double wheelPower, double rpm) {
        double low = SMALLEST_BORE;
        if (power(low, rpm) > wheelPower) {
            return Optional.empty();
        }
        double refused = Double.POSITIVE_INFINITY;
        double last = lastRung();
        while (low < last && refused - low > LARGEST_TOLERANCE) {
            double next = refused < Double.POSITIVE_INFINITY ? (low + refused) / 2 : Math.min(GROWTH * low, last);
            double power = powerIfBurns(next, rpm);
            if (power >= wheelPower) {
                return Optional.of(new Bores(low, next));
            }
            if (Double.isNaN(power)) {
                refused = next;
            } else {
                low = next;
            }
        }
        return Optional.empty();
    }

    private double powerIfBurns(double nitrousBore, double rpm) {
        try {
            return power(nitrousBore, rpm);
        } catch (IllegalArgumentException refused) {
            return Double.NaN;
        }
    }

    private double power(double nitrousBore, double rpm) {
        return band.one(rpm, new JetPair(nitrousBore, fuelBore(nitrousBore, rpm)))
                .wheelPower();
    }

    private double strongest(double nitrousBore, double mixtureRpm) {
        JetPair pair = new JetPair(nitrousBore, fuelBore(nitrousBore, mixtureRpm));
        return Band.strongest(band.with(pair)).rpm();
    }

    /**
     * The fuel jet that gives the wanted mixture at a speed: the oxygen balance gives the flow, the flow gives the jet, and the
     * jet changes the air a little, so the two are repeated until the jet stands still.
     */
    private double fuelBore(double nitrousBore, double rpm) {
        double bore = nitrousBore;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double next = balanced(band.one(rpm, new JetPair(nitrousBore, bore)));
            if (Math.abs(next - bore) < FUEL_BORE_TOLERANCE) {
                return next;
            }
            bore = next;
        }
        return bore;
    }

    private double balanced(Evaluation point) {
        double flow = goal.fuelFlow(point.charge().mixture());
        if (flow <= 0) {
            return SMALLEST_BORE;
        }
        double density = build.fuels().nitrous().density(build.fuels().temperature());
        double bore = build.wetKit()
                .fuel()
                .boreFor(
                        flow,
                        density,
                        build.wetKit().nozzles(),
                        Evaluator.pressures(point.conditions(), point.demand()));
        return Math.min(Math.max(bore, SMALLEST_BORE), lastRung());
    }

    /** The ladder's last rung, or the largest jet below it whose charge the engine can still take in. */
    private double largestThatBurns() {
        double high = lastRung();
        if (burns(high, firstRpm)) {
            return high;
        }
        double low = SMALLEST_BORE;
        while (high - low > LARGEST_TOLERANCE) {
            double middle = (low + high) / 2;
            if (burns(middle, firstRpm)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean burns(double nitrousBore, double rpm) {
        try {
            return strongest(nitrousBore, rpm) > 0;
        } catch (IllegalArgumentException | NoSuchElementException refused) {
            return false;
        }
    }

    private double lastRung() {
        double[] bores = ladder().bores();
        return bores[bores.length - 1];
    }

    private JetLadder ladder() {
        return build.wetKit().ladder();
    }

    /** The pairs on the ladder around an exact pair: each jet a rung below and two above. */
    List<JetPair> around(JetPair exact) {
        double[] fuel = rungs(exact.fuelBore());
        return DoubleStream.of(rungs(exact.nitrousBore()))
                .boxed()
                .flatMap(n -> Arrays.stream(fuel).mapToObj(f -> new JetPair(n, f)))
                .toList();
    }

    private double[] rungs(double bore) {
        double above = ladder().above(bore);
        return DoubleStream.of(ladder().below(bore), above, ladder().above(above * (1 + 1e-9)))
                .distinct()
                .toArray();
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-10, BORE_TOLERANCE, 5).solve(MOST_EVALUATIONS, f, low, high);
    }
}
