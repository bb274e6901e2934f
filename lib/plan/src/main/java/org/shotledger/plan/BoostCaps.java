package org.shotledger.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;
import org.shotledger.setup.BoostTable;

/** The highest boost at each engine speed that keeps every limit in every case, without nitrous or with a shot. */
final class BoostCaps {
    private static final double CLOSE = 200;
    private static final int STEPS = 12;

    private final Car car;
    private final List<CaseModel> cases;

    BoostCaps(Car car, List<CaseModel> cases) {
        this.car = car;
        this.cases = cases;
    }

    /** Boost alone, with the margin at which a limit is no longer called tight wherever boost decides it. */
    BoostTable alone(double[] speeds) {
        List<BoostTable.Step> steps = new ArrayList<>();
        for (double rpm : speeds) {
            steps.add(new BoostTable.Step(rpm, alone(rpm)));
        }
        return new BoostTable(steps);
    }

    /** Limits that no boost moves, such as piston speed, do not hold the boost down. */
    private double alone(double rpm) {
        double ceiling = car.turbo().boostCeiling() * (1 - Limit.CAUTION);
        double step = ceiling / STEPS;
        double low = 0;
        double high = Double.NaN;
        for (int i = STEPS; i > 0; i--) {
            if (keeps(rpm, i * step)) {
                low = i * step;
                high = i == STEPS ? low : low + step;
                break;
            }
        }
        while (high - low > CLOSE) {
            double middle = (low + high) / 2;
            if (keeps(rpm, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private boolean keeps(double rpm, double gauge) {
        return cases.stream().allMatch(at -> keeps(at, rpm, gauge));
    }

    private boolean keeps(CaseModel at, double rpm, double gauge) {
        Optional<OperatingPoint> point = at.off(rpm, gauge);
        if (point.isEmpty() || !point.get().shaft().holdsBoost()) {
            return false;
        }
        double[] here = PointLimits.margins(car, point.get());
        double[] less = at.off(rpm, 0.95 * gauge)
                .map(p -> PointLimits.margins(car, p))
                .orElse(here);
        for (int i = 0; i < here.length; i++) {
            boolean worsens = here[i] < less[i] - 1e-9;
            if (here[i] < 0 || (worsens && here[i] < Limit.CAUTION)) {
                return false;
            }
        }
        return true;
    }

    /** Boost with a shot: at most what is held, less where torque or peak pressure of the heaviest case come close. */
    double withShot(double rpm, double held, Shot shot, CaseModel heaviest) {
        double gauge = held;
        Optional<OperatingPoint> point = heaviest.on(rpm, gauge, shot);
        for (int i = 0; i < STEPS && point.isPresent(); i++) {
            double excess = PointLimits.load(car, point.get()) / (1 - Limit.CAUTION) - 1;
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
            double load = at.on(rpm, gauge, shot)
                    .map(p -> PointLimits.load(car, p))
                    .orElse(0.0);
            if (load > most) {
                most = load;
                heaviest = at;
            }
        }
        return heaviest;
    }
}
