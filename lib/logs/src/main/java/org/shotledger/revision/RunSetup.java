package org.shotledger.revision;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.logs.EngineLog;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;

/**
 * The setup a log was made with.
 *
 * @param name its name
 * @param outcome what it is expected to do in the air of the log
 * @param shot its step of the step-up plan; empty when it is none
 * @param sentence how it is known, in one sentence
 */
public record RunSetup(String name, Outcome outcome, Optional<Shot> shot, String sentence) {
    private static final Pattern STEP = Pattern.compile("(?i)step\\s+(\\d{1,3})");

    /**
     * Finds the setup that a log names: {@code plan}, {@code step N} of the step-up plan, or a job sheet beside the log.
     *
     * @param plan the plan of the job
     * @param log the log; its mapping names the setup
     * @param folder the folder in which a named sheet lies
     * @return the setup; that of the plan where the log names none, and the sentence says so
     * @throws IllegalArgumentException when there is no such step, sheet or place
     */
    public static RunSetup of(Plan plan, EngineLog log, Path folder) {
        String named = log.setup();
        if (named.isEmpty()) {
            return of(
                    plan,
                    log,
                    "plan",
                    plan,
                    fullShot(plan),
                    "The log does not say which setup was run; it is held against the plan. Write \"setup: plan\","
                            + " \"setup: step 1\" or \"setup: FILE\" into its mapping.");
        }
        if (named.equalsIgnoreCase("plan")) {
            return of(plan, log, "plan", plan, fullShot(plan), "The log names the plan as the setup that was run.");
        }
        Matcher step = STEP.matcher(named);
        return step.matches()
                ? step(plan, log, Integer.parseInt(step.group(1)))
                : sheet(plan, log, folder.resolve(named));
    }

    private static Optional<Shot> fullShot(Plan plan) {
        return StepUp.of(plan).fullShot();
    }

    private static RunSetup step(Plan plan, EngineLog log, int number) {
        List<Shot> shots = StepUp.of(plan).shots();
        if (number < 1 || number > shots.size()) {
            throw new IllegalArgumentException("The log " + log.file() + " names step " + number
                    + " of the step-up plan, which has " + shots.size() + (shots.size() == 1 ? " step" : " steps")
                    + "; mend \"setup\" in its mapping.");
        }
        Shot shot = shots.get(number - 1);
        return of(
                plan,
                log,
                "step " + number,
                shot.plan(),
                Optional.of(shot),
                "The log names step " + number + " of " + shots.size()
                        + " of the step-up plan as the setup that was run.");
    }

    private static RunSetup sheet(Plan plan, EngineLog log, Path file) {
        if (!Files.exists(file)) {
            throw new IllegalArgumentException("The log " + log.file() + " names the setup \"" + log.setup()
                    + "\", which is no step of the step-up plan and no file beside it; write \"plan\", \"step"
                    + " N\" or a job sheet.");
        }
        Job job = Job.load(file);
        return of(
                plan,
                log,
                log.setup(),
                Plan.of(job, job.setup()),
                Optional.empty(),
                "The log names the setup of " + log.setup() + " as what was run.");
    }

    private static RunSetup of(Plan plan, EngineLog log, String name, Plan run, Optional<Shot> shot, String sentence) {
        if (log.conditions().isEmpty()) {
            return new RunSetup(name, run.stated(), shot, sentence);
        }
        Case there = plan.job().caseNamed(log.conditions());
        return new RunSetup(
                name,
                Evaluate.of(run.car(), run.setup(), there),
                shot,
                sentence + " Its air is that of " + log.conditions() + ".");
    }
}
