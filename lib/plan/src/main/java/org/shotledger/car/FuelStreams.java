package org.shotledger.car;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shotledger.engine.Intake;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;

/**
 * The two fuels.
 *
 * @param main fuel of the engine's own injectors
 * @param blend what the main fuel is blended from; empty when its ethanol content cannot change
 * @param ownNitrous fuel of the nitrous system's own supply; empty when it is the main fuel
 * @param temperature temperature of both as they are injected, K
 * @param mainEvaporated share of the main fuel evaporated before the intake valve closes, 0 to 1
 * @param nitrousEvaporated share of the nitrous fuel evaporated before the intake valve closes, 0 to 1
 * @param warming how much of the nitrous oxide evaporates before the valves, and what warm walls give the charge
 */
public record FuelStreams(
        Fuel main,
        Optional<Blend> blend,
        Optional<Fuel> ownNitrous,
        double temperature,
        double mainEvaporated,
        double nitrousEvaporated,
        Intake.Warming warming) {

    /**
     * A blend of ethanol and gasoline as it is bought.
     *
     * @param ethanol by volume, 0 to 1
     * @param water by volume, 0 to 0.1
     * @param base the gasoline
     */
    public record Blend(double ethanol, double water, Fuel base) {
        /**
         * The fuel at a content.
         *
         * @param share ethanol by volume, 0 to 1
         * @return the blend
         */
        public Fuel at(double share) {
            return Fuels.ethanolBlend(share, water, base);
        }
    }

    /**
     * Fuel of the nitrous system.
     *
     * @return its own, or the main fuel
     */
    public Fuel nitrous() {
        return ownNitrous.orElse(main);
    }

    /**
     * The same with another ethanol content of the main fuel, which reaches the nitrous system where that burns the main fuel.
     *
     * @param ethanol by volume, 0 to 1; empty for the content of the sheet
     * @return the changed fuels; unchanged where the main fuel is no blend
     */
    public FuelStreams with(OptionalDouble ethanol) {
        if (ethanol.isEmpty() || blend.isEmpty() || ethanol.getAsDouble() == blend.get().ethanol) {
            return this;
        }
        return new FuelStreams(
                blend.get().at(ethanol.getAsDouble()),
                blend,
                ownNitrous,
                temperature,
                mainEvaporated,
                nitrousEvaporated,
                warming);
    }

    /**
     * The same with another main fuel, and no other way to change it.
     *
     * @param fuel the main fuel
     * @return the changed fuels
     */
    public FuelStreams withMain(Fuel fuel) {
        return new FuelStreams(
                fuel,
                Optional.empty(),
                Optional.of(nitrous()),
                temperature,
                mainEvaporated,
                nitrousEvaporated,
                warming);
    }

    /**
     * The same with a fuel of its own for the nitrous system.
     *
     * @param fuel fuel of the nitrous system
     * @return the changed fuels
     */
    public FuelStreams withNitrous(Fuel fuel) {
        return new FuelStreams(main, blend, Optional.of(fuel), temperature, mainEvaporated, nitrousEvaporated, warming);
    }

    /**
     * The same with a charge that is warmed otherwise.
     *
     * @param other evaporated share of the nitrous oxide and wall heat
     * @return the changed fuels
     */
    public FuelStreams with(Intake.Warming other) {
        return new FuelStreams(main, blend, ownNitrous, temperature, mainEvaporated, nitrousEvaporated, other);
    }
}
