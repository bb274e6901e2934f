package org.shotledger.study;

import static org.shotledger.units.Quantities.thou;

import java.nio.file.Path;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.BoostTarget;

/** 36 combinations around a setup of the invented demo car, some of which keep every limit. */
final class DemoSpace {
    static final Job JOB = job();
    static final Plan PLAN = Plan.of(
            JOB,
            JOB.setup()
                    .withBoost(new BoostTarget(
                            BoostTable.constant(0.2e5),
                            BoostTable.of(new double[] {5000, 5800}, new double[] {0.2e5, 1.2e5}),
                            BoostTarget.USUAL_TOLERANCE))
                    .withJets(thou(40), thou(21)));
    static final Space SPACE = around(PLAN);

    private DemoSpace() {}

    /** The same combinations around an equal plan. */
    static Space around(Plan plan) {
        return Space.of(plan)
                .vary(Axis.BOOST, "1.1 bar gauge", "1.2 bar gauge")
                .vary(Axis.NITROUS_JET, "34 thou", "37 thou", "40 thou")
                .vary(Axis.FUEL_JET, "18 thou", "20 thou", "22 thou")
                .vary(Axis.BOOST_REFERENCE, 0, 1);
    }

    /** The same plan before any study of it. */
    static Plan unknown(Plan plan) {
        return new Plan(
                plan.job(),
                plan.setup(),
                plan.outcomes(),
                plan.limits(),
                plan.alternatives(),
                plan.stopped(),
                plan.moved());
    }

    /** One short pass, which the demo's bottle gives. */
    private static Job job() {
        Job job = Job.load(Path.of("../../data/whimbrel"));
        return job.with(job.target().withPasses(1, 8).withWheelPower(480e3));
    }
}
