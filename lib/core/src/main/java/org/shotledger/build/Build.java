package org.shotledger.build;

import java.util.Map;
import java.util.Optional;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.Engine;
import org.shotledger.engine.MoistAir;
import org.shotledger.wetkit.WetKit;

/**
 * One car as its build sheet describes it.
 *
 * @param name what the build is called
 * @param invented true when the figures are made up for a demonstration
 * @param conditions places and weathers by name
 * @param target what the customer asks for
 * @param engine the engine
 * @param fuels the two fuel streams
 * @param tune how the engine is run
 * @param basePull a measured pull without nitrous, on which the model is calibrated
 * @param injection main fuel supply
 * @param turbo turbocharger and charge cooling
 * @param wetKit the wet kit without its jets
 * @param bottle bottle, charge and heater
 * @param driveline driveline
 * @param limits what the builder allows
 * @param origins where each figure comes from, by its path in the sheet, for example {@code "engine.bore"}
 */
public record Build(
        String name,
        boolean invented,
        Map<String, MoistAir> conditions,
        Target target,
        Engine engine,
        FuelStreams fuels,
        Tune tune,
        BasePullSheet basePull,
        Injection injection,
        Turbo turbo,
        WetKit wetKit,
        BottleSheet bottle,
        Driveline driveline,
        BuilderLimits limits,
        Map<String, Origin> origins) {

    /** Copies the maps. */
    public Build {
        conditions = Map.copyOf(conditions);
        origins = Map.copyOf(origins);
    }

    /**
     * The air at a named place.
     *
     * @param named name of the conditions in the sheet
     * @return pressure, temperature and humidity
     * @throws IllegalArgumentException when the sheet has no conditions of that name; the message lists those it has
     */
    public MoistAir air(String named) {
        MoistAir air = conditions.get(named);
        if (air == null) {
            throw new IllegalArgumentException("The build sheet of " + name + " has no conditions named '" + named
                    + "'; it has " + conditions.keySet().stream().sorted().toList() + ".");
        }
        return air;
    }

    /**
     * Where a figure comes from.
     *
     * @param path its place in the sheet, for example {@code "engine.bore"}
     * @return the origin, or empty when the sheet does not state the figure
     */
    public Optional<Origin> origin(String path) {
        return Optional.ofNullable(origins.get(path));
    }
}
