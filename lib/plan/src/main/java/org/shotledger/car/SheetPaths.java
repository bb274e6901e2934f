package org.shotledger.car;

/** Places in the sheet that others than its reader name; {@link Car#origin} says what stands there. */
public final class SheetPaths {
    /** Power asked for. */
    public static final String TARGET_POWER = "target.wheel-power";
    /** Cylinder bore. */
    public static final String BORE = "engine.bore";
    /** Stroke. */
    public static final String STROKE = "engine.stroke";
    /** Number of cylinders. */
    public static final String CYLINDERS = "engine.cylinders";
    /** Share of the work that nitrous adds which arrives. */
    public static final String NITROUS_WORK = "engine.nitrous-work";
    /** Share of the nitrous oxide evaporated before the valves. */
    public static final String OXIDE_EVAPORATED = "fuels.nitrous-oxide-evaporated";
    /** Share of the charge's cooling that warm walls make good. */
    public static final String WALL_HEAT = "fuels.wall-heat";
    /** Geometric compression ratio. */
    public static final String COMPRESSION_RATIO = "engine.compression-ratio";
    /** Volumetric efficiency over engine speed. */
    public static final String VOLUMETRIC_EFFICIENCY = "engine.volumetric-efficiency";
    /** Temperature of both fuels. */
    public static final String FUEL_TEMPERATURE = "fuels.temperature";
    /** Share of the main fuel that evaporates in the intake. */
    public static final String MAIN_EVAPORATED = "fuels.main-evaporated";
    /** Share of the nitrous fuel that evaporates in the intake. */
    public static final String NITROUS_EVAPORATED = "fuels.nitrous-evaporated";
    /** Ethanol in the main fuel. */
    public static final String ETHANOL = "fuels.main.ethanol";
    /** Mixture of the main fuel. */
    public static final String MAIN_LAMBDA = "tune.lambda";
    /** Retard with nitrous. */
    public static final String RETARD = "tune.nitrous-retard";
    /** Mixture of all streams asked for. */
    public static final String NITROUS_LAMBDA = "tune.nitrous-lambda";
    /** Nitrous oxide over its fuel asked for. */
    public static final String NITROUS_RATIO = "tune.nitrous-ratio";
    /** Mixture of the nitrous circuit asked for. */
    public static final String CIRCUIT_LAMBDA = "tune.nitrous-circuit-lambda";
    /** Wheel power of the base pull. */
    public static final String BASE_POWER = "base-pull.wheel-power";
    /** Supply voltage. */
    public static final String VOLTAGE = "injection.voltage";
    /** Pressure of the main fuel. */
    public static final String MAIN_PRESSURE = "injection.regulator.base-pressure";
    /** Boost reference of the main fuel. */
    public static final String MAIN_REFERENCE = "injection.regulator.boost-reference";
    /** Effectiveness of the charge cooler. */
    public static final String COOLER = "turbo.charge-cooler.effectiveness";
    /** Number of nozzles. */
    public static final String NOZZLES = "nitrous-system.nozzles";
    /** Hole of the nitrous solenoid. */
    public static final String NITROUS_SOLENOID = "nitrous-system.nitrous.solenoid.bore";
    /** Pressure of the nitrous fuel. */
    public static final String NITROUS_FUEL_PRESSURE = "nitrous-system.fuel.regulator.base-pressure";
    /** Boost reference of the nitrous fuel. */
    public static final String NITROUS_FUEL_REFERENCE = "nitrous-system.fuel.regulator.boost-reference";
    /** Charge of the bottle. */
    public static final String CHARGE = "bottle.charge";
    /** Temperature of the bottle at the start of a pass. */
    public static final String BOTTLE_TEMPERATURE = "bottle.start-temperature";
    /** The same, given as a pressure. */
    public static final String BOTTLE_PRESSURE = "bottle.start-pressure";
    /** Driveline loss. */
    public static final String DRIVELINE_LOSS = "driveline.loss";
    /** Nitrous jet, where the sheet sets one. */
    public static final String NITROUS_JET = "setup.nitrous-jet";
    /** Fuel jet, where the sheet sets one. */
    public static final String FUEL_JET = "setup.fuel-jet";

    private SheetPaths() {}

    /**
     * The set pressure at the nitrous system's fuel jets.
     *
     * @param car the car
     * @return the place of its own regulator's pressure, or of the main rail's where the fuel comes from there
     */
    public static String fuelPressureAtJets(Car car) {
        return car.nitrous().fuel().onMainRail() ? MAIN_PRESSURE : NITROUS_FUEL_PRESSURE;
    }

    /**
     * A figure of named conditions.
     *
     * @param conditions their name in the sheet
     * @param figure {@code "altitude"}, {@code "pressure"}, {@code "temperature"} or {@code "humidity"}
     * @return the place
     */
    public static String conditions(String conditions, String figure) {
        return "conditions." + conditions + "." + figure;
    }
}
