package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * A thermocouple against a cold end at 0 degC, after ITS-90.
 *
 * @param name what it is called
 * @param type its letter
 * @param low least temperature of use, K
 * @param high greatest temperature of use, K
 */
public record ThermocoupleSensor(String name, ThermocoupleType type, double low, double high) implements Sensor {
    private static final double BOILING = 373.15;

    public ThermocoupleSensor {
        Require.named("sensor", name);
        Require.given("type of " + name, type);
        Require.within("lower temperature of " + name, low, type.low(), type.high(), "K");
        Require.within("upper temperature of " + name, high, Math.nextUp(low), type.high(), "K");
    }

    /**
     * A thermocouple of type K.
     *
     * @param name what it is called
     * @param low least temperature of use, K
     * @param high greatest temperature of use, K
     */
    public ThermocoupleSensor(String name, double low, double high) {
        this(name, ThermocoupleType.K, low, high);
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE;
    }

    @Override
    public double output(double value) {
        return type.voltage(value);
    }

    @Override
    public String law() {
        return "type " + type
                + " after ITS-90 (NIST Monograph 175), cold end at 0 \u00b0C; the amplifier adds its own cold end";
    }

    @Override
    public String faults() {
        return "A broken probe floats: choose an amplifier that shows it as too hot. Exchanged wires read falling when it warms.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("in water with melting ice", UnitFactors.ICE_POINT, output(UnitFactors.ICE_POINT)),
                new Check("in boiling water at sea level", BOILING, output(BOILING)));
    }
}
