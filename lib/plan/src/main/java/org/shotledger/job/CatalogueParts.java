package org.shotledger.job;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.shotledger.job.Catalogue.Part;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.Amount;
import org.shotledger.units.Excerpt;
import org.shotledger.units.UnitSystem;

/**
 * Parts of the catalogue that a sheet names instead of figures it does not have yet: {@code part: large}. What the sheet states itself
 * stands; the rest is the part's, estimated, with a band.
 */
final class CatalogueParts {
    /** Half width of the band of a figure of a generic part: common practice, no source. */
    private static final String BAND = " +/- 10 %";

    /**
     * One kind of part.
     *
     * @param key the value that names it in a sheet
     * @param file the file of the catalogue
     * @param use the use by which its rows are told apart; empty where the name does
     * @param figures name in the sheet to heading in the file
     * @param band what stands behind each figure
     * @param more further values that hold for all parts of the file
     */
    private record Kind(
            String key, String file, String use, Map<String, String> figures, String band, Map<String, String> more) {}

    private static final Kind BOTTLE = new Kind(
            "part",
            "bottles.csv",
            "",
            Map.of("water-capacity", "water capacity", "shell-mass", "shell mass"),
            BAND,
            Map.of());

    private static final Kind HOSE =
            new Kind("hose", "hoses.csv", "", Map.of("hose-bore", "hose bore"), " +/- 1 mm", Map.of());

    private CatalogueParts() {}

    /** An injector of a size class; a table of dead times that the sheet names stands instead of the class's one figure. */
    static SheetSection injector(SheetSection s) {
        Map<String, String> figures = s.has("dead-time-table")
                ? Map.of("flow", "flow")
                : Map.of("flow", "flow", "dead-time", "dead time at 14 V");
        return filled(s, new Kind("part", "injectors.csv", "", figures, BAND, Map.of("test-pressure", "3 bar")));
    }

    /** Flow of an injector of a size class held open at 3 bar, m3/s. */
    static double injectorFlow(String part) {
        return Catalogue.shipped("injectors.csv").part(part).figure("flow").value();
    }

    static SheetSection bottle(SheetSection s) {
        return filled(s, BOTTLE);
    }

    /** A hose by its dash size. */
    static SheetSection hose(SheetSection s) {
        return filled(s, HOSE);
    }

    /** A solenoid of a size class, for nitrous oxide or for fuel. */
    static SheetSection solenoid(SheetSection s, String use) {
        return filled(
                s,
                new Kind(
                        "part",
                        "solenoids.csv",
                        use,
                        Map.of("bore", "bore", "opening-delay", "opening delay", "closing-delay", "closing delay"),
                        BAND,
                        Map.of()));
    }

    private static SheetSection filled(SheetSection s, Kind kind) {
        if (!s.has(kind.key)) {
            return s;
        }
        String name = s.text(kind.key);
        Catalogue catalogue = Catalogue.shipped(kind.file);
        Map<String, Part> parts = catalogue.parts().stream()
                .filter(part -> kind.use.isEmpty() || part.name().equals(kind.use))
                .collect(Collectors.toMap(
                        part -> kind.use.isEmpty() ? part.name() : part.words().get("class"),
                        part -> part,
                        (a, b) -> a,
                        LinkedHashMap::new));
        if (!parts.containsKey(name)) {
            s.report(
                    kind.key,
                    "There is no " + Excerpt.quoted(name) + " in the catalogue's " + kind.file + "; it has "
                            + String.join(", ", parts.keySet()) + ".");
        }
        // any part will do for a sheet that is refused: what the named one would have given is not missing
        Part part = parts.getOrDefault(name, catalogue.parts().get(0));
        return s.filled(
                kind.key,
                values(kind, part),
                "catalogue " + kind.file + ", " + name + ": " + catalogue.origin(),
                "estimated");
    }

    private static Map<String, String> values(Kind kind, Part part) {
        Map<String, String> values = new LinkedHashMap<>(kind.more);
        kind.figures.forEach((key, heading) -> values.put(key, written(part.figure(heading)) + kind.band));
        return values;
    }

    private static String written(Amount figure) {
        return String.format(
                Locale.ROOT,
                "%.6g %s",
                figure.kind().shown(figure.value(), UnitSystem.SI),
                figure.kind().unit(UnitSystem.SI));
    }
}
