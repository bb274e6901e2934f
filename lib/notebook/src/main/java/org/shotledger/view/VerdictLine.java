package org.shotledger.view;

import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.display.HasVerdict;
import org.shotledger.limits.Verdict;

/**
 * A verdict in one line.
 *
 * @param verdict the worst of the limits
 * @param verdictLine the sentence
 */
public record VerdictLine(Verdict verdict, String verdictLine) implements Displayable, HasVerdict {

    @Override
    public String toHtml() {
        return "<p><strong>" + Display.escapeHtml(verdict.word()) + ".</strong> " + Display.escapeHtml(verdictLine)
                + "</p>";
    }

    @Override
    public String toText() {
        return verdictLine;
    }

    @Override
    public String toString() {
        return verdictLine;
    }
}
