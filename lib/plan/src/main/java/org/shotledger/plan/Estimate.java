package org.shotledger.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shotledger.car.Origin;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.job.SheetField;
import org.shotledger.job.SheetFields;

/**
 * How far an estimated figure of the sheet moves the answer when it lies at the upper end of its band: what to measure next.
 *
 * @param path the figure's place in the sheet
 * @param text the figure as written, with its band
 * @param power by how much the power changes in the case of the target, as a share
 * @param margin by how much the least margin over all limits changes in that case, as a share of a bound
 */
public record Estimate(String path, String text, double power, double margin) {
    /** Ranks the estimated figures of a plan's sheet: the car is calibrated anew with each, and the plan's setup run once. */
    static List<Estimate> of(Plan plan) {
        Outcome before = plan.stated();
        List<Estimate> all = new ArrayList<>();
        for (Origin origin : plan.car().origins().values()) {
            if (origin.provenance().equals("estimated") && origin.uncertainty() > 0) {
                all.add(moved(plan, before, origin));
            }
        }
        all.sort(Comparator.comparingDouble(Estimate::weight).reversed());
        return all;
    }

    private static Estimate moved(Plan plan, Outcome before, Origin origin) {
        try {
            Job job = plan.job().with(origin.path(), origin.written(origin.value() + origin.halfWidth()));
            Outcome after = Evaluate.of(job.car(), plan.setup(), job.stated());
            return new Estimate(
                    origin.path(),
                    origin.text(),
                    after.power() / before.power() - 1,
                    after.limits().leastMargin() - before.limits().leastMargin());
        } catch (IllegalArgumentException impossible) {
            // the other figures leave no room for it: nothing is less well known
            return new Estimate(origin.path(), origin.text(), Double.NaN, Double.NaN);
        }
    }

    private double weight() {
        double weight = Math.abs(power) + Math.abs(margin);
        return Double.isNaN(weight) ? Double.MAX_VALUE : weight;
    }

    /** What moves, by how much, and how to measure it. */
    @Override
    public String toString() {
        String how =
                SheetFields.at(path).stream().findFirst().map(SheetField::how).orElse("measure it");
        return Double.isNaN(power)
                ? path + ", " + text + ": at the end of its band the sheet has no answer; " + how
                : String.format(
                        Locale.ROOT,
                        "%s, %s: power %+.1f %%, least margin %+.1f %%; %s",
                        path,
                        text,
                        100 * power,
                        100 * margin,
                        how);
    }
}
