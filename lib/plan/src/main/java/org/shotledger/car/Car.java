package org.shotledger.car;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.shotledger.drive.Driveline;
import org.shotledger.engine.ChenFlynn;
import org.shotledger.engine.Engine;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.WetKit;
import org.shotledger.wiring.Wiring;

/**
 * One car as it is built: what a spanner is needed to change. It holds no target, no jet in use and no weather.
 *
 * @param name what it is called
 * @param invented true when the figures are made up for a demonstration
 * @param engine the engine
 * @param friction friction of the engine
 * @param fuels the two fuels as the sheet states them
 * @param basePull a measured pull without nitrous, on which the model is calibrated
 * @param injection main fuel supply
 * @param turbo turbocharger and charge cooling
 * @param nitrous the nitrous system without its jets
 * @param bottle bottle and heater
 * @param driveline driveline
 * @param limits what the builder allows
 * @param vehicle the car itself, empty when the sheet does not describe it
 * @param electrical electrical supply, empty when the sheet does not describe it
 * @param controller controller channels, empty when the sheet does not describe them
 * @param wiring loads, signals and sensors, empty when the sheet does not describe them
 * @param model the engine models, calibrated on the base pull
 * @param origins where each figure comes from, by its path in the sheet, for example {@code "engine.bore"}
 */
public record Car(
        String name,
        boolean invented,
        Engine engine,
        ChenFlynn friction,
        FuelStreams fuels,
        BasePull basePull,
        Injection injection,
        Turbo turbo,
        WetKit nitrous,
        BottleSheet bottle,
        Driveline driveline,
        BuilderLimits limits,
        Optional<Vehicle> vehicle,
        Optional<Electrical> electrical,
        Optional<Controller> controller,
        Optional<Wiring> wiring,
        EngineModel model,
        Map<String, Origin> origins) {

    public Car {
        origins = Collections.unmodifiableMap(new LinkedHashMap<>(origins));
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

    /**
     * How well a figure of the sheet is known.
     *
     * @param path its place in the sheet; empty for a figure that no sheet states
     * @return common practice where the sheet says nothing
     */
    public Provenance provenance(String path) {
        return origin(path).map(o -> Provenance.ofWords(o.provenance())).orElse(Provenance.COMMON_PRACTICE);
    }

    /**
     * Where a figure comes from, in words.
     *
     * @param path its place in the sheet; empty for a figure that no sheet states
     * @return the builder's reason, or that there is none
     */
    public String reason(String path) {
        return origin(path).map(Origin::from).filter(from -> !from.isEmpty()).orElse("common practice, no source");
    }

    /**
     * The same car with other engine models.
     *
     * @param other the models
     * @return the changed car
     */
    public Car with(EngineModel other) {
        return copy(fuels, turbo, nitrous, injection, limits, other);
    }

    /**
     * The same car with other fuels in its tanks; the calibration stays.
     *
     * @param other the fuels
     * @return the changed car
     */
    public Car with(FuelStreams other) {
        return copy(other, turbo, nitrous, injection, limits, model);
    }

    /**
     * The same car with another nitrous system; the calibration stays.
     *
     * @param other the nitrous system
     * @return the changed car
     */
    public Car with(WetKit other) {
        return copy(fuels, turbo, other, injection, limits, model);
    }

    /**
     * The same car with another turbocharger; the calibration stays, which was made with the old one.
     *
     * @param other turbocharger and charge cooling
     * @return the changed car
     */
    public Car with(Turbo other) {
        return copy(fuels, other, nitrous, injection, limits, model);
    }

    /**
     * The same car with another main fuel supply; the calibration stays.
     *
     * @param other the supply
     * @return the changed car
     */
    public Car with(Injection other) {
        return copy(fuels, turbo, nitrous, other, limits, model);
    }

    /**
     * The same car with other limits.
     *
     * @param other what the builder allows
     * @return the changed car
     */
    public Car with(BuilderLimits other) {
        return copy(fuels, turbo, nitrous, injection, other, model);
    }

    /**
     * The same car with another base pull; the calibration stays, which was made with the old one.
     *
     * @param other a measured pull
     * @return the changed car
     */
    public Car with(BasePull other) {
        return new Car(
                name,
                invented,
                engine,
                friction,
                fuels,
                other,
                injection,
                turbo,
                nitrous,
                bottle,
                driveline,
                limits,
                vehicle,
                electrical,
                controller,
                wiring,
                model,
                origins);
    }

    private Car copy(
            FuelStreams tanks, Turbo turbine, WetKit kit, Injection supply, BuilderLimits allowed, EngineModel models) {
        return new Car(
                name,
                invented,
                engine,
                friction,
                tanks,
                basePull,
                supply,
                turbine,
                kit,
                bottle,
                driveline,
                allowed,
                vehicle,
                electrical,
                controller,
                wiring,
                models,
                origins);
    }
}
