package org.shotledger.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shotledger.car.Car;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetLadder;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.PlanSearch.Candidate;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;

/** Takes real jets of the ladder in place of the exact ones and searches the boost again that gives the power with them. */
final class RungSearch {
    /** Relative step to which boost is found: our choice, less than what rounding leaves. */
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
        CaseModel[] heaviest = shots.heaviest(candidate.level(), candidate.shot());
        int peak = strongest(candidate.level(), candidate.shot(), heaviest);
        Map<JetPair, Shot> pairs = new LinkedHashMap<>();
        for (double nitrous : rungs(ladder, exact)) {
            double flow = cases.get(0).model().nitrousFlow(plenum(candidate.level()), nitrous);
            double wanted = candidate.shot().fuelBore()
                    * Math.sqrt(flow / candidate.shot().nitrousFlow());
            for (double fuel : rungs(ladder, wanted)) {
                pairs.put(new JetPair(nitrous, fuel), new Shot(flow, fuel));
            }
        }
        return pairs.entrySet().parallelStream()
                .map(pair -> pair(pair.getKey(), pair.getValue(), candidate.level(), heaviest, peak))
                .flatMap(Optional::stream)
                .toList();
    }

    private double plenum(double gauge) {
        return cases.get(0).ambient() + gauge;
    }

    private static Set<Double> rungs(JetLadder ladder, double bore) {
        double[] bores = ladder.bores();
        double held = Math.min(Math.max(bore, bores[0]), bores[bores.length - 1]);
        return new TreeSet<>(List.of(ladder.below(held), ladder.above(held)));
    }

    private Optional<Candidate> pair(JetPair pair, Shot shot, double near, CaseModel[] heaviest, int peak) {
        double level = BoostCaps.roundedUp(Rising.meet(
                gauge -> power(gauge, shot, heaviest, peak),
                job.target().wheelPower(),
                0.5 * near,
                mostBoost,
                CLOSE * mostBoost));
        double power = power(level, shot, heaviest, peak);
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

    /** The place of the engine speed that gives most power. */
    private int strongest(double level, Shot shot, CaseModel[] heaviest) {
        int strongest = 0;
        double most = 0;
        for (int i = 0; i < speeds.length; i++) {
            double power = shots.power(i, level, shot, heaviest);
            if (power > most) {
                most = power;
                strongest = i;
            }
        }
        return strongest;
    }

    /** The most power there and at the speeds beside it: another boost or rung does not move the peak farther. */
    private double power(double level, Shot shot, CaseModel[] heaviest, int peak) {
        double most = 0;
        for (int i = Math.max(0, peak - 1); i <= Math.min(speeds.length - 1, peak + 1); i++) {
            most = Math.max(most, shots.power(i, level, shot, heaviest));
        }
        return most;
    }
}
