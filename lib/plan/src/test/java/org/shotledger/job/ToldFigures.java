package org.shotledger.job;

import java.util.Map;
import java.util.TreeMap;

/** The figures that the README tells of one's own car. */
public final class ToldFigures {
    private ToldFigures() {}

    /** With others told, by name and figure; an empty figure is not told. */
    public static Map<String, String> with(String... more) {
        Map<String, String> told = new TreeMap<>(Map.ofEntries(
                Map.entry("displacement", "2.0 L"),
                Map.entry("cylinders", "4"),
                Map.entry("compression", "9.2"),
                Map.entry("fuel", "ethanol-blend"),
                Map.entry("ethanol", "78 %"),
                Map.entry("boost", "1.3 bar gauge"),
                Map.entry("pull-power", "330 hp"),
                Map.entry("pull-rpm", "6200 rpm"),
                Map.entry("injector-flow", "1050 cc/min"),
                Map.entry("inducer", "50 mm"),
                Map.entry("charge", "10 lb"),
                Map.entry("target-power", "385 hp"),
                Map.entry("rpm-low", "5000 rpm"),
                Map.entry("rpm-high", "7000 rpm")));
        for (int i = 0; i < more.length; i += 2) {
            if (more[i + 1].isEmpty()) {
                told.remove(more[i]);
            } else {
                told.put(more[i], more[i + 1]);
            }
        }
        return told;
    }
}
