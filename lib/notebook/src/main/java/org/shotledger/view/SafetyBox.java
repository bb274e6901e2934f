package org.shotledger.view;

import java.util.List;
import java.util.stream.Collectors;
import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/**
 * Cautions in a frame, so that nobody reads past them.
 *
 * @param title what they are about
 * @param cautions one sentence or two each
 */
record SafetyBox(String title, List<String> cautions) implements Displayable {

    @Override
    public String toText() {
        return title + "\n" + cautions.stream().map(one -> "  ! " + one).collect(Collectors.joining("\n"));
    }

    @Override
    public String toHtml() {
        return "<div role=\"note\" style=\"border:2px solid;padding:0.4em 1em;margin:0.6em 0\"><p><strong>"
                + Display.escapeHtml(title) + "</strong></p><ul>"
                + cautions.stream()
                        .map(one -> "<li>" + Display.escapeHtml(one) + "</li>")
                        .collect(Collectors.joining())
                + "</ul></div>";
    }
}
