package org.shotledger.study;

/** Which part of an evaluation an axis changes; what is not known to change less changes everything. */
enum Role {
    /** The plenum pressure held. */
    BOOST,
    /** The nitrous jet: the nitrous flow alone. */
    NITROUS_JET,
    /** The fuel jet: the nitrous fuel flow alone. */
    FUEL_JET,
    /** The nitrous circuit or the bottle: nitrous flow and its enthalpy. */
    NITROUS_SIDE,
    /** The fuel circuit of the kit: nitrous fuel flow. */
    FUEL_SIDE,
    /** Anything else: the whole engine side is worked out anew. */
    ENGINE;

    static Role of(String path) {
        if (path.equals(Vary.BOOST)) {
            return BOOST;
        }
        if (path.equals(Vary.NITROUS_JET)) {
            return NITROUS_JET;
        }
        if (path.equals(Vary.FUEL_JET)) {
            return FUEL_JET;
        }
        if (path.startsWith("wet-kit.nitrous.") || path.startsWith("bottle.start-")) {
            return NITROUS_SIDE;
        }
        return path.startsWith("wet-kit.fuel.") ? FUEL_SIDE : ENGINE;
    }
}
