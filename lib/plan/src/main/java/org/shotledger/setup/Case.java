package org.shotledger.setup;

import java.util.OptionalDouble;
import org.shotledger.engine.MoistAir;
import org.shotledger.units.Amount;
import org.shotledger.units.Require;

/**
 * What the world may be while a setup is run. It holds no decision.
 *
 * @param name what it is called, for example {@code "event, hot"}
 * @param air pressure, temperature and humidity of the ambient air
 * @param ethanol ethanol in the main fuel by volume, 0 to 1; empty for that of the car's sheet
 * @param bottle the moment in the bottle's day
 * @param voltage supply voltage with the engine running, V, 8 to 18
 * @param factors what the models are wrong by
 */
public record Case(
        String name, MoistAir air, OptionalDouble ethanol, BottleState bottle, double voltage, Factors factors) {

    public Case {
        Require.within("supply voltage", voltage, 8, 18, "V");
        ethanol.ifPresent(share -> Require.within("ethanol in the main fuel", share, 0, 1, ""));
    }

    /**
     * A case with the fuel of the sheet, the bottle as charged and the models as they stand.
     *
     * @param name what it is called
     * @param air the ambient air
     * @param voltage supply voltage, V
     * @return the case
     */
    public static Case of(String name, MoistAir air, double voltage) {
        return new Case(name, air, OptionalDouble.empty(), BottleState.FULL, voltage, Factors.NONE);
    }

    /**
     * The same under another name.
     *
     * @param other the name
     * @return the renamed case
     */
    public Case named(String other) {
        return new Case(other, air, ethanol, bottle, voltage, factors);
    }

    /**
     * The same in other air.
     *
     * @param other the air
     * @return the changed case
     */
    public Case withAir(MoistAir other) {
        return new Case(name, other, ethanol, bottle, voltage, factors);
    }

    /**
     * The same in warmer or colder air.
     *
     * @param temperature for example {@code degF(95)}
     * @return the changed case
     */
    public Case withAirTemperature(Amount temperature) {
        return withAir(new MoistAir(air.pressure(), temperature.value(), air.relativeHumidity()));
    }

    /**
     * The same at another altitude, with the standard pressure there; temperature and humidity stay.
     *
     * @param altitude for example {@code feet(4000)}
     * @return the changed case
     */
    public Case withAltitude(Amount altitude) {
        return withAir(MoistAir.atAltitude(altitude.value(), air.temperature(), air.relativeHumidity()));
    }

    /**
     * The same with other main fuel.
     *
     * @param share ethanol by volume, 0 to 1
     * @return the changed case
     */
    public Case withFuel(double share) {
        return new Case(name, air, OptionalDouble.of(share), bottle, voltage, factors);
    }

    /**
     * The same at another moment of the bottle.
     *
     * @param state the moment
     * @return the changed case
     */
    public Case withBottle(BottleState state) {
        return new Case(name, air, ethanol, state, voltage, factors);
    }

    /**
     * The same at another voltage.
     *
     * @param volts with the engine running, V
     * @return the changed case
     */
    public Case withVoltage(double volts) {
        return new Case(name, air, ethanol, bottle, volts, factors);
    }

    /**
     * The same with one model off by a factor.
     *
     * @param factor which
     * @param value 0 to 10
     * @return the changed case
     */
    public Case with(Factor factor, double value) {
        return new Case(name, air, ethanol, bottle, voltage, factors.with(factor, value));
    }
}
