package org.shotledger.confidence;

import java.util.List;
import java.util.Locale;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.shotledger.flow.FlowBand;
import org.shotledger.limits.Provenance;
import org.shotledger.setup.Factor;

/**
 * Something about a plan that is not known exactly.
 *
 * @param name what it is, in the words of the trade
 * @param kind whether a model, the sheet or the day has the band
 * @param distribution how its value is distributed
 * @param effect what the world is when it has a value
 * @param provenance how the band is known
 * @param reason where the band comes from
 * @param measurement what would narrow it
 * @param effort what it takes to halve the uncertainty, in any unit that is the same for all, for example hours; above zero
 */
public record Unknown(
        String name,
        Kind kind,
        Distribution distribution,
        Effect effect,
        Provenance provenance,
        String reason,
        String measurement,
        double effort) {

    /** Whose band it is. */
    public enum Kind {
        /** What a model is wrong by. */
        MODEL,
        /** A figure of the sheet, a limit's own band among them. */
        SHEET,
        /** What the day may do beside the cases: bottle, weather, voltage. */
        DAY
    }

    /** What the world is when an unknown has a value. */
    @FunctionalInterface
    public interface Effect {
        /**
         * Applies a value.
         *
         * @param world the world before
         * @param value the unknown's value
         * @return the changed world
         */
        World of(World world, double value);
    }

    public Unknown {
        if (!(effort > 0 && Double.isFinite(effort))) {
            throw new IllegalArgumentException(
                    "The effort to know \"" + name + "\" better is " + effort + "; give a finite number above zero.");
        }
    }

    /**
     * What a model is wrong by.
     *
     * @param factor the factor
     * @param band its 90 % band
     * @param provenance how the band is known
     * @param reason where the band comes from
     * @param measurement what would narrow it
     * @return the unknown with an effort of 1
     */
    public static Unknown model(
            Factor factor, FlowBand band, Provenance provenance, String reason, String measurement) {
        return new Unknown(
                factor.words(),
                Kind.MODEL,
                Distribution.band(band),
                (world, value) -> world.withCases(
                        at -> at.with(factor, value * at.factors().of(factor))),
                provenance,
                reason,
                measurement,
                1);
    }

    /**
     * Several that err together, for example two readings of one gauge: all lie at the same probability of their distributions.
     *
     * @param name what makes them err together
     * @param members the unknowns, at least one; none of them may be given beside the group
     * @return one unknown, drawn as a standard normal score, with the largest effort of its members
     */
    public static Unknown together(String name, List<Unknown> members) {
        NormalDistribution score = new NormalDistribution();
        Unknown first = members.get(0);
        Effect all = (world, z) -> {
            World changed = world;
            for (Unknown member : members) {
                double value = member.distribution().quantile(score.cumulativeProbability(z));
                changed = member.effect().of(changed, value);
            }
            return changed;
        };
        double effort = members.stream().mapToDouble(Unknown::effort).max().orElseThrow();
        return new Unknown(
                name,
                first.kind(),
                Distribution.normal(0, 1),
                all,
                first.provenance(),
                String.join(
                        "; ",
                        members.stream().map(m -> m.name() + ": " + m.reason()).toList()),
                first.measurement(),
                effort);
    }

    /**
     * The range that holds it nine times out of ten.
     *
     * @return name and range in words, SI
     */
    public String range() {
        return String.format(
                Locale.ROOT, "%s, %.4g to %.4g", name, distribution.quantile(0.05), distribution.quantile(0.95));
    }
}
