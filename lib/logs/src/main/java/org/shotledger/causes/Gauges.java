package org.shotledger.causes;

/**
 * What the sensors read beside the truth.
 *
 * @param lambda factor on lambda
 * @param power factor on power
 * @param manifold added to the manifold pressure, Pa
 * @param rail added to the pressure of the main fuel, Pa
 * @param nitrousFuel added to the pressure of the nitrous fuel, Pa
 * @param bottle added to the bottle pressure, Pa
 */
record Gauges(double lambda, double power, double manifold, double rail, double nitrousFuel, double bottle) {
    static final Gauges TRUE = new Gauges(1, 1, 0, 0, 0, 0);

    Gauges withLambda(double factor) {
        return new Gauges(factor, power, manifold, rail, nitrousFuel, bottle);
    }

    Gauges withPower(double factor) {
        return new Gauges(lambda, factor, manifold, rail, nitrousFuel, bottle);
    }

    Gauges withManifold(double added) {
        return new Gauges(lambda, power, added, rail, nitrousFuel, bottle);
    }

    Gauges withRail(double added) {
        return new Gauges(lambda, power, manifold, added, nitrousFuel, bottle);
    }

    Gauges withNitrousFuel(double added) {
        return new Gauges(lambda, power, manifold, rail, added, bottle);
    }

    Gauges withBottle(double added) {
        return new Gauges(lambda, power, manifold, rail, nitrousFuel, added);
    }
}
