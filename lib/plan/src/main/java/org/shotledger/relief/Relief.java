package org.shotledger.relief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.budget.Reach;
import org.shotledger.budget.Wish;
import org.shotledger.build.Build;
import org.shotledger.build.Origin;
import org.shotledger.sheet.SheetException;
import org.shotledger.units.Amount;
import org.shotledger.units.QuantityKind;

/**
 * The answer to "what would I have to change to reach the target?".
 *
 * <p>Single changes of the build are tried in the order of their cost, each with the whole search for the best split, until
 * enough of them reach the target. Changes are not combined.
 *
 * @param wish what is asked
 * @param before how far the build reaches as it is, and the limit that stops it
 * @param attempts the changes tried, in the order of cost
 */
public record Relief(Wish wish, Reach before, List<Attempt> attempts) {
    /** A change helps when this much more than today's reach then holds. */
    private static final double LITTLE_MORE = 1.03;

    /** Copies the list. */
    public Relief {
        attempts = List.copyOf(attempts);
    }

    /**
     * Searches the common changes for the cheapest and two dearer ones.
     *
     * @param build the build
     * @param wish what is asked
     * @return the search; without attempts when the build reaches the target as it is
     */
    public static Relief search(Build build, Wish wish) {
        return search(build, wish, CommonChanges.ALL, 3);
    }

    /**
     * Searches a list of changes.
     *
     * @param build the build
     * @param wish what is asked
     * @param changes the changes that may be made
     * @param enough the search ends when so many changes reach the target, at least 1
     * @return the search; without attempts when the build reaches the target as it is
     */
    public static Relief search(Build build, Wish wish, List<Change> changes, int enough) {
        Reach before = Reach.of(build, wish);
        List<Attempt> attempts = new ArrayList<>();
        if (!before.reached()) {
            List<Change> cheapestFirst = new ArrayList<>(changes);
            cheapestFirst.sort(Comparator.comparingInt(Change::cost));
            double little = Math.min(wish.wheelPower(), LITTLE_MORE * before.wheelPower());
            Probe probe = new Probe(build, wish, wish.withWheelPower(watts(little)));
            int found = 0;
            for (int i = 0; i < cheapestFirst.size() && found < enough; i++) {
                found += probe.tried(cheapestFirst.get(i), attempts) ? 1 : 0;
            }
        }
        return new Relief(wish, before, attempts);
    }

    /**
     * The cheapest change that reaches the target.
     *
     * @return the attempt; empty when none of those tried does
     */
    public Optional<Attempt> cheapest() {
        return attempts.stream().filter(Attempt::reached).findFirst();
    }

    private static Amount watts(double power) {
        return new Amount(QuantityKind.POWER, power);
    }

    /** The build, the wish, and a lesser wish that tells whether a change helps at all. */
    private record Probe(Build build, Wish wish, Wish lesser) {

        /** Tries the steps of a change until one reaches the target. */
        boolean tried(Change change, List<Attempt> attempts) {
            if (!change.fits(build)) {
                return false;
            }
            Origin old = build.origin(change.path()).orElseThrow();
            for (Change.Step step : change.steps()) {
                String text = step.from(old);
                if (text.equals(old.text())) {
                    continue;
                }
                Attempt attempt = attempt(change, old.text(), text);
                attempts.add(attempt);
                if (attempt.reached()) {
                    return true;
                }
            }
            return false;
        }

        private Attempt attempt(Change change, String before, String after) {
            try {
                Build changed = build.with(change.path(), after);
                Reach reach = Reach.atOnce(changed, wish);
                boolean helps = reach.reached()
                        || (lesser.wheelPower() < wish.wheelPower()
                                && Reach.atOnce(changed, lesser).reached());
                return new Attempt(change, before, after, reach.reached(), helps, reach.leastMargin(), reach.limit());
            } catch (SheetException refused) {
                String first = refused.problems().get(0).sentence();
                return new Attempt(change, before, after, false, false, Double.NaN, "refused: " + first);
            } catch (IllegalArgumentException refused) {
                return new Attempt(change, before, after, false, false, Double.NaN, "refused: " + refused.getMessage());
            }
        }
    }
}
