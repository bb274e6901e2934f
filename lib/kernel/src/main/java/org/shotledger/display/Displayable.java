package org.shotledger.display;

import java.util.Optional;

/** A result that shows itself: as aligned text in a terminal, as HTML in a notebook or a page. */
public interface Displayable {

    /**
     * Aligned plain text, complete in itself.
     *
     * @return text of one or more lines, without control characters
     */
    String toText();

    /**
     * A fragment of HTML to be placed inside a page's body, text of the user already escaped.
     *
     * @return HTML that needs neither script nor network
     */
    String toHtml();

    /**
     * A drawing of the result, where one exists.
     *
     * @return a whole SVG document, or nothing
     */
    default Optional<String> toSvg() {
        return Optional.empty();
    }
}
