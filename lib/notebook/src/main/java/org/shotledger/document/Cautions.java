package org.shotledger.document;

import java.util.List;

/** What every document says so that nobody is hurt. Common practice of the trade and of compressed-gas rules. */
public final class Cautions {
    private Cautions() {}

    /**
     * The usual cautions.
     *
     * @return one sentence or two each
     */
    public static List<String> usual() {
        return List.of(
                "Every figure here is an estimate. Prove it on the dyno in small steps, from the smallest jets upward, with lambda,"
                        + " fuel pressure and exhaust temperature watched, and stop at the first no-go value.",
                "A lean mixture under nitrous oxide destroys an engine within a second. Cut the nitrous oxide on low fuel"
                        + " pressure, on a lean reading, on over-boost and outside its window of engine speed.",
                "Never heat a bottle with a flame or beyond the pressure of its plan; use a heater with a thermostat and a working"
                        + " relief disc that vents outside the car.",
                "Fill a bottle by mass only, never beyond its rated charge; a bottle filled full of liquid bursts when it warms.",
                "Liquid nitrous oxide burns skin by cold, and the gas displaces air: wear gloves and glasses, and work where air"
                        + " moves.",
                "Close the bottle and empty the lines before work on the car; nitrous oxide that leaks into a stopped engine may"
                        + " explode at the next start.",
                "Nitrous oxide feeds fire: never open a bottle near fuel or flame. Keep oil, grease and dirt away from valves and lines that carry nitrous oxide.",
                "Bottles, relief devices, filling and transport fall under pressure-vessel law: local codes and licensed practice"
                        + " decide, not this document.",
                "Use on closed courses only, with the belts, the fire protection and the inspection that the organiser asks for.");
    }
}
