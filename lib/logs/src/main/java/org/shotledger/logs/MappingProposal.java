package org.shotledger.logs;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.shotledger.sheet.CsvRows;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;

/**
 * A mapping proposed for a log whose headings are not ours, from its headings, units and ranges of values. Nothing is read by it until
 * a person has looked at it and laid {@link #yaml()} beside the log.
 *
 * @param file the log
 * @param layout how the text was read, in words
 * @param channels what each channel is proposed to be, in the order of channels
 * @param leftOver headings of the columns that are nothing a comparison uses
 */
public record MappingProposal(String file, String layout, List<Proposed> channels, List<String> leftOver) {

    public MappingProposal {
        channels = List.copyOf(channels);
        leftOver = List.copyOf(leftOver);
    }

    /**
     * One channel and its column.
     *
     * @param column the channel, the heading and the unit
     * @param confidence how far it can be relied on
     * @param reason what speaks for it, and what is open
     */
    public record Proposed(LogColumn column, Certainty confidence, String reason) {}

    /** A column, what it might be, and how well its heading says so. */
    private record Candidate(ColumnSurvey survey, LogChannel channel, int words, UnitGuess guess) {
        double rank() {
            int less = guess.confidence() == Certainty.SURE ? 0 : guess.confidence() == Certainty.LIKELY ? 1 : 2;
            return 10 * words - less - (guess.unit().isEmpty() ? 0.1 : 0);
        }
    }

    /**
     * Looks at a file.
     *
     * @param log the log
     * @return the proposal
     * @throws SheetException when it is no table
     */
    public static MappingProposal of(Path log) {
        String name = String.valueOf(log.getFileName());
        try (BufferedReader text = LogText.open(log)) {
            return of(text, name);
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    /**
     * Looks at a text.
     *
     * @param text the text; it is closed
     * @param name the file as the user named it
     * @return the proposal
     * @throws SheetException when it is no table
     */
    public static MappingProposal of(Reader text, String name) {
        try (BufferedReader lines = new BufferedReader(text)) {
            LogLayout layout = LayoutSearch.of(LogSample.of(lines), 0, 0);
            try (CsvRows rows = CsvRows.open(lines, name, layout.delimiter(), layout.before())) {
                return from(name, layout, ColumnSurvey.of(rows, layout));
            }
        } catch (IOException e) {
            throw new SheetException(Problem.of(name, "The file cannot be read (" + e.getMessage() + ")."));
        }
    }

    private static MappingProposal from(String name, LogLayout layout, List<ColumnSurvey> surveys) {
        List<Candidate> candidates = new ArrayList<>();
        for (ColumnSurvey survey : surveys) {
            for (LogChannel channel : LogChannel.values()) {
                int words = words(channel, survey);
                Optional<UnitGuess> guess = words == 0 ? Optional.empty() : UnitGuess.of(channel, survey);
                guess.ifPresent(g -> candidates.add(new Candidate(survey, channel, words, g)));
            }
        }
        candidates.sort(Comparator.comparingDouble((Candidate c) -> -c.rank()));
        List<Proposed> proposed = new ArrayList<>();
        Set<Integer> taken = new TreeSet<>();
        Set<LogChannel> given = new TreeSet<>();
        for (Candidate c : candidates) {
            if (!taken.contains(c.survey().heading().column()) && given.add(c.channel())) {
                taken.add(c.survey().heading().column());
                proposed.add(proposed(c));
            }
        }
        proposed.sort(Comparator.comparing(p -> p.column().channel()));
        List<String> left = surveys.stream()
                .filter(s -> !taken.contains(s.heading().column()))
                .map(s -> s.heading().name())
                .toList();
        return new MappingProposal(name, layout.words(), proposed, left);
    }

    /** Words of the heading; where those say nothing a unit of engine speed or a first column that rises speaks for itself. */
    private static int words(LogChannel channel, ColumnSurvey survey) {
        int words = HeadingWords.names(channel, survey.heading().name());
        boolean rpm = channel == LogChannel.ENGINE_SPEED
                && LogUnits.usual(survey.heading().unit()).equals("rpm")
                && HeadingWords.names(channel, survey.heading().name() + " rpm") > 0;
        boolean first =
                channel == LogChannel.TIME && survey.heading().column() == 1 && (survey.rises() || survey.isClock());
        return words > 0 ? words : rpm || first ? 1 : 0;
    }

    private static Proposed proposed(Candidate c) {
        String heading = c.survey().heading().name();
        String named = switch (c.words()) {
            case 3 -> "the heading names it";
            case 2 -> "its words are in the heading";
            default -> "the heading leaves it open";
        };
        Certainty by = c.words() == 3 ? Certainty.SURE : c.words() == 2 ? Certainty.LIKELY : Certainty.DOUBTFUL;
        boolean unitSpeaks = c.words() == 1
                && c.guess().confidence() == Certainty.SURE
                && !c.guess().unit().isEmpty();
        LogColumn column =
                LogColumn.of(c.channel(), heading, c.guess().unit(), c.guess().stoichiometric());
        return new Proposed(
                column,
                (unitSpeaks ? Certainty.LIKELY : by).and(c.guess().confidence()),
                named + "; " + c.guess().reason());
    }

    /**
     * The channels that are not doubtful, as a mapping without ambient.
     *
     * @return the mapping
     */
    public LogMapping mapping() {
        return new LogMapping(
                "",
                "",
                "",
                Double.NaN,
                0,
                0,
                Optional.empty(),
                channels.stream()
                        .filter(p -> p.confidence() != Certainty.DOUBTFUL)
                        .map(Proposed::column)
                        .toList());
    }

    /**
     * The text of a mapping file: each channel with its confidence and reason; doubtful ones as comments, so that a person must take
     * the mark away before they count.
     *
     * @return YAML that {@link LogMapping#read(String, String)} reads
     */
    public String yaml() {
        return ProposalText.of(this);
    }
}
