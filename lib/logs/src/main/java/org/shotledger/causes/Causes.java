package org.shotledger.causes;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shotledger.evaluate.Outcome;
import org.shotledger.logs.EngineLog;
import org.shotledger.logs.LogChannel;
import org.shotledger.logs.LogFindings;
import org.shotledger.units.Excerpt;
import org.shotledger.units.UnitSystem;

/**
 * What a log's differences from the setup that was run come from, ranked.
 *
 * <p>Every cause is a change of car, setup, case or sensors, and predicts every channel at the settled pieces of all pulls through the
 * operating points of {@code evaluate}. A log is explained by nothing, by one cause or by two; a cause in the set may be as large as a
 * fault, one outside it is taken to lie within a tenth of its band, for one thing wrong is likelier than many that are each a little off.
 * Shares are posterior probabilities of the sets (Laplace's method; D. J. C. MacKay, Information Theory, Inference, and Learning
 * Algorithms, Cambridge 2003, ch. 27 and 28, from memory) under noise with a memory and Student's weights. A size and its band come from
 * generalised least squares with every other band in full, over all sets that hold the cause, each by its share.
 *
 * <p>How frequent and how large faults are is our own choice; a share is a help to look in the right place first, no proof.
 *
 * @param log the log
 * @param suspects the causes with a share worth naming, the likeliest first
 * @param nothing posterior probability that the log shows no more than what bands explain
 * @param shown what each channel shows, with the nitrous off and on
 * @param traces what each channel read at the settled pieces of the pulls, and what was planned
 * @param missing channels that the log lacks and that tell causes apart, in words
 * @param power where the power comes from, in one sentence
 */
public record Causes(
        EngineLog log,
        List<Suspect> suspects,
        double nothing,
        List<ChannelDeparture> shown,
        List<ChannelTrace> traces,
        List<String> missing,
        String power) {

    public Causes {
        suspects = List.copyOf(suspects);
        shown = List.copyOf(shown);
        traces = List.copyOf(traces);
        missing = List.copyOf(missing);
    }

    /**
     * Asks a log for its causes.
     *
     * @param outcome what the setup that was run is expected to do
     * @param findings the log with its findings
     * @return the causes
     * @throws IllegalArgumentException when the log has no pull, or too little that is settled
     */
    public static Causes of(Outcome outcome, LogFindings findings) {
        return new CauseFit(outcome, findings).causes();
    }

    /**
     * The log's file.
     *
     * @return its name as the user named it
     */
    public String file() {
        return log.file();
    }

    /**
     * The likeliest cause.
     *
     * @return the cause; empty when the log shows nothing beyond bands, or that is the likeliest
     */
    public Optional<Suspect> first() {
        return suspects.stream().findFirst().filter(s -> s.share() > nothing);
    }

    /**
     * A cause, whatever its place.
     *
     * @param cause which
     * @return the suspect; empty where its share is not worth naming
     */
    public Optional<Suspect> suspect(Cause cause) {
        return suspects.stream().filter(s -> s.cause() == cause).findFirst();
    }

    /**
     * What a channel read.
     *
     * @param channel the channel
     * @return its trace; empty where it was not logged or nothing is planned for it
     */
    public Optional<ChannelTrace> trace(LogChannel channel) {
        return traces.stream().filter(t -> t.channel() == channel).findFirst();
    }

    /**
     * Everything in sentences made from the fit.
     *
     * @param system the units
     * @return what the log shows, what it may come from, what tells it apart, what is left
     */
    public List<String> sentences(UnitSystem system) {
        List<String> all = new ArrayList<>();
        all.add(shownSentence(system));
        all.add(power);
        if (first().isEmpty()) {
            all.add(String.format(
                    Locale.ROOT,
                    "Nothing need be wrong (%.0f %%): bands and scatter explain this log%s",
                    100 * nothing,
                    suspects.isEmpty() ? "." : "; the likeliest cause otherwise is the next."));
        }
        int n = 1;
        for (Suspect suspect : suspects) {
            all.add(n++ + ". " + sentence(suspect, system));
        }
        String left = shown.stream()
                .filter(ChannelDeparture::unexplained)
                .map(s -> s.channel().words() + " with the nitrous " + (s.nitrousOn() ? "on" : "off"))
                .collect(Collectors.joining(", "));
        if (!left.isEmpty()) {
            all.add("The likeliest causes together leave a clear difference in " + left
                    + ": something is not among the causes asked for, or more than two are at work. Stop and find it.");
        }
        if (!missing.isEmpty()) {
            all.add("Not logged: " + String.join(", ", missing) + ".");
        }
        return all;
    }

    private String shownSentence(UnitSystem system) {
        String beyond = joined(shown.stream().filter(ChannelDeparture::beyondBand), system);
        String inside = joined(shown.stream().filter(s -> s.clear() && !s.beyondBand()), system);
        String agrees = shown.stream()
                .filter(s -> !s.clear())
                .map(s -> s.channel().words() + (s.nitrousOn() ? " (on)" : " (off)"))
                .collect(Collectors.joining(", "));
        return (beyond.isEmpty()
                        ? "No channel differs by more than what is stated for the plan."
                        : "Beyond what is stated for the plan: " + beyond + ".")
                + (inside.isEmpty() ? "" : " Clearly off, inside what is stated: " + inside + ".")
                + (agrees.isEmpty() ? "" : " As planned: " + agrees + ".");
    }

    private static String joined(java.util.stream.Stream<ChannelDeparture> some, UnitSystem system) {
        return some.map(s -> s.text(system)).collect(Collectors.joining("; "));
    }

    private String sentence(Suspect s, UnitSystem system) {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%s, %.0f %%: %s (two standard uncertainties; %s from the log's scatter alone)",
                Excerpt.beginning(s.cause().words()),
                100 * s.share(),
                s.sizeText(system),
                s.cause().halfText(2 * s.scatter(), system)));
        s.with().ifPresent(other -> text.append(", together with: ").append(other.words()));
        text.append(
                s.band() == 0
                        ? "."
                        : s.insideBand()
                                ? "; inside what is stated for it (" + s.cause().halfText(2 * s.band(), system) + ")."
                                : "; beyond what is stated for it (" + s.cause().halfText(2 * s.band(), system) + ").");
        if (!s.alike().isEmpty()) {
            text.append(" This log does not tell it from ")
                    .append(s.alike().stream().map(Cause::words).collect(Collectors.joining(", or from ")))
                    .append('.');
        }
        if (!s.tell().isEmpty()) {
            text.append(" To know: ").append(String.join("; ", s.tell())).append('.');
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return String.join("\n", sentences(UnitSystem.US));
    }
}
