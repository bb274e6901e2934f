package org.shotledger.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.shotledger.car.Origin;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.job.Job;
import org.shotledger.job.SheetField;
import org.shotledger.job.SheetFields;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * How far an estimated figure of the sheet moves the answer when it lies at the upper end of its band: what to measure next.
 *
 * @param path the figure's place in the sheet
 * @param text the figure as written, with its band
 * @param power by how much the power changes in the case of the target, as a share
 * @param margin by how much the least margin over all limits changes in that case, as a share of a bound
 */
public record Estimate(String path, String text, double power, double margin) {
    /** Ranks the estimated figures of a plan's sheet: the car is calibrated anew with each, and the plan's setup run once as it moves it. */
    static List<Estimate> of(Plan plan) {
        List<Origin> banded = plan.car().origins().values().stream()
                .filter(origin -> origin.provenance().equals("estimated") && origin.uncertainty() > 0)
                .toList();
        List<Estimate> all = new ArrayList<>();
        if (!banded.isEmpty()) {
            Job sheet = plan.job().with(banded.get(0).path(), banded.get(0).text());
            banded.forEach(origin -> all.add(moved(plan, sheet, origin)));
        }
        all.sort(Comparator.comparingDouble(Estimate::weight).reversed());
        return all;
    }

    private static Estimate moved(Plan plan, Job sheet, Origin origin) {
        Outcome before = plan.stated();
        try {
            Job job = plan.job().with(origin.path(), origin.written(origin.value() + origin.halfWidth()));
            Case at = job.stated().equals(sheet.stated()) ? before.at() : job.stated();
            Outcome after = Evaluate.of(job.car(), setup(plan.setup(), sheet.setup(), job.setup()), at);
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

    /** The plan's setup with what the moved figure sets, such as the charge of the bottle or a regulator's pressure. */
    private static Setup setup(Setup plan, Setup sheet, Setup moved) {
        return new Setup(
                part(Setup::boost, plan, sheet, moved),
                part(Setup::jets, plan, sheet, moved),
                part(Setup::mainRegulator, plan, sheet, moved),
                part(Setup::ownRegulator, plan, sheet, moved),
                part(Setup::mixture, plan, sheet, moved),
                part(Setup::retard, plan, sheet, moved),
                part(Setup::arming, plan, sheet, moved),
                part(Setup::bottle, plan, sheet, moved),
                part(Setup::passes, plan, sheet, moved));
    }

    private static <T> T part(Function<Setup, T> read, Setup plan, Setup sheet, Setup moved) {
        T now = read.apply(moved);
        return read.apply(now.equals(read.apply(sheet)) ? plan : moved);
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
        return !Double.isFinite(power + margin)
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
