package org.shotledger.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.PointLimits.Closest;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.PlanSearch.Candidate;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;

/** Finds, for a level of boost, the nitrous and the fuel jet that give the power asked for at the mixture asked for. */
final class ShotSearch {
    /** Relative step to which a flow or a jet is found: our choice, less than a rung of a ladder. */
    private static final double CLOSE = 1e-3;
    /** Relative step to which the strongest shot with an answer is found: our choice. */
    private static final double COARSE = 0.02;
    /** The search begins at the flow of reference over this: our choice. */
    private static final double SMALLEST = 16;
    /** Most rounds until fuel and nitrous agree to {@link #SAME_FUEL}: our choice. */
    private static final int MIXTURE_ROUNDS = 3;
    /** Relative change of fuel over nitrous that no longer counts. */
    private static final double SAME_FUEL = 1e-3;

    private final Job job;
    private final Car car;
    private final List<CaseModel> cases;
    private final BoostCaps caps;
    private final BoostTable alone;
    private final double[] speeds;

    ShotSearch(Job job, Car car, List<CaseModel> cases, BoostCaps caps, BoostTable alone, double[] speeds) {
        this.job = job;
        this.car = car;
        this.cases = cases;
        this.caps = caps;
        this.alone = alone;
        this.speeds = speeds;
    }

    /** The candidates of several levels, those without one left out. */
    List<Candidate> at(DoubleStream levels) {
        return levels.boxed().parallel().map(this::at).flatMap(Optional::stream).toList();
    }

    /** The candidate of a level; the strongest there is where the power is not reached; empty where no shot burns. */
    private Optional<Candidate> at(double level) {
        Mixture mixture = new Mixture();
        double wanted = job.target().wheelPower();
        double low = cases.get(0).referenceFlow() / SMALLEST;
        double high = low;
        double refused = Double.NaN;
        Optional<Weighed> last = Optional.empty();
        while (high < largest()) {
            high = Double.isNaN(refused) ? Math.min(2 * high, largest()) : (low + refused) / 2;
            Optional<Weighed> now = weigh(level, high, mixture);
            if (now.isPresent()) {
                if (now.get().power >= wanted) {
                    DoubleUnaryOperator power =
                            w -> weigh(level, w, mixture).map(Weighed::power).orElse(Double.NaN);
                    double atLow = last.isPresent() ? last.get().power : power.applyAsDouble(low);
                    double flow = Rising.meet(power, wanted, low, atLow, high, now.get().power, CLOSE * high);
                    return weigh(level, flow, mixture).map(w -> candidate(level, w));
                }
                last = now;
                low = high;
            } else {
                refused = high;
            }
            if (refused - low < COARSE * low) {
                break;
            }
        }
        return last.map(w -> candidate(level, w));
    }

    private double largest() {
        double[] bores = car.nitrous().ladder().bores();
        double reference = bores[bores.length / 3];
        double last = bores[bores.length - 1];
        return cases.get(0).referenceFlow() * last * last / (reference * reference);
    }

    /** What the last round found, from which the next one starts. */
    private static final class Mixture {
        private double fuelPerNitrous = 0.15;
        private CaseModel[] heaviest;
    }

    @SuppressWarnings("ArrayRecordComponent") // one case a speed, never compared
    private record Weighed(Shot shot, double power, double rpm, CaseModel[] heaviest) {}

    private Optional<Weighed> weigh(double level, double flow, Mixture mixture) {
        double top = speeds[speeds.length - 1];
        OptionalDouble bore = fuelBore(top, held(level, top), flow, mixture);
        if (bore.isEmpty()) {
            return Optional.empty();
        }
        Shot shot = new Shot(flow, bore.getAsDouble());
        if (mixture.heaviest == null) {
            mixture.heaviest = heaviest(level, shot);
        }
        CaseModel[] heaviest = mixture.heaviest;
        double most = 0;
        double at = top;
        for (int i = speeds.length - 1; i >= speeds.length / 2; i--) {
            double power = power(i, level, shot, heaviest);
            if (power > most) {
                most = power;
                at = speeds[i];
            }
        }
        return most > 0 ? Optional.of(new Weighed(shot, most, at, heaviest)) : Optional.empty();
    }

    /** The case that loads the engine most, by engine speed. */
    CaseModel[] heaviest(double level, Shot shot) {
        CaseModel[] heaviest = new CaseModel[speeds.length];
        for (int i = 0; i < speeds.length; i++) {
            heaviest[i] = caps.heaviest(speeds[i], held(level, speeds[i]), shot);
        }
        return heaviest;
    }

    /** Power of the stated case at one of the speeds looked at, the boost taken back where the heaviest case needs it. */
    double power(int speed, double level, Shot shot, CaseModel[] heaviest) {
        double over = speed == 0 ? BoostTarget.USUAL_TOLERANCE : 0;
        double gauge = borne(speeds[speed], level, shot, heaviest[speed], over).gaugePressure();
        return cases.get(0)
                .on(speeds[speed], gauge, shot)
                .map(OperatingPoint::wheelPower)
                .orElse(0.0);
    }

    private double held(double level, double rpm) {
        return Math.min(level, alone.at(rpm));
    }

    /** The fuel jet follows from the oxygen balance; it changes the air a little, so a few rounds are made. */
    private OptionalDouble fuelBore(double rpm, double gauge, double flow, Mixture mixture) {
        CaseModel stated = cases.get(0);
        double plenum = stated.ambient() + gauge;
        try {
            double bore = stated.model().fuelBore(plenum, mixture.fuelPerNitrous * flow);
            for (int round = 0; round < MIXTURE_ROUNDS; round++) {
                OperatingPoint point = stated.model()
                        .at(
                                rpm,
                                plenum,
                                Mode.NITROUS,
                                stated.feed(flow),
                                stated.model().nitrousFuel(plenum, bore));
                double fuel = Math.max(
                        1e-6, job.target().mixture().fuelFlow(point.charge().mixture()));
                boolean same = Math.abs(fuel / flow - mixture.fuelPerNitrous) < SAME_FUEL * mixture.fuelPerNitrous;
                mixture.fuelPerNitrous = fuel / flow;
                bore = stated.model().fuelBore(plenum, fuel);
                if (same) {
                    break;
                }
            }
            return OptionalDouble.of(bore);
        } catch (NoAnswerException none) {
            return OptionalDouble.empty();
        }
    }

    private Candidate candidate(double level, Weighed w) {
        BoostTarget boost = boost(level, w.shot, w.heaviest);
        double added = w.power
                - cases.get(0)
                        .off(w.rpm, boost.armed().at(w.rpm))
                        .map(OperatingPoint::wheelPower)
                        .orElse(0.0);
        return new Candidate(
                job.setup()
                        .withBoost(boost)
                        .withJets(new JetPair(nitrousBore(w.shot.nitrousFlow()), w.shot.fuelBore())),
                level,
                w.power,
                added,
                w.shot,
                closest(boost, w.shot),
                job.target().reachedBy(w.power));
    }

    /** The bore between the ladder's ends whose path passes a flow. */
    private double nitrousBore(double flow) {
        double[] bores = car.nitrous().ladder().bores();
        double plenum = cases.get(0).ambient() + alone.highest();
        return Rising.meet(
                bore -> cases.get(0).model().nitrousFlow(plenum, bore),
                flow,
                bores[0],
                bores[bores.length - 1],
                CLOSE * bores[0]);
    }

    /**
     * The boost of a level, taken back with the shot where it must be, from the speed at which the nitrous may open, which may lie
     * below the range asked for; below that speed as at it.
     */
    BoostTarget boost(double level, Shot shot, CaseModel[] heaviest) {
        List<BoostTable.Step> steps = new ArrayList<>();
        double tolerance = BoostTarget.USUAL_TOLERANCE;
        for (BoostTable.Step step : alone.steps()) {
            if (step.rpm() >= job.setup().arming().rpmLow() && step.rpm() < speeds[0]) {
                steps.add(borne(step.rpm(), level, shot, heaviest[0], steps.isEmpty() ? tolerance : 0));
            }
        }
        for (int i = 0; i < speeds.length; i++) {
            steps.add(borne(speeds[i], level, shot, heaviest[i], steps.isEmpty() ? tolerance : 0));
        }
        double first = steps.get(0).gaugePressure();
        List<BoostTable.Step> armed = new ArrayList<>();
        for (BoostTable.Step step : alone.steps()) {
            if (step.rpm() < steps.get(0).rpm()) {
                armed.add(new BoostTable.Step(step.rpm(), Math.min(step.gaugePressure(), first)));
            }
        }
        armed.addAll(steps);
        for (BoostTable.Step step : alone.steps()) {
            if (step.rpm() > speeds[speeds.length - 1]) {
                double last = steps.get(steps.size() - 1).gaugePressure();
                armed.add(new BoostTable.Step(step.rpm(), Math.min(step.gaugePressure(), last)));
            }
        }
        return new BoostTarget(alone, onTheSpeedsOf(alone, new BoostTable(armed)), tolerance);
    }

    /** Both tables are set and printed over the same engine speeds: what lies between is rounded down as well, so that it is what runs. */
    private static BoostTable onTheSpeedsOf(BoostTable other, BoostTable table) {
        TreeMap<Double, BoostTable.Step> steps = new TreeMap<>();
        for (BoostTable.Step step : other.steps()) {
            steps.put(step.rpm(), new BoostTable.Step(step.rpm(), BoostCaps.roundedDown(table.at(step.rpm()))));
        }
        table.steps().forEach(step -> steps.put(step.rpm(), step));
        return new BoostTable(List.copyOf(steps.values()));
    }

    /** The boost at a speed that the heaviest case bears with the shot, even when it is {@code over} above the table. */
    private BoostTable.Step borne(double rpm, double level, Shot shot, CaseModel heaviest, double over) {
        double gauge = caps.withShot(rpm, held(level, rpm) + over, shot, heaviest) - over;
        return new BoostTable.Step(rpm, BoostCaps.roundedDown(Math.max(0, Math.min(gauge, held(level, rpm)))));
    }

    /** The closest limit over all cases at the speeds looked at. */
    Closest closest(BoostTarget boost, Shot shot) {
        Closest closest = Closest.NONE;
        for (CaseModel at : cases) {
            for (double rpm : speeds) {
                closest = closest.or(closest(at, rpm, boost.armed().at(rpm), shot));
            }
        }
        return closest;
    }

    /** Where the models have no answer their own words stand for the limit. */
    private Closest closest(CaseModel at, double rpm, double gauge, Shot shot) {
        try {
            return PointLimits.of(car, at.point(rpm, gauge, shot));
        } catch (NoAnswerException none) {
            return new Closest(none.getMessage(), Double.NEGATIVE_INFINITY);
        }
    }
}
