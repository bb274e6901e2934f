package org.shotledger.risk;

import java.nio.file.Path;
import org.shotledger.job.Job;
import org.shotledger.plan.Plan;

/** The plan of the invented demo car, made once for all tests of this room. */
final class Whimbrel {
    static final Plan PLAN = Plan.find(Job.load(Path.of("../../data/whimbrel/job.yaml")));

    private Whimbrel() {}
}
