package org.shotledger.whathelps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Origin;
import org.shotledger.job.Job;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.plan.Plan;
import org.shotledger.sheet.SheetException;

/**
 * The answer to "what would help?" for a plan that breaks a limit, misses its power or is tight.
 *
 * <p>Single changes of the job are tried in the order of their cost, each with the whole search for a plan, until enough of them
 * help. Changes are not combined. What is found is an estimate, to be proven in small steps.
 *
 * @param plan the plan as it is
 * @param attempts the changes tried, in the order of cost
 */
public record WhatHelps(Plan plan, List<Attempt> attempts) {
    /** The cheapest and two dearer ones. */
    private static final int ENOUGH = 3;

    public WhatHelps {
        attempts = List.copyOf(attempts);
    }

    /**
     * Searches the common changes for the cheapest and two dearer ones that mend the plan.
     *
     * @param plan the plan as it is
     * @return the search; without attempts when the plan holds
     */
    public static WhatHelps of(Plan plan) {
        return of(plan, CommonChanges.ALL, ENOUGH);
    }

    /**
     * Searches a list of changes.
     *
     * @param plan the plan as it is
     * @param changes the changes that may be made
     * @param enough the search ends when so many changes mend the plan, at least 1; for a plan that is only tight, when so many help
     * @return the search; without attempts when the plan holds
     */
    public static WhatHelps of(Plan plan, List<Change> changes, int enough) {
        List<Attempt> attempts = new ArrayList<>();
        Verdict was = plan.verdict();
        if (was != Verdict.HOLDS) {
            List<Change> cheapestFirst = new ArrayList<>(changes);
            cheapestFirst.sort(Comparator.comparing(Change::cost));
            int found = 0;
            for (int i = 0; i < cheapestFirst.size() && found < enough; i++) {
                found += tried(plan, cheapestFirst.get(i), attempts) ? 1 : 0;
            }
        }
        return new WhatHelps(plan, attempts);
    }

    /** Tries the steps of a change until one does what is looked for. */
    private static boolean tried(Plan plan, Change change, List<Attempt> attempts) {
        Optional<Origin> stated = change.stated(plan.car());
        if (stated.isEmpty()) {
            return false;
        }
        for (Change.Step step : change.steps()) {
            Optional<String> text;
            try {
                text = step.from(stated.get());
            } catch (IllegalArgumentException noFigure) {
                attempts.add(Attempt.refused(
                        change, stated.get().text(), stated.get().text(), noFigure.getMessage()));
                return false;
            }
            if (text.isEmpty() || text.get().equals(stated.get().text())) {
                continue;
            }
            Attempt attempt = attempt(plan, change, stated.get().text(), text.get());
            attempts.add(attempt);
            if (attempt.helps() && attempt.mends()) {
                return true;
            }
        }
        return false;
    }

    private static Attempt attempt(Plan plan, Change change, String before, String after) {
        Job changed;
        try {
            changed = plan.job()
                    .with(change.path(), after)
                    .with(plan.target())
                    .withCases(plan.job().cases());
        } catch (SheetException refused) {
            return Attempt.refused(
                    change, before, after, refused.problems().get(0).sentence());
        } catch (IllegalArgumentException refused) {
            return Attempt.refused(change, before, after, refused.getMessage());
        }
        Plan then = Plan.find(changed);
        Quality now = Quality.of(plan);
        Quality next = Quality.of(then);
        return new Attempt(
                change,
                before,
                after,
                then.verdict(),
                next.betterThan(now),
                then.stated().power() - plan.stated().power(),
                next.margin() - now.margin(),
                then.parts().first().map(Limit::name).orElse("no limit"));
    }

    /**
     * The cheapest change after which the power is reached inside every limit.
     *
     * @return the attempt; empty when none of those tried does
     */
    public Optional<Attempt> cheapest() {
        return attempts.stream()
                .filter(attempt -> attempt.helps() && attempt.mends())
                .findFirst();
    }

    /**
     * The changes that help, those that mend the plan first, each group in the order of cost.
     *
     * @return the attempts; empty when none of those tried helps
     */
    public List<Attempt> helping() {
        return attempts.stream()
                .filter(Attempt::helps)
                .sorted(Comparator.comparing(attempt -> !attempt.mends()))
                .toList();
    }
}
