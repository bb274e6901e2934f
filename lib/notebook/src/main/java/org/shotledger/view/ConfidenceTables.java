package org.shotledger.view;

import static org.shotledger.table.Column.column;
import static org.shotledger.table.Column.words;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.POWER;
import static org.shotledger.units.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.shotledger.confidence.Chance;
import org.shotledger.confidence.Chances;
import org.shotledger.confidence.Confidence;
import org.shotledger.confidence.RobustChoice;
import org.shotledger.limits.Limit;
import org.shotledger.table.Listing;

/** How sure a plan is, as tables. */
public final class ConfidenceTables {
    private static final double EVEN = 0.5;
    private static final double NEARLY_SURE = 0.95;

    private ConfidenceTables() {}

    private record Question(String that, Chance stated, Chance exactModels) {}

    /**
     * The chances of a plan, with all bands and as if the models were exact.
     *
     * @param confidence the confidence
     * @return one row a question, with the interval the number of draws leaves
     */
    public static Listing chances(Confidence confidence) {
        return Listing.of(
                "Chances over " + confidence.draws() + " draws",
                questions(confidence),
                words("That", Question::that),
                words("Chance", question -> question.stated.text()),
                column("95 % from", FRACTION, question -> question.stated.low()),
                column("to", FRACTION, question -> question.stated.high()),
                words("if the models were exact", question -> question.exactModels.text()));
    }

    private static List<Question> questions(Confidence confidence) {
        Chances stated = confidence.stated();
        Chances exact = confidence.exactModels();
        List<Question> questions = new ArrayList<>(List.of(
                new Question("the power is reached", stated.reach(), exact.reach()),
                new Question("every limit is kept in every case", stated.keep(), exact.keep()),
                new Question("both", stated.both(), exact.both())));
        stated.cases()
                .forEach((name, chance) -> questions.add(new Question(
                        "kept in the case '" + name + "'", chance, exact.cases().get(name))));
        for (Map.Entry<String, Chance> limit : stated.limits().entrySet()) {
            questions.add(new Question(
                    "kept: " + name(confidence, limit.getKey()),
                    limit.getValue(),
                    exact.limits().get(limit.getKey())));
        }
        return questions;
    }

    private static String name(Confidence confidence, String key) {
        return confidence.plan().limits().find(key).map(Limit::name).orElse(key);
    }

    /**
     * What each unknown does to power and decisive margin, and what knowing it better is worth.
     *
     * @param confidence the confidence, with its influences
     * @return one row an unknown, the most decisive first
     */
    public static Listing influences(Confidence confidence) {
        return Listing.of(
                "What decides, and what to measure next",
                confidence.influences(),
                words("Unknown", of -> of.unknown().name()),
                column("Power at its low end", POWER, of -> of.powerAtLow()),
                column("at its high end", POWER, of -> of.powerAtHigh()),
                column(
                        "Share of the margin's variance, alone",
                        FRACTION,
                        of -> of.decisive().first()),
                column("with others", FRACTION, of -> of.decisive().total()),
                column("Margin's uncertainty saved by halving it", FRACTION, of -> of.gain()),
                column("Effort", RATIO, of -> of.unknown().effort()),
                words("Measure", of -> of.unknown().measurement()));
    }

    /**
     * Every setup a robust choice weighed.
     *
     * @param choice the choice
     * @return one row a setup, the most certain first
     */
    public static Listing of(RobustChoice choice) {
        return Listing.of(
                "How sure each setup is",
                choice.weighed(),
                column("Wheel power", POWER, one -> one.plan().stated().power()),
                words(
                        "Reaches the target inside every limit",
                        one -> one.stated().both().text()),
                words("Reaches the target", one -> one.stated().reach().text()),
                words("Keeps every limit", one -> one.stated().keep().text()),
                column("Power at 50 %", POWER, one -> one.powerAt(EVEN)),
                column("Power at 95 %", POWER, one -> one.powerAt(NEARLY_SURE)));
    }
}
