package org.shotledger.plan;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shotledger.job.Job;
import org.shotledger.job.Starter;
import org.shotledger.limits.Verdict;

/** The sheet a new job begins with is a whole car: its plan reaches the target inside every limit, and so does that of a near one. */
class StarterPlanTest {
    @Test
    void the_first_sheet_has_a_plan(@TempDir Path folder) {
        Path place = folder.resolve("job");
        Starter.write(place);
        Job starter = Job.load(place);
        holds(starter);
        holds(starter.with("target.wheel-power", "400 hp")
                .with("fuels.main.ethanol", "60 %")
                .with("vehicle.mass", "1180 kg"));
    }

    private static void holds(Job job) {
        Plan plan = Plan.find(job);
        assertTrue(plan.reached(), plan.verdictLine());
        assertNotEquals(Verdict.BROKEN, plan.verdict(), plan.verdictLine());
    }
}
