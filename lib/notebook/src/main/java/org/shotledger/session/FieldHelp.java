package org.shotledger.session;

import org.shotledger.display.Display;
import org.shotledger.display.Displayable;
import org.shotledger.job.SheetFields;

/**
 * What a field of the job sheet is, its usual range, how to get it and what it changes.
 *
 * @param toText the explanation
 */
public record FieldHelp(String toText) implements Displayable {

    static FieldHelp of(String field) {
        return new FieldHelp(SheetFields.explain(field));
    }

    @Override
    public String toHtml() {
        return "<pre>" + Display.escapeHtml(toText) + "</pre>";
    }

    @Override
    public String toString() {
        return toText;
    }
}
