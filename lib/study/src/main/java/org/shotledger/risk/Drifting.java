package org.shotledger.risk;

import org.shotledger.units.QuantityKind;

/** An input that strays. */
public enum Drifting {
    /** Bottle pressure, set by the bottle's temperature, Pa absolute. */
    BOTTLE("bottle pressure", QuantityKind.ABSOLUTE_PRESSURE),
    /** What the regulator of the nitrous fuel holds, on the main rail that of both fuels, Pa gauge. */
    FUEL("nitrous fuel pressure", QuantityKind.GAUGE_PRESSURE),
    /** Plenum pressure above the planned one, Pa. */
    BOOST("boost above plan", QuantityKind.PRESSURE_DIFFERENCE);

    /** Bottle pressures that are tried, Pa: liquid at -17 degC and just below the critical point. */
    private static final double LOWEST_BOTTLE = 20e5;

    private static final double HIGHEST_BOTTLE = 72.4e5;
    /** Share of the planned pressure up to which a bottle may be warmed where no limit says so: our choice. */
    private static final double ABOVE_PLAN = 1.1;

    private final String words;
    private final QuantityKind kind;

    Drifting(String words, QuantityKind kind) {
        this.words = words;
        this.kind = kind;
    }

    /**
     * The words a reader sees.
     *
     * @return for example {@code "bottle pressure"}
     */
    public String words() {
        return words;
    }

    /**
     * What it measures.
     *
     * @return the kind, for showing values
     */
    public QuantityKind kind() {
        return kind;
    }

    double planned(Drift drift) {
        return switch (this) {
            case BOTTLE -> drift.bottlePressure();
            case FUEL -> drift.fuelPressure();
            case BOOST -> 0;
        };
    }

    double band(Drift drift) {
        return switch (this) {
            case BOTTLE -> drift.band().bottlePressure();
            case FUEL -> drift.band().fuelPressure();
            case BOOST -> drift.band().boost();
        };
    }

    /** The outcome with this input alone at a value, the others as planned. */
    FaultOutcome at(Drift drift, double value) {
        return drift.at(or(BOTTLE, drift, value), or(FUEL, drift, value), or(BOOST, drift, value));
    }

    /** Whether that outcome is safe, for searches. */
    boolean safe(Drift drift, double value) {
        return drift.safe(or(BOTTLE, drift, value), or(FUEL, drift, value), or(BOOST, drift, value));
    }

    private double or(Drifting input, Drift drift, double value) {
        return this == input ? value : input.planned(drift);
    }

    /** Values that can be evaluated, clipped to what the models cover. */
    double clip(Drift drift, double value) {
        return switch (this) {
            case BOTTLE -> Math.min(Math.max(value, LOWEST_BOTTLE), Math.max(HIGHEST_BOTTLE, bottle(drift)));
            case FUEL -> Math.min(Math.max(value, 0.5e5), 10e5);
            case BOOST -> Math.min(Math.max(value, -2e5), 2e5);
        };
    }

    /** A bottle that liquid fills stands above the critical pressure while it is still colder. */
    private static double bottle(Drift drift) {
        return ABOVE_PLAN * drift.bottlePressure();
    }

    /** Why more or less of this input moves the engine. */
    String reason(boolean up) {
        return switch (this) {
            case BOTTLE ->
                up
                        ? "a warmer bottle pushes more nitrous oxide through the same jets while the fuel stays: leaner, stronger"
                        : "a colder bottle pushes less nitrous oxide through the same jets while the fuel stays: richer, weaker,"
                                + " and air takes the room it leaves, which the compressor must pass";
            case FUEL ->
                up
                        ? "fuel flow rises with the root of the pressure drop while the nitrous oxide stays: richer, and the pump"
                                + " carries more against more pressure"
                        : "fuel flow falls with the root of the pressure drop while the nitrous oxide stays: leaner, and stronger"
                                + " as long as the mixture is rich";
            case BOOST ->
                up
                        ? "more air and main fuel beside the same choked nitrous oxide: more torque, pressure and compressor flow"
                        : "less air beside the same choked nitrous oxide: its share grows and the charge gets colder";
        };
    }
}
