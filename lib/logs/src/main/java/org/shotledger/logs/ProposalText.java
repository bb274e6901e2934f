package org.shotledger.logs;

import java.util.List;
import java.util.Locale;
import org.shotledger.logs.MappingProposal.Proposed;
import org.shotledger.units.Excerpt;
import org.shotledger.units.FigureText;

/** Writes a proposed mapping as the file a person looks through. */
final class ProposalText {
    private ProposalText() {}

    static String of(MappingProposal proposal) {
        StringBuilder text = new StringBuilder();
        text.append("# Proposed for ")
                .append(Excerpt.of(proposal.file()))
                .append(": ")
                .append(proposal.layout())
                .append(".\n");
        text.append(
                "# Look at every line before the log is used. Lines that are doubtful are comments: take the mark away where they"
                        + " are right.\n");
        List<Proposed> certain = proposal.channels().stream()
                .filter(p -> p.confidence() != Certainty.DOUBTFUL)
                .toList();
        if (proposal.channels().stream()
                .anyMatch(p -> FigureText.saysGauge(p.column().unit()))) {
            text.append(
                    "# Gauge pressures stand above the pressure around them: write that of the day and the place.\n");
            text.append("# ambient: 1.00 bar abs\n");
        }
        text.append(certain.isEmpty() ? "channels: {}\n" : "channels:\n");
        for (Proposed p : proposal.channels()) {
            boolean doubtful = p.confidence() == Certainty.DOUBTFUL;
            text.append(doubtful ? "#  " : "  ").append(line(p.column()));
            text.append("  # ")
                    .append(p.confidence().word())
                    .append(": ")
                    .append(p.reason())
                    .append('\n');
        }
        if (!proposal.leftOver().isEmpty()) {
            text.append("# Not used: ")
                    .append(Excerpt.of(String.join(", ", proposal.leftOver()), 400))
                    .append('\n');
        }
        return text.toString();
    }

    private static String line(LogColumn column) {
        StringBuilder line =
                new StringBuilder(column.channel().key()).append(": {column: ").append(quoted(column.heading()));
        if (!column.unit().isEmpty()) {
            line.append(", unit: ").append(quoted(column.unit()));
        }
        if (!Double.isNaN(column.stoichiometric())) {
            line.append(String.format(Locale.ROOT, ", stoichiometric: %.1f", column.stoichiometric()));
        }
        return line.append('}').toString();
    }

    /** A double-quoted scalar of YAML 1.2. */
    private static String quoted(String words) {
        StringBuilder text = new StringBuilder("\"");
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            if (c == '"' || c == '\\') {
                text.append('\\').append(c);
            } else if (c < ' ' || c == 0x7f) {
                text.append(String.format("\\x%02x", (int) c));
            } else {
                text.append(c);
            }
        }
        return text.append('"').toString();
    }
}
