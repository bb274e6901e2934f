package org.shotledger.budget;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.shotledger.build.Build;
import org.shotledger.wetkit.JetLadder;
import org.shotledger.wetkit.JetPair;

/**
 * Finds the jets that meet a wheel power at a wanted mixture under one boost schedule.
 *
 * <p>For each nitrous jet the fuel jet follows from the mixture of all streams at the speed of most power; the nitrous jet
 * follows from the power. Both are roots of the full evaluation, not of a shortened copy of it.
 */
final class Sizing {
    private static final double BORE_TOLERANCE = 1e-8;
    private static final int MOST_EVALUATIONS = 60;
    /** Smallest jet tried, m: no jet of the trade is finer. */
    private static final double SMALLEST_BORE = 0.15e-3;

    private final Build build;
    private final Band band;
    private final double peakRpm;

    Sizing(Build build, Band band) {
        this.build = build;
        this.band = band;
        this.peakRpm = Band.strongest(band.without()).rpm();
    }

    /** The most wheel power the ladder's largest jets give. */
    double most() {
        return power(largest());
    }

    /** The least wheel power with the nitrous on. */
    double least() {
        return power(SMALLEST_BORE);
    }

    /** The exact pair; the wish must lie between {@link #least()} and {@link #most()}. */
    JetPair pairFor(double wheelPower) {
        double bore = root(b -> power(b) - wheelPower, SMALLEST_BORE, largest());
        return new JetPair(bore, fuelBore(bore));
    }

    private double power(double nitrousBore) {
        return Band.strongest(band.with(new JetPair(nitrousBore, fuelBore(nitrousBore))))
                .wheelPower();
    }

    /** The fuel jet that gives the wanted mixture; the ladder's end where the mixture cannot be reached. */
    double fuelBore(double nitrousBore) {
        double wanted = build.tune().nitrousLambda();
        UnivariateFunction lean =
                bore -> band.one(peakRpm, new JetPair(nitrousBore, bore)).lambda() - wanted;
        if (lean.value(SMALLEST_BORE) <= 0) {
            return SMALLEST_BORE;
        }
        if (lean.value(largest()) >= 0) {
            return largest();
        }
        return root(lean, SMALLEST_BORE, largest());
    }

    private double largest() {
        double[] bores = ladder().bores();
        return bores[bores.length - 1];
    }

    private JetLadder ladder() {
        return build.wetKit().ladder();
    }

    /** The pairs on the ladder around an exact pair: each jet a rung below and two above. */
    List<JetPair> around(JetPair exact) {
        double[] nitrous = rungs(exact.nitrousBore());
        double[] fuel = rungs(exact.fuelBore());
        return java.util.Arrays.stream(nitrous)
                .boxed()
                .flatMap(n -> java.util.Arrays.stream(fuel).mapToObj(f -> new JetPair(n, f)))
                .toList();
    }

    private double[] rungs(double bore) {
        double above = ladder().above(bore);
        return java.util.stream.DoubleStream.of(ladder().below(bore), above, ladder().above(above * (1 + 1e-9)))
                .distinct()
                .toArray();
    }

    private static double root(UnivariateFunction f, double low, double high) {
        return new BracketingNthOrderBrentSolver(1e-10, BORE_TOLERANCE, 5).solve(MOST_EVALUATIONS, f, low, high);
    }
}
