package org.shotledger.controls;

import org.shotledger.display.Displayable;

/** The place of a result where a function gave none. */
enum Nothing implements Displayable {
    /** The one value. */
    SHOWN;

    @Override
    public String toText() {
        return "";
    }

    @Override
    public String toHtml() {
        return "";
    }
}
