package org.shotledger.budget;

import org.shotledger.curve.Curve;

/**
 * The plenum pressure the boost control holds over engine speed: a set value, less where the limits without nitrous allow
 * less.
 */
final class BoostSchedule {
    private final Curve highest;
    private final double held;

    private BoostSchedule(Curve highest, double held) {
        this.highest = highest;
        this.held = held;
    }

    static BoostSchedule of(BoostAlone alone, double heldPlenumPressure) {
        var usable = alone.points().stream()
                .filter(p -> !Double.isNaN(p.plenumPressure()))
                .toList();
        Curve highest = Curve.of(
                "highest plenum pressure over rpm",
                usable.stream().mapToDouble(BoostAlone.Point::rpm).toArray(),
                usable.stream().mapToDouble(BoostAlone.Point::plenumPressure).toArray());
        return new BoostSchedule(highest, heldPlenumPressure);
    }

    boolean covers(double rpm) {
        return rpm >= highest.low() && rpm <= highest.high();
    }

    double plenumPressure(double rpm) {
        return Math.min(held, highest.at(rpm));
    }
}
