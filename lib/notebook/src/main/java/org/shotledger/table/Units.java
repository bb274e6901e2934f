package org.shotledger.table;

/** Sets unit names as print has them. */
final class Units {
    private Units() {}

    static String printed(String text) {
        return text.replace("degC", "\u00b0C")
                .replace("degF", "\u00b0F")
                .replace("kg/m3", "kg/m\u00b3")
                .replace("lb/ft3", "lb/ft\u00b3")
                .replace("in3", "in\u00b3")
                .replace("N m", "N\u00b7m")
                .replace("lbf ft", "lbf\u00b7ft");
    }
}
