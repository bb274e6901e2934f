package org.shotledger.view;

import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/**
 * A paragraph among tables and charts.
 *
 * @param words the words, unescaped
 */
record Sentence(String words) implements Displayable {

    @Override
    public String toText() {
        return words;
    }

    @Override
    public String toHtml() {
        return "<p>" + Display.escapeHtml(words) + "</p>";
    }
}
