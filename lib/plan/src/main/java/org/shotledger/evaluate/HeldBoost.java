package org.shotledger.evaluate;

import java.util.Optional;

/**
 * The operating point at the boost that is asked for, or at the highest below it that the turbocharger gives. Where even the
 * ambient pressure has no answer there is no point.
 */
final class HeldBoost {
    /** Pa: our choice, a fourteenth of a psi, finer than any boost control. */
    private static final double CLOSE = 500;

    private final PointModel model;
    private final double ambient;

    HeldBoost(PointModel model, double ambient) {
        this.model = model;
        this.ambient = ambient;
    }

    /** Without nitrous a turbocharger that is not up to speed gives less than is asked: that is no fault. */
    Optional<OperatingPoint> point(double rpm, double plenum, Mode mode) {
        Optional<OperatingPoint> whole = attempt(rpm, plenum, mode);
        if (whole.isPresent()) {
            return whole;
        }
        double low = ambient;
        double high = plenum;
        Optional<OperatingPoint> best = attempt(rpm, low, mode);
        while (best.isPresent() && high - low > CLOSE) {
            double middle = (low + high) / 2;
            Optional<OperatingPoint> next = attempt(rpm, middle, mode);
            if (next.isPresent()) {
                best = next;
                low = middle;
            } else {
                high = middle;
            }
        }
        return best.map(point -> point.as(mode, plenum));
    }

    private Optional<OperatingPoint> attempt(double rpm, double plenum, Mode mode) {
        try {
            OperatingPoint point = model.at(rpm, plenum, mode);
            return mode.nitrousFlows() || point.shaft().holdsBoost() || plenum <= ambient
                    ? Optional.of(point)
                    : Optional.empty();
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }
}
