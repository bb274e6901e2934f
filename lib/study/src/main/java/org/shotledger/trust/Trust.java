package org.shotledger.trust;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Every model beside all figures from outside the project. */
public final class Trust {
    private static final String DESERVED = "the error that each source deserves";

    private Trust() {}

    /**
     * All families.
     *
     * @param data the project's folder {@code data}, in which the figures lie
     * @return the families, the nitrous side first
     */
    public static List<Family> all(Path data) {
        List<Row> rows = Row.all(data.resolve("published/engine-checks.csv"));
        return List.of(
                new Family(
                        "states of nitrous oxide",
                        "another correlation of measurements, and single published values",
                        DESERVED + "; the two correlations drift apart near the critical point",
                        FluidFigures.all(data)),
                new Family(
                        "flow, holes of known edge",
                        "measured; each source foretold with constants fitted to the others",
                        "nine in ten holes of the class",
                        FlowFigures.leftOut(false)),
                new Family(
                        "flow, holes of which only the bore is known",
                        "the same points, edge and length kept from the law",
                        "nine in ten such holes",
                        FlowFigures.leftOut(true)),
                new Family(
                        "flow, one hole choked and not",
                        "measured; its choked points are among those the law was fitted to",
                        "nine in ten holes of the class",
                        FlowFigures.oneHole(data)),
                new Family(
                        "bottles that empty",
                        "measured; each vessel foretold with constants fitted to the other two",
                        "1.645 times the model's known error",
                        TankFigures.all(data)),
                new Family(
                        "flames, heat capacities, ideal cycles",
                        "handbook values, textbook examples and a general-purpose library",
                        DESERVED,
                        Published.family(rows, "H10")),
                new Family(
                        "fuel-air cycles with nitrous oxide",
                        "a general-purpose library with the same assumptions: it proves the arithmetic, not the engine",
                        "0.1 % and, for the end of compression, 0.5 %",
                        CycleFigures.cycles(data)),
                new Family(
                        "charge cooling in an engine",
                        "measured in a research engine; the best share was chosen by these four fuels",
                        "from the unsafe to the favourable knock model",
                        CycleFigures.cooling(data)),
                new Family(
                        "standards: air and power correction",
                        "standards and worked examples as published",
                        DESERVED,
                        Published.family(rows, "H01")),
                new Family(
                        "engine arithmetic", "worked examples of textbooks", DESERVED, Published.family(rows, "H02")),
                new Family(
                        "compressors, coolers, turbines",
                        "worked examples of textbooks and map conventions",
                        DESERVED,
                        Published.family(rows, "H03")),
                new Family("fuels", "handbook values and standards", DESERVED, Published.family(rows, "H04")),
                new Family("liquid holes and injectors", "handbook examples", DESERVED, Published.family(rows, "H05")),
                new Family(
                        "sensors",
                        "reference table and a measured thermistor",
                        "half the last printed digit, and the error its source names",
                        SensorFigures.all(data)));
    }

    /**
     * The families as a table in Markdown.
     *
     * @param families the families
     * @return heading and one row a family
     */
    public static String markdown(List<Family> families) {
        StringBuilder text = new StringBuilder("""
                | compared | figures | sources | mean | RMS error | worst | inside the band | how foreign to the model |
                |---|---|---|---|---|---|---|---|
                """);
        for (Family family : families) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d | %.3f | %s | %s | %.0f %% | %s |%n",
                    family.name(),
                    family.figures().size(),
                    family.sources(),
                    family.mean(),
                    percent(family.error()),
                    percent(Math.abs(family.worst().ratio() - 1)),
                    100 * family.inside(),
                    family.independence()));
        }
        return text.toString().replace("\r\n", "\n");
    }

    /** Two significant digits. */
    private static String percent(double share) {
        double percent = 100 * share;
        String digits = percent < 0.1 ? "%.3f %%" : percent < 1 ? "%.2f %%" : percent < 10 ? "%.1f %%" : "%.0f %%";
        return String.format(Locale.ROOT, digits, percent);
    }
}
