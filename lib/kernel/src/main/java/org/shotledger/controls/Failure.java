package org.shotledger.controls;

import org.shotledger.display.Display;
import org.shotledger.display.Displayable;

/** What stands in place of a result when the function failed. */
record Failure(String words, String at) implements Displayable {

    static Failure of(Throwable thrown, Values values) {
        String message = thrown.getMessage();
        return new Failure(
                thrown.getClass().getSimpleName() + (message == null ? "" : ": " + message), values.toString());
    }

    static Failure stopped(Values values) {
        return new Failure("It was stopped.", values.toString());
    }

    @Override
    public String toText() {
        return "No result. " + words + "\nat " + at;
    }

    @Override
    public String toHtml() {
        return "<div role=\"alert\" style=\"border-left: 4px solid #D55E00; padding: 0.3em 0.8em;\"><strong>No result.</strong> "
                + Display.escapeHtml(words) + "<br><small>at " + Display.escapeHtml(at) + "</small></div>";
    }
}
