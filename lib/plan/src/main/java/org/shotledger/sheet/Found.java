package org.shotledger.sheet;

import org.shotledger.units.QuantityKind;

/**
 * One value of a sheet and where it stands.
 *
 * @param path its place in the sheet, such as {@code engine.bore}
 * @param text the value as it was found; for a default the words it would have
 * @param kind what it measures; null for a word, a name or a table
 * @param value the SI value; NaN for a word, a name or a table
 * @param halfWidth half-width of the band after {@code +/-}, SI; NaN when none was given
 * @param from the writer's reason; empty when none was given
 * @param provenance the writer's own word on how well it is known, one of {@link #STANDINGS}; empty when none was given
 * @param file the file as the user named it
 * @param line the line from 1; for a default the line of its section
 * @param meant what the writer says, at this value itself, about its being meant
 */
public record Found(
        String path,
        String text,
        QuantityKind kind,
        double value,
        double halfWidth,
        String from,
        String provenance,
        String file,
        int line,
        Meant meant) {

    /** How the reason of a default begins. */
    public static final String DEFAULT = "default: ";

    /** What a writer says of a value beside the value itself; a reason of the whole section says nothing of one value. */
    public enum Meant {
        /** Nothing. */
        UNSAID,
        /** Where it comes from. */
        REASONED,
        /** {@code sure: yes}. */
        SURE
    }

    /** The words a writer may use after {@code provenance:}. */
    public static final java.util.List<String> STANDINGS =
            java.util.List.of("measured", "published", "calculated", "common practice", "estimated", "assumed");

    /**
     * Standard uncertainty of the band: half-width over the root of three (rectangular distribution, JCGM 100:2008,
     * 4.3.7).
     *
     * @return the standard uncertainty, SI; NaN when no band was given
     */
    public double uncertainty() {
        return halfWidth / Math.sqrt(3);
    }
}
