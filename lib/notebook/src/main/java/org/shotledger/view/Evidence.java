package org.shotledger.view;

import java.util.Optional;
import org.shotledger.commission.JobList;
import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.ConfidenceStudy;
import org.shotledger.confidence.FlowTestAdvice;
import org.shotledger.confidence.Unknowns;
import org.shotledger.document.Progress;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Drift;
import org.shotledger.risk.Faults;
import org.shotledger.risk.TimeToDamage;
import org.shotledger.stepup.StepUp;
import org.shotledger.track.TrackCard;

/**
 * What is worked out once for a document, so that no figure stands in it twice from two sources.
 *
 * @param plan the plan
 * @param drift how far inputs may stray; empty without nitrous
 * @param faults what each fault does; empty without nitrous
 * @param stepUp the ladder of shots; empty without nitrous
 * @param advice flow tests worth making; without tests where there are no jets
 * @param day weather and bottle; empty where no pass is run
 * @param jobs parts, work and costs
 * @param chances how sure the plan is; empty where the models have no answer around it
 */
record Evidence(
        Plan plan,
        Optional<Drift> drift,
        Optional<Faults> faults,
        Optional<StepUp> stepUp,
        FlowTestAdvice advice,
        Optional<TrackCard> day,
        JobList jobs,
        Optional<Confidence> chances) {
    /** The fewest that the study takes: the page has room for a round figure. */
    private static final int DRAWS = 1600;

    private static final long SEED = 1;
    private static final int STEPS = 5;

    /** A second document of a plan, for another reader or in other units, rests on the same. */
    private record Asked() {}

    static Evidence of(Plan plan, Progress progress) {
        return plan.known().of(new Asked(), () -> worked(plan, progress));
    }

    private static Evidence worked(Plan plan, Progress progress) {
        boolean nitrous = plan.setup().jets().isPresent();
        progress.next("the chances", 0, STEPS);
        Optional<Confidence> chances = chances(plan);
        progress.next("how far inputs may stray", 1, STEPS);
        Optional<Drift> drift = nitrous ? Optional.of(Drift.of(plan)) : Optional.empty();
        progress.next("what each fault does", 2, STEPS);
        Optional<Faults> faults = drift.map(d -> Faults.of(plan, d, TimeToDamage.USUAL));
        progress.next("the step-up plan", 3, STEPS);
        Optional<StepUp> stepUp = nitrous ? Optional.of(StepUp.of(plan)) : Optional.empty();
        FlowTestAdvice advice = FlowTestAdvice.of(plan);
        progress.next("the day and the jobs", 4, STEPS);
        Optional<TrackCard> day = plan.stated().pass().map(pass -> TrackCard.of(plan));
        return new Evidence(plan, drift, faults, stepUp, advice, day, JobList.of(plan), chances);
    }

    /** A plan at whose edges the models have no answer has no chances that could be told. */
    private static Optional<Confidence> chances(Plan plan) {
        try {
            return Optional.of(ConfidenceStudy.quick(plan, Unknowns.of(plan), DRAWS, SEED));
        } catch (IllegalArgumentException noAnswer) {
            return Optional.empty();
        }
    }
}
