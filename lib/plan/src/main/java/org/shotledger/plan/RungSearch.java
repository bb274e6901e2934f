package org.shotledger.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.PlanSearch.Candidate;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;

/** Takes real jets of the ladder in place of the exact ones and searches the boost again that gives the power with them. */
final class RungSearch {
    private static final double CLOSE = 1e-3;

    private final Job job;
    private final Car car;
    private final List<CaseModel> cases;
    private final ShotSearch shots;
    private final double[] speeds;
    private final double mostBoost;

    RungSearch(Job job, Car car, List<CaseModel> cases, BoostCaps caps, BoostTable alone, double[] speeds) {
        this.job = job;
        this.car = car;
        this.cases = cases;
        this.shots = new ShotSearch(job, car, cases, caps, alone, speeds);
        this.speeds = speeds;
        this.mostBoost = alone.highest();
    }

    /** The pairs of the ladder around a candidate, each with the boost that gives the power asked for. */
    List<Candidate> around(Candidate candidate) {
        JetLadder ladder = car.nitrous().ladder();
        double exact = candidate.setup().jets().orElseThrow().nitrousBore();
        List<Candidate> found = new ArrayList<>();
        for (double nitrous : rungs(ladder, exact)) {
            double flow = cases.get(0)
                    .model()
                    .feed(plenum(candidate.level()), nitrous)
                    .massFlow();
            double wanted = candidate.shot().fuelBore()
                    * Math.sqrt(flow / candidate.shot().nitrousFlow());
            for (double fuel : rungs(ladder, wanted)) {
                pair(new JetPair(nitrous, fuel), new Shot(flow, fuel), candidate.level())
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    private double plenum(double gauge) {
        return cases.get(0).ambient() + gauge;
    }

    private static Set<Double> rungs(JetLadder ladder, double bore) {
        double[] bores = ladder.bores();
        double held = Math.min(Math.max(bore, bores[0]), bores[bores.length - 1]);
        return new TreeSet<>(List.of(ladder.below(held), ladder.above(held)));
    }

    private Optional<Candidate> pair(JetPair pair, Shot shot, double near) {
        CaseModel[] heaviest = shots.heaviest(near, shot);
        double level = Rising.meet(
                gauge -> power(gauge, shot, heaviest),
                job.target().wheelPower(),
                0.5 * near,
                mostBoost,
                CLOSE * mostBoost);
        double power = power(level, shot, heaviest);
        if (!(power > 0)) {
            return Optional.empty();
        }
        BoostTarget boost = shots.boost(level, shot, heaviest);
        return Optional.of(new Candidate(
                job.setup().withBoost(boost).withJets(pair),
                level,
                power,
                Double.NaN,
                shot,
                shots.closest(boost, shot).or(PointLimits.sizes(car, job.setup(), pair)),
                job.target().reachedBy(power)));
    }

    private double power(double level, Shot shot, CaseModel[] heaviest) {
        BoostTarget boost = shots.boost(level, shot, heaviest);
        double most = 0;
        for (double rpm : speeds) {
            most = Math.max(
                    most,
                    cases.get(0)
                            .on(rpm, boost.armed().at(rpm), shot)
                            .map(OperatingPoint::wheelPower)
                            .orElse(0.0));
        }
        return most;
    }
}
