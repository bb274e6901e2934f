package org.shotledger.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;
import org.shotledger.setup.BoostTable;
import org.shotledger.units.UnitFactors;

/** The highest boost at each engine speed that keeps every limit in every case, without nitrous or with a shot. */
final class BoostCaps {
    /** Margin kept to torque and peak pressure: what is called tight, and a little for what lies between the speeds looked at. */
    private static final double RESERVE = Limit.CAUTION + 0.005;

    /** A tenth of a pound per square inch, Pa: the step in which boost is set. */
    private static final double PRINTED = UnitFactors.PSI / 10;

    /** Pa: our choice, a thirtieth of a psi, finer than any boost control. */
    private static final double CLOSE = 200;
    /** Steps up to the cap, so that a dip on the way is seen: our choice. */
    private static final int STEPS = 12;

    private final Car car;
    private final List<CaseModel> cases;

    BoostCaps(Car car, List<CaseModel> cases) {
        this.car = car;
        this.cases = cases;
    }

    /** Boost alone, with the margin at which a limit is no longer called tight wherever boost decides it. */
    BoostTable alone(double[] speeds) {
        return new BoostTable(DoubleStream.of(speeds)
                .parallel()
                .mapToObj(rpm -> new BoostTable.Step(rpm, roundedDown(alone(rpm))))
                .toList());
    }

    /** Boost as it is printed and set: what is handed over is what was worked out, not its rounding. */
    static double roundedDown(double gauge) {
        return PRINTED * Math.floor(gauge / PRINTED + 1e-9);
    }

    /** The least boost to set that is not below another. */
    static double roundedUp(double gauge) {
        return PRINTED * Math.ceil(gauge / PRINTED - 1e-9);
    }

    /** The cap of the stated case, taken down by each other case that does not bear it. */
    private double alone(double rpm) {
        double ceiling = car.turbo().boostCeiling() * (1 - Limit.CAUTION);
        double cap = ceiling;
        for (CaseModel at : cases) {
            boolean[] moved = movedByBoost(at, rpm, cap);
            if (!(shortage(at, rpm, cap, moved) <= 0)) {
                cap = highest(at, rpm, cap, moved);
            }
        }
        return cap;
    }

    /**
     * The highest boost up to the cap with that margin. Where none has it, the one that comes nearest to it: at its slow lines a
     * compressor passes little, so that choke may be closer without boost than with some.
     */
    private double highest(CaseModel at, double rpm, double cap, boolean[] moved) {
        double step = cap / STEPS;
        double nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < STEPS; i++) {
            double low = cap - i * step;
            double missing = shortage(at, rpm, low, moved);
            if (missing <= 0) {
                double met = Rising.meet(gauge -> shortage(at, rpm, gauge, moved), 0, low, low + step, CLOSE);
                return Math.max(low, met - CLOSE);
            }
            if (missing < least) {
                least = missing;
                nearest = low;
            }
        }
        return nearest;
    }

    /** How much margin is missing to what is no longer called tight, of the limits that boost moves; NaN without an answer. */
    private double shortage(CaseModel at, double rpm, double gauge, boolean[] moved) {
        Optional<OperatingPoint> point = at.off(rpm, gauge);
        if (point.isEmpty() || !point.get().shaft().holdsBoost()) {
            return Double.NaN;
        }
        double[] margins = PointLimits.margins(car, point.get());
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < margins.length; i++) {
            if (moved[i]) {
                most = Math.max(most, RESERVE - margins[i]);
            }
        }
        return most;
    }

    /** Limits that no boost moves, such as piston speed, do not hold the boost down. */
    private boolean[] movedByBoost(CaseModel at, double rpm, double cap) {
        Optional<double[]> some = at.off(rpm, 0.5 * cap).map(p -> PointLimits.margins(car, p));
        Optional<double[]> more = at.off(rpm, 0.55 * cap).map(p -> PointLimits.margins(car, p));
        boolean[] moved = new boolean[PointLimits.count()];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = some.isEmpty() || more.isEmpty() || more.get()[i] < some.get()[i] - 1e-9;
        }
        return moved;
    }

    /** Boost with a shot: at most what is held, less where torque or peak pressure of the heaviest case come close. */
    double withShot(double rpm, double held, Shot shot, CaseModel heaviest) {
        double gauge = held;
        Optional<OperatingPoint> point = heaviest.on(rpm, gauge, shot);
        for (int i = 0; i < STEPS && point.isPresent(); i++) {
            double excess = PointLimits.load(car, point.get()) / (1 - RESERVE) - 1;
            if (excess <= 1e-3 || gauge <= 0) {
                return gauge;
            }
            // load rises nearly in proportion to pressure, so the proportional step lands just below the wanted load
            gauge = Math.max(0, (heaviest.ambient() + gauge) / (1 + 1.05 * excess) - heaviest.ambient());
            point = heaviest.on(rpm, gauge, shot);
        }
        return gauge;
    }

    /** The case in which a shot loads the engine most. */
    CaseModel heaviest(double rpm, double gauge, Shot shot) {
        CaseModel heaviest = cases.get(0);
        double most = 0;
        for (CaseModel at : cases) {
            double load =
                    at.on(rpm, gauge, shot).map(p -> PointLimits.load(car, p)).orElse(0.0);
            if (load > most) {
                most = load;
                heaviest = at;
            }
        }
        return heaviest;
    }
}
