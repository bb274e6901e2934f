package org.shotledger.wiring;

import java.util.List;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;

/**
 * A thermocouple of type K against a cold end at 0 degC, after ITS-90 (NIST Monograph 175): a polynomial of the ninth degree and an
 * exponential term, in mV over degC, 0 to 1372 degC.
 *
 * @param name what it is called
 * @param low least temperature of use, K, not below 273.15
 * @param high greatest temperature of use, K, up to 1645.15
 */
public record ThermocoupleSensor(String name, double low, double high) implements Sensor {
    private static final double[] C = {
        -1.7600413686e-2,
        3.8921204975e-2,
        1.8558770032e-5,
        -9.9457592874e-8,
        3.1840945719e-10,
        -5.6072844889e-13,
        5.6075059059e-16,
        -3.2020720003e-19,
        9.7151147152e-23,
        -1.2104721275e-26
    };
    private static final double ZERO = 273.15;
    private static final double BOILING = 373.15;

    /** Checks the range. */
    public ThermocoupleSensor {
        Require.named("sensor", name);
        Require.within("lower temperature of " + name, low, ZERO, 1645.15, "K");
        Require.within("upper temperature of " + name, high, Math.nextUp(low), 1645.15, "K");
    }

    @Override
    public QuantityKind kind() {
        return QuantityKind.TEMPERATURE;
    }

    @Override
    public double output(double value) {
        double t = value - ZERO;
        double sum = 0;
        for (int i = C.length - 1; i >= 0; i--) {
            sum = sum * t + C[i];
        }
        double bump = t - 126.9686;
        return 1e-3 * (sum + 0.118597600 * Math.exp(-1.183432e-4 * bump * bump));
    }

    @Override
    public String law() {
        return "type K after ITS-90 (NIST Monograph 175), cold end at 0 \u00b0C; the amplifier adds its own cold end";
    }

    @Override
    public String faults() {
        return "A broken probe floats: choose an amplifier that shows it as too hot. Exchanged wires read falling when it warms.";
    }

    @Override
    public List<Check> checks() {
        return List.of(
                new Check("in water with melting ice", ZERO, output(ZERO)),
                new Check("in boiling water at sea level", BOILING, output(BOILING)));
    }
}
