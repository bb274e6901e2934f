package org.shotledger.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.shotledger.confidence.Chance;
import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.Influence;
import org.shotledger.confidence.RobustChoice;
import org.shotledger.limits.Limit;
import org.shotledger.study.Candidate;
import org.shotledger.study.Figures;
import org.shotledger.study.StudyException;
import org.shotledger.study.SweepResult;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Sweeps, comparisons and confidence as tables. */
public final class StudyTables {
    private static final int MOST_COMPARED = 5;

    private StudyTables() {}

    /**
     * The best combinations of a sweep.
     *
     * @param swept the sweep
     * @return one row a combination, the recommended one first
     */
    public static Listing of(SweepResult swept) {
        return candidates(
                "The best combinations, ranked by " + swept.task().rankBy().words(), swept.best());
    }

    /**
     * The trade-off front of a sweep.
     *
     * @param swept the sweep
     * @return one row a combination
     */
    public static Listing front(SweepResult swept) {
        return candidates("The trade-off front", swept.front());
    }

    /** Settings that all have are told once, above the table; those that differ have a column each. */
    private static Listing candidates(String caption, List<Candidate> candidates) {
        Map<String, String> shared = new LinkedHashMap<>(
                candidates.isEmpty()
                        ? Map.of()
                        : candidates.get(0).combination().others());
        candidates.forEach(
                c -> shared.entrySet().retainAll(c.combination().others().entrySet()));
        List<String> differing = candidates.isEmpty()
                ? List.of()
                : candidates.get(0).combination().others().keySet().stream()
                        .filter(key -> !shared.containsKey(key))
                        .toList();
        Listing.Builder rows = Listing.titled(caption + all(shared)).words("Combination");
        differing.forEach(rows::words);
        rows.figures("Wheel power", QuantityKind.POWER)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("Closest limit")
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Nitrous a pass", QuantityKind.MASS)
                .figures("Peak pressure", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Forgiveness", QuantityKind.FRACTION);
        for (Candidate candidate : candidates) {
            Figures is = candidate.outcome();
            List<Object> cells = new ArrayList<>(List.of(candidate.combination().name()));
            differing.forEach(key -> cells.add(candidate.combination().others().get(key)));
            cells.addAll(List.of(
                    is.wheelPower(),
                    is.leastMargin(),
                    candidate.limits().find(is.first()).map(Limit::name).orElse(is.first()),
                    is.lambda(),
                    candidate.nitrousPerPass(),
                    is.peakPressure(),
                    is.forgiveness()));
            rows.row(cells.toArray());
        }
        return rows.build();
    }

    private static String all(Map<String, String> shared) {
        return shared.isEmpty()
                ? ""
                : shared.entrySet().stream()
                        .map(e -> e.getKey() + " " + e.getValue())
                        .collect(Collectors.joining(", ", "; all with ", ""));
    }

    /**
     * What broke first in the combinations that were rejected.
     *
     * @param swept the sweep
     * @return one row a limit, most first
     */
    public static Listing brokeFirst(SweepResult swept) {
        Listing.Builder rows = Listing.titled("What broke first in the combinations that were rejected")
                .words("Limit")
                .figures("Combinations", QuantityKind.COUNT)
                .figures("Share of all", QuantityKind.FRACTION);
        for (Map.Entry<String, Long> entry : swept.brokeFirst().entrySet()) {
            double count = entry.getValue().doubleValue();
            rows.row(entry.getKey(), count, count / swept.evaluated());
        }
        return rows.build();
    }

    /**
     * Up to five candidates beside each other, line by line.
     *
     * @param candidates two to five candidates
     * @return one row a figure, then one a limit with the margin of each candidate
     * @throws StudyException when there are fewer than two or more than five
     */
    public static Listing compare(Candidate... candidates) {
        if (candidates.length < 2 || candidates.length > MOST_COMPARED) {
            throw new StudyException(
                    "A comparison has two to " + MOST_COMPARED + " candidates; there are " + candidates.length + ".");
        }
        Listing.Builder rows = Listing.titled("Line by line").words("");
        for (Candidate candidate : candidates) {
            rows.mixed(candidate.combination().name());
        }
        line(rows, "other settings", candidates, c -> c.combination().otherWords());
        figure(rows, "wheel power", candidates, c -> c.outcome().wheelPower(), QuantityKind.POWER);
        figure(rows, "engine speed of it", candidates, c -> c.peak().rpm(), QuantityKind.ROTATION);
        figure(rows, "boost there", candidates, c -> c.peak().gaugePressure(), QuantityKind.GAUGE_PRESSURE);
        figure(rows, "crank torque there", candidates, c -> c.peak().crankTorque(), QuantityKind.TORQUE);
        figure(rows, "lambda, all streams", candidates, c -> c.outcome().lambda(), QuantityKind.RATIO);
        figure(rows, "nitrous flow", candidates, c -> c.outcome().nitrousFlow(), QuantityKind.MASS_FLOW);
        figure(rows, "nitrous for a pass", candidates, Candidate::nitrousPerPass, QuantityKind.MASS);
        figure(rows, "nitrous fuel", candidates, c -> c.peak().nitrousFuel().massFlow(), QuantityKind.MASS_FLOW);
        figure(
                rows,
                "peak cylinder pressure",
                candidates,
                c -> c.outcome().peakPressure(),
                QuantityKind.ABSOLUTE_PRESSURE);
        figure(
                rows,
                "lean margin with a tenth of the nitrous fuel missing",
                candidates,
                c -> c.outcome().forgiveness(),
                QuantityKind.FRACTION);
        for (Limit limit : candidates[0].limits().all()) {
            figure(
                    rows,
                    "margin: " + limit.name(),
                    candidates,
                    c -> c.limits().find(limit.key()).map(Limit::relativeMargin).orElse(Double.NaN),
                    QuantityKind.FRACTION);
        }
        line(
                rows,
                "closest limit",
                candidates,
                c -> c.limits().first().map(Limit::name).orElse("none"));
        line(rows, "verdict", candidates, c -> c.limits().verdict().word());
        return rows.build();
    }

    private static void figure(
            Listing.Builder rows,
            String name,
            Candidate[] candidates,
            Function<Candidate, Double> value,
            QuantityKind kind) {
        line(rows, name, candidates, c -> new Cell.Figure(value.apply(c), kind));
    }

    private static void line(
            Listing.Builder rows, String name, Candidate[] candidates, Function<Candidate, Object> cell) {
        List<Object> cells = new ArrayList<>(List.of(name));
        Arrays.stream(candidates).map(cell).forEach(cells::add);
        rows.row(cells.toArray());
    }

    /**
     * The chances of a plan.
     *
     * @param confidence the confidence
     * @return one row a question, with the interval of the draws
     */
    public static Listing of(Confidence confidence) {
        Listing.Builder rows = Listing.titled("Chances over " + confidence.draws() + " draws")
                .words("That")
                .figures("Chance", QuantityKind.FRACTION)
                .figures("95 % from", QuantityKind.FRACTION)
                .figures("to", QuantityKind.FRACTION);
        chance(rows, "the power is reached", confidence.reach());
        chance(rows, "every limit is kept", confidence.keep());
        chance(rows, "both", confidence.both());
        confidence.limits().forEach((name, chance) -> chance(rows, "kept: " + name, chance));
        return rows.build();
    }

    private static void chance(Listing.Builder rows, String name, Chance chance) {
        rows.row(name, chance.probability(), chance.low(), chance.high());
    }

    /**
     * What each unknown does to the power and what knowing it better is worth.
     *
     * @param confidence the confidence
     * @return one row an unknown, strongest first
     */
    public static Listing influences(Confidence confidence) {
        Listing.Builder rows = Listing.titled("What moves the wheel power, and what to measure next")
                .words("Unknown, nine times out of ten")
                .figures("Power at its low end", QuantityKind.POWER)
                .figures("at its high end", QuantityKind.POWER)
                .figures("Share of variance alone", QuantityKind.FRACTION)
                .figures("with others", QuantityKind.FRACTION)
                .figures("Uncertainty saved by halving it", QuantityKind.POWER)
                .figures("Effort", QuantityKind.RATIO);
        for (Influence influence : confidence.influences()) {
            rows.row(
                    influence.unknown().words(),
                    influence.powerAtLow(),
                    influence.powerAtHigh(),
                    influence.first(),
                    influence.total(),
                    influence.gain(),
                    influence.unknown().effort());
        }
        return rows.build();
    }

    /**
     * Every combination a robust choice weighed.
     *
     * @param choice the choice
     * @return one row a combination, most certain first
     */
    public static Listing of(RobustChoice choice) {
        Listing.Builder rows = Listing.titled("How sure each combination is")
                .words("Combination")
                .figures("Reaches the wish inside every limit", QuantityKind.FRACTION)
                .figures("Reaches the wish", QuantityKind.FRACTION)
                .figures("Keeps every limit", QuantityKind.FRACTION)
                .figures("Power at 50 %", QuantityKind.POWER)
                .figures("Power at 95 %", QuantityKind.POWER);
        for (Confidence one : choice.others()) {
            rows.row(
                    one.plan().name(),
                    one.both().probability(),
                    one.reach().probability(),
                    one.keep().probability(),
                    one.powerAt(0.5),
                    one.powerAt(0.95));
        }
        return rows.build();
    }
}
