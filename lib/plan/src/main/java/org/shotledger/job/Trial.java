package org.shotledger.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Origin;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.Setup;
import org.shotledger.sheet.Problem;

/** One evaluation of a job, so that a sheet that is called good can be planned: the setup of the sheet, or middling jets where it has none. */
final class Trial {
    private final Job job;
    private final List<Problem> found = new ArrayList<>();

    private Trial(Job job) {
        this.job = job;
    }

    static List<Problem> of(Job job) {
        Trial trial = new Trial(job);
        trial.run();
        return List.copyOf(trial.found);
    }

    private void run() {
        Setup setup = job.setup().jets().isPresent() ? job.setup() : job.setup().withJets(middling());
        Outcome outcome;
        try {
            outcome = Evaluate.of(job.car(), setup, job.stated());
        } catch (IllegalArgumentException refused) {
            say("setup", "This sheet cannot be run: " + refused.getMessage() + suspect());
            return;
        }
        if (outcome.off().isEmpty()) {
            say(
                    "turbo.compressor.map",
                    "Nowhere between the ends of the breathing table has the engine an answer on boost alone in '"
                            + job.stated().name()
                            + "'; check map, turbine, breathing table and boost ceiling against the base pull.");
        }
    }

    /** What in the sheet is unusual is the first thing to look at. */
    private String suspect() {
        return job.unusual().stream()
                .findFirst()
                .map(problem -> " Look first at " + problem.field() + ", " + problem.found() + ".")
                .orElse("");
    }

    private JetPair middling() {
        double[] bores = job.car().nitrous().ladder().bores();
        return new JetPair(bores[bores.length / 3], bores[bores.length / 4]);
    }

    private void say(String path, String sentence) {
        Optional<Origin> at = job.car().origin(path);
        found.add(new Problem(
                job.source().file(),
                at.map(Origin::line).orElse(0),
                0,
                path,
                at.map(Origin::text).orElse(""),
                sentence));
    }
}
