package org.shotledger.document;

import java.util.List;

/** What every document says so that nobody is hurt. Common practice of the trade and of compressed-gas rules. */
public final class Cautions {
    /** What a fuel of methanol asks for besides. */
    public static final String METHANOL =
            "Methanol poisons through the skin and by its vapour and burns with a flame that is hard to see in"
                    + " daylight: gloves, fresh air, and water at hand.";

    /** The cautions in one breath, for the first page, a card and a notebook's cell. */
    public static final String SHORT =
            "Before anything is opened: nitrous oxide can suffocate without warning, burns skin by cold, feeds fire"
                    + " with oil and grease, and backfires in an intake. Outdoors, away from people and ignition, gloves"
                    + " and glasses; no flame on a bottle ever; its disc vents outside the car; a switch that cuts it"
                    + " without the controller, or a second valve in series. Closed courses only; local codes and licensed"
                    + " practice decide. Every figure is an estimate, to be proven in small steps.";

    /** What belongs to filling, warming and weighing a bottle. */
    public static final String BOTTLE =
            "Nitrous oxide can suffocate without warning and burns skin by cold: fill, weigh and vent outdoors, away"
                    + " from people and ignition, with gloves and glasses, no oil or grease on any fitting. By the scale"
                    + " only: a bottle full of liquid bursts when it warms. No open flame on a bottle ever, and no heater"
                    + " without its switch. Filling and transport fall under the law on cylinders and dangerous goods:"
                    + " licensed practice decides.";

    /** What belongs to the controller's tables and to a dynamometer. */
    public static final List<String> TUNER = List.of(
            "Bottle closed until the boost table is proven. Smallest jets first; one step, one log read, then the next; stop at the first"
                    + " figure outside its band.",
            "The nitrous must be cut on low fuel pressure, a lean reading, over-boost, a closing throttle and outside its engine speeds;"
                    + " try each cut with the bottle closed. A lean engine under nitrous oxide is destroyed within a second.",
            "Never open it below its engine speed or into a stopped engine: what lies in the intake backfires at the next spark.",
            "Nobody in line with wheels, shafts or turbocharger; extinguisher at hand; exhaust and what is purged led outdoors.");

    /** What belongs to lines, bottle and wires. */
    public static final List<String> MECHANIC = List.of(
            "Bottle valve closed and its hose off while lines, jets or wires are worked on; bleed the lines outdoors first. Liquid burns"
                    + " skin by cold: gloves and glasses.",
            "No oil, grease, sealing tape or swarf in any nitrous fitting: they may ignite under pressure. Keep its lines away from fuel,"
                    + " heat and moving parts.",
            "Nitrous and fuel jets exchanged destroy the engine: two people read each by pin gauge and side.",
            "The disc vents outside the car through a pipe of its own; a second nitrous valve in series, or a hard-wired switch within the"
                    + " driver's reach, cuts without the controller. Battery off while wires are worked on.",
            "Cylinders, their tests and discs fall under the law on pressure vessels: local codes and licensed practice decide.");

    /** What belongs to a day at the track. */
    public static final List<String> TRACK = List.of(
            "Closed courses only; somebody stands by with an extinguisher. Belts, gloves and glasses on before the bottle is opened.",
            "Never sit in a closed car with a bottle that leaks. Purge away from people and from the intake.",
            "No pass with a figure outside its band, a new noise, a wet joint or a bottle above its pressure: close the bottle, bleed the"
                    + " lines, find it.");

    /** What to mind when jets are flow-tested; stands wherever such a test is shown. */
    private static final List<String> FLOW_TEST = List.of(
            "Outdoors, with the wind from behind, away from flames, sparks, fuel and people: what comes out is cold, fills pits and closed"
                    + " rooms without warning, and feeds fire.",
            "The bottle strapped down upright to the scale, the nozzles clamped and pointing away; hose and nozzles kick when they open.",
            "Nobody in the jet or in line with it, no hand before a nozzle; switch it from a distance.",
            "Gloves against cold, eye protection, and hearing protection: the jet is loud enough to hurt.",
            "Fuel is caught in an open measure far from the nitrous oxide, heat and sparks, with an extinguisher at hand; water is safer and"
                    + " tells the same. Never both at once.",
            "Vent and close the bottle afterwards. Local codes, the rules for pressure vessels and licensed practice come first.");

    private Cautions() {}

    /**
     * What to mind when jets are flow-tested.
     *
     * @return one sentence or two each
     */
    public static List<String> flowTest() {
        return FLOW_TEST;
    }

    /**
     * The usual cautions.
     *
     * @return one sentence or two each
     */
    public static List<String> usual() {
        return List.of(
                "Every figure here is an estimate: prove it in small steps from the smallest jets upward, and stop at"
                        + " the first figure outside its band. Closed courses only.",
                "Nitrous oxide can suffocate without warning: fill, purge and bleed outdoors only, away from people"
                        + " and from anything that ignites, and never sit in a closed car with a bottle that leaks.",
                "Liquid nitrous oxide and the parts it flows through burn skin by cold: gloves and glasses.",
                "It is an oxidiser: oil, grease and dirt in its valves and lines may ignite under pressure; keep it"
                        + " away from fuel.",
                "Never an open flame on or near a bottle, ever. Warm it by a heater with a thermostat, never beyond"
                        + " its plan.",
                "The disc of the bottle vents outside the car, through a pipe of its own. Fill by mass only: a bottle"
                        + " full of liquid bursts when it warms.",
                "Liquid left in the intake, or nitrous oxide let into a stopped engine, backfires at the next spark:"
                        + " bleed the lines, close the bottle, then work.",
                "A lean engine under nitrous oxide is destroyed within a second: it must be cut on low fuel pressure,"
                        + " a lean reading, over-boost and outside its engine speeds.",
                "A solenoid may stick open: a second nitrous valve in series, or a hard-wired arming switch, must cut"
                        + " it without the controller, and the driver must reach it.",
                "Transport, filling, testing and discs of bottles fall under the law on pressure vessels and dangerous"
                        + " goods: local codes and licensed practice decide, not this document.");
    }
}
