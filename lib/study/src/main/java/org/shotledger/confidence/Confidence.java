package org.shotledger.confidence;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * How sure a plan is.
 *
 * @param plan the plan
 * @param unknowns what is not known exactly
 * @param draws number of draws
 * @param stated the chances of this car, all bands included
 * @param exactModels the same if the models were exact: only the bands of sheet and day
 * @param influences what each unknown does, the most decisive first; empty for a quick study
 * @param check draws that were evaluated exactly as well
 */
public record Confidence(
        Plan plan,
        List<Unknown> unknowns,
        int draws,
        Chances stated,
        Chances exactModels,
        List<Influence> influences,
        SurfaceCheck check) {

    public Confidence {
        unknowns = List.copyOf(unknowns);
        influences = List.copyOf(influences);
    }

    /**
     * The wheel power that can be promised inside every limit in every case.
     *
     * @param confidence probability, above 0 and below 1
     * @return the most power that is reached, with every limit kept, with that probability, W; NaN when the limits alone are
     *     kept less often
     */
    public double powerAt(double confidence) {
        double[] values = stated.kept().sorted();
        long needed = Math.round(confidence * draws);
        return needed <= values.length && needed > 0 ? values[(int) (values.length - needed)] : Double.NaN;
    }

    /**
     * The unknown whose better knowledge narrows the decisive margin most for its effort.
     *
     * @return what to measure next
     * @throws java.util.NoSuchElementException after a quick study, which has no influences
     */
    public Influence measureNext() {
        return influences.stream()
                .max(Comparator.comparingDouble(Influence::gainPerEffort))
                .orElseThrow();
    }

    /**
     * The answer in a few sentences.
     *
     * @return both lines of chances, the spread of the power, the exact check, and what to measure next
     */
    public String summary() {
        String next = influences.isEmpty()
                ? ""
                : " Measure next: " + measureNext().unknown().measurement() + " ("
                        + measureNext().unknown().name() + ").";
        String checked = check.draws() == 0 ? " No draw was evaluated exactly as well." : " " + check.summary();
        return String.format(
                Locale.ROOT,
                "%s, this car with all stated bands: %s. If the models were exact: %s. Power %s with a standard uncertainty of"
                        + " %s.%s%s Chances are those of the stated bands, not of a part that breaks.",
                plan.job().name(),
                line(stated),
                line(exactModels),
                QuantityKind.POWER.text(stated.power().mean(), UnitSystem.US),
                QuantityKind.POWER.text(stated.power().deviation(), UnitSystem.US),
                checked,
                next);
    }

    private String line(Chances chances) {
        return String.format(
                Locale.ROOT,
                "%s to reach %s at the wheels, %s to keep every limit in %d cases, %s for both",
                chances.reach().text(),
                QuantityKind.POWER.text(plan.target().wheelPower(), UnitSystem.US),
                chances.keep().text(),
                plan.outcomes().size(),
                chances.both().text());
    }
}
