package org.shotledger.budget;

import java.util.List;
import java.util.Locale;
import org.shotledger.build.Build;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * The answer to a wish: how much power from boost, how much from nitrous, with which jets, inside which limits, and why.
 *
 * @param build the build
 * @param wish what was asked
 * @param evaluator the calibrated models
 * @param conditions what surrounds the engine at the start of a pass
 * @param boostAlone what boost gives by itself
 * @param candidates the ways to divide the wish that were weighed, by boost, ascending
 * @param split the recommended one over engine speed
 * @param jets its jets
 * @param peak its operating point of most power
 * @param bottle what the bottle gives with them
 * @param limits every limit over the asked band
 * @param ledger every figure with its reasoning
 */
public record Budget(
        Build build,
        Wish wish,
        Evaluator evaluator,
        Conditions conditions,
        BoostAlone boostAlone,
        List<SplitCandidate> candidates,
        Split split,
        JetChoice jets,
        Evaluation peak,
        BottlePlan bottle,
        Limits limits,
        Ledger ledger) {

    /** Copies the list. */
    public Budget {
        candidates = List.copyOf(candidates);
    }

    /**
     * Makes the budget of a build's own target.
     *
     * @param build the build
     * @return the budget
     * @throws WishException when no combination meets the target; the message says what could be asked instead
     */
    public static Budget plan(Build build) {
        return plan(build, Wish.of(build.target()));
    }

    /**
     * Makes the budget of a wish.
     *
     * @param build the build
     * @param wish what is asked
     * @return the budget
     * @throws WishException when no combination meets the wish; the message says what could be asked instead
     */
    public static Budget plan(Build build, Wish wish) {
        return new Planner(build, wish).plan();
    }

    /**
     * The mixture wanted with the nitrous on.
     *
     * @return that of the wish, or the build sheet's where the wish names none
     */
    public MixtureGoal mixtureGoal() {
        return wish.mixture().orElse(build.tune().goal());
    }

    /**
     * The way to divide the wish that the plan follows.
     *
     * @return the candidate whose closest limit is furthest away
     */
    public SplitCandidate recommended() {
        return Planner.best(candidates).orElseThrow();
    }

    /**
     * The plan at an engine speed with the nitrous on: the boost of the recommended way, taken back where torque or peak
     * pressure would come too close to its limit.
     *
     * @param rpm engine speed, rev/min, inside what {@link #boostAlone()} covers
     * @return the operating point
     * @throws org.shotledger.boost.OutsideMapException where the compressor map has no answer
     */
    public Evaluation planned(double rpm) {
        double ambient = conditions.air().pressure();
        Feeds feeds = new Feeds(evaluator, conditions, ambient + build.turbo().boostCeiling());
        BoostSchedule boost =
                BoostSchedule.of(boostAlone, ambient + recommended().gaugePressure());
        return new Band(evaluator, conditions, feeds, boost, rpm, rpm)
                .one(rpm, peak.demand().jets().orElseThrow());
    }

    /**
     * The figures a figure rests on.
     *
     * @param key key of a ledger entry, for example {@code "nitrous-flow"}
     * @return the entry and, below it, everything it was made from
     */
    public List<Entry> why(String key) {
        return ledger.why(key);
    }

    /**
     * The verdict in one line.
     *
     * @return wish, split, jets, the limit that bites first, and its margin
     */
    public String verdictLine() {
        Limit first = limits.first().orElseThrow();
        JetChoice.Option chosen = jets.chosen();
        return String.format(
                Locale.ROOT,
                "%s: %s at the wheels under '%s' from %s (%s) of boost and %d nozzle%s of %s nitrous and %s fuel; every limit together: %s,"
                        + " the closest is %s with %.1f %% left; one bottle gives %d of the %d passes asked. An estimate, to be"
                        + " proven in small steps.",
                build.name(),
                QuantityKind.POWER.text(peak.wheelPower(), UnitSystem.US),
                wish.conditions(),
                QuantityKind.GAUGE_PRESSURE.text(peak.gaugePressure(), UnitSystem.US),
                QuantityKind.GAUGE_PRESSURE.text(peak.gaugePressure(), UnitSystem.SI),
                jets.nozzles(),
                jets.nozzles() == 1 ? "" : "s",
                QuantityKind.BORE.text(chosen.pair().nitrousBore(), UnitSystem.US),
                QuantityKind.BORE.text(chosen.pair().fuelBore(), UnitSystem.US),
                limits.verdict().word(),
                first.name(),
                100 * first.relativeMargin(),
                bottle.passes(),
                wish.passes());
    }
}
