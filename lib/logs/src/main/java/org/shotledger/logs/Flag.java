package org.shotledger.logs;

import java.util.Locale;
import java.util.Map;

/** Words for on and off in a cell. */
final class Flag {
    private static final Map<String, Double> WORDS = Map.ofEntries(
            Map.entry("on", 1.0),
            Map.entry("off", 0.0),
            Map.entry("true", 1.0),
            Map.entry("false", 0.0),
            Map.entry("yes", 1.0),
            Map.entry("no", 0.0),
            Map.entry("active", 1.0),
            Map.entry("inactive", 0.0),
            Map.entry("enabled", 1.0),
            Map.entry("disabled", 0.0),
            Map.entry("open", 1.0),
            Map.entry("closed", 0.0),
            Map.entry("ein", 1.0),
            Map.entry("aus", 0.0),
            Map.entry("ja", 1.0),
            Map.entry("nein", 0.0),
            Map.entry("wahr", 1.0),
            Map.entry("falsch", 0.0));

    private Flag() {}

    /** 1 for on, 0 for off, NaN for any other word. */
    static double read(String cell) {
        return cell.length() > 8 ? Double.NaN : WORDS.getOrDefault(cell.toLowerCase(Locale.ROOT), Double.NaN);
    }
}
