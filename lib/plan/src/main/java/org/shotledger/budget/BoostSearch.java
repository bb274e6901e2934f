package org.shotledger.budget;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.build.Build;

/** Finds the highest boost that keeps every limit with the nitrous off, at each engine speed. */
final class BoostSearch {
    private static final int STEPS = 40;
    private static final int HALVINGS = 40;
    private static final double SPEED_STEP = 250;
    /** The split is shown from this share of the asked band's lower end. */
    private static final double SHOWN_FROM = 0.6;

    private final Evaluator evaluator;
    private final Conditions at;

    BoostSearch(Evaluator evaluator, Conditions at) {
        this.evaluator = evaluator;
        this.at = at;
    }

    /** The engine speeds of a budget, within the breathing table and below the red line. */
    static double[] speeds(Build build, Wish wish) {
        var table = build.engine().volumetricEfficiency();
        double low = Math.ceil(Math.max(table.low(), SHOWN_FROM * wish.rpmLow()) / SPEED_STEP) * SPEED_STEP;
        double high = Math.floor(Math.min(table.high(), build.engine().redLineRpm()) / SPEED_STEP) * SPEED_STEP;
        return Band.grid(low, high, (int) Math.round((high - low) / SPEED_STEP) + 1);
    }

    BoostAlone over(double[] speeds) {
        List<BoostAlone.Point> points = new ArrayList<>();
        for (double rpm : speeds) {
            points.add(highest(rpm));
        }
        return new BoostAlone(points);
    }

    BoostAlone.Point highest(double rpm) {
        double ambient = at.air().pressure();
        double ceiling = evaluator.build().turbo().boostCeiling();
        double step = ceiling / STEPS;
        for (int i = STEPS; i > 0; i--) {
            if (broken(rpm, ambient + i * step).isEmpty()) {
                return i == STEPS
                        ? point(rpm, ambient + ceiling, "the boost ceiling")
                        : refine(rpm, ambient + i * step, step);
            }
        }
        return new BoostAlone.Point(rpm, Double.NaN, Double.NaN, Double.NaN, broken(rpm, ambient + step));
    }

    private BoostAlone.Point refine(double rpm, double good, double step) {
        double low = good;
        double high = good + step;
        String stoppedBy = broken(rpm, high);
        for (int i = 0; i < HALVINGS && high - low > 1; i++) {
            double middle = (low + high) / 2;
            String reason = broken(rpm, middle);
            if (reason.isEmpty()) {
                low = middle;
            } else {
                high = middle;
                stoppedBy = reason;
            }
        }
        return point(rpm, low, stoppedBy);
    }

    private BoostAlone.Point point(double rpm, double plenum, String stoppedBy) {
        Evaluation best = evaluator.at(at, rpm, Demand.boost(plenum));
        return new BoostAlone.Point(rpm, plenum, best.gaugePressure(), best.wheelPower(), stoppedBy);
    }

    /** The limit that this boost breaks, in words; empty when it breaks none. */
    private String broken(double rpm, double plenum) {
        try {
            Limits limits = LimitSheet.of(evaluator.build(), evaluator.at(at, rpm, Demand.boost(plenum)));
            return limits.verdict() == Verdict.BROKEN
                    ? limits.first().orElseThrow().name()
                    : "";
        } catch (OutsideMapException outside) {
            return outside.edge().words() + " of the compressor map";
        } catch (IllegalArgumentException refused) {
            return "the turbine: it cannot drive the compressor";
        }
    }
}
