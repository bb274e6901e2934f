package org.shotledger.display;

/** Sets unit names as print has them. */
public final class Units {
    private Units() {}

    /**
     * Sets the unit names in a text.
     *
     * @param text for example {@code "32.0 degC"}
     * @return for example {@code "32.0 \u00b0C"}
     */
    public static String printed(String text) {
        return text.replace("degC", "\u00b0C")
                .replace("degF", "\u00b0F")
                .replace("kg/m3", "kg/m\u00b3")
                .replace("lb/ft3", "lb/ft\u00b3")
                .replace("in3", "in\u00b3")
                .replace("N m", "N\u00b7m")
                .replace("lbf ft", "lbf\u00b7ft");
    }
}
