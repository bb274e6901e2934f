package org.shotledger.wiring;

/** A sensor that is a resistance to ground below a pull-up resistor: {@code U = U_s R/(R + R_p)}. */
sealed interface PulledUpSensor extends Sensor permits ResistanceSensor, ThermistorSensor {

    /**
     * The resistance at a value.
     *
     * @param value what is measured, SI
     * @return ohm
     */
    double resistance(double value);

    /**
     * The resistor to the supply.
     *
     * @return ohm
     */
    double pullUp();

    /**
     * The voltage above that resistor.
     *
     * @return V
     */
    double supply();

    @Override
    default double output(double value) {
        return output(value, InputConditions.NOMINAL);
    }

    @Override
    default double output(double value, InputConditions conditions) {
        double resistance = resistance(value);
        return supply() * conditions.supply() * resistance / (resistance + pullUp() * conditions.pullUp());
    }
}
