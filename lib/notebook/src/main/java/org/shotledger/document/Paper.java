package org.shotledger.document;

/** The paper of a PDF. */
public enum Paper {
    /** ISO 216 A4, 210 by 297 mm. */
    A4("A4"),
    /** North American Letter, 8.5 by 11 in. */
    LETTER("letter");

    private final String css;

    Paper(String css) {
        this.css = css;
    }

    String css() {
        return css;
    }
}
