package org.shotledger.study;

import java.util.function.ToDoubleFunction;
import org.shotledger.units.QuantityKind;

/** What combinations are compared by. */
public enum Objective {
    /** Wheel power; more is better. */
    POWER("wheel power", QuantityKind.POWER, 500, Figures::wheelPower, 1),
    /** Smallest margin to any limit; more is better. */
    MARGIN("least margin", QuantityKind.FRACTION, 0.001, Figures::leastMargin, 1),
    /** Flow of nitrous oxide at most power; less is better. */
    NITROUS("nitrous oxide used", QuantityKind.MASS_FLOW, 2e-4, Figures::nitrousFlow, -1),
    /** Margin left to the lean limit with a tenth of the nitrous fuel missing; more is better. */
    FORGIVENESS("forgiveness", QuantityKind.FRACTION, 0.001, Figures::forgiveness, 1),
    /** Highest cylinder pressure; less is better. */
    PEAK_PRESSURE("peak cylinder pressure", QuantityKind.ABSOLUTE_PRESSURE, 5e4, Figures::peakPressure, -1);

    private final String words;
    private final QuantityKind kind;
    private final double grain;
    private final ToDoubleFunction<Figures> value;
    private final int sign;

    Objective(String words, QuantityKind kind, double grain, ToDoubleFunction<Figures> value, int sign) {
        this.words = words;
        this.kind = kind;
        this.grain = grain;
        this.value = value;
        this.sign = sign;
    }

    /**
     * What it is called.
     *
     * @return words for a table or an axis
     */
    public String words() {
        return words;
    }

    /**
     * What it measures.
     *
     * @return the kind
     */
    public QuantityKind kind() {
        return kind;
    }

    /**
     * The value of an outcome.
     *
     * @param outcome the outcome
     * @return SI value
     */
    public double of(Figures outcome) {
        return value.applyAsDouble(outcome);
    }

    /**
     * Which of two is better.
     *
     * @param one an outcome
     * @param other another
     * @return true when the first is better by this objective
     */
    public boolean better(Figures one, Figures other) {
        return sign * (of(one) - of(other)) > 0;
    }

    /** Whether more is better, as a sign. */
    int sign() {
        return sign;
    }

    /** Smallest difference that matters, SI: half a kilowatt, a tenth of a percent, a fifth of a gram a second, half a bar. */
    double grain() {
        return grain;
    }
}
