package org.shotledger.explore;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleFunction;
import org.shotledger.controls.Readout;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;
import org.shotledger.units.Quantities;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Quantities as a cell writes them, in the reader's units: a slider and the cell that repeats it make the very same figure. */
final class Written {
    private Written() {}

    /**
     * A unit in which amounts are written.
     *
     * @param word the function of a cell that makes such an amount
     * @param kind what is measured
     * @param readout from amounts to numbers of the unit and back
     */
    record Unit<T>(String word, QuantityKind kind, Readout<T> readout) {
        String code(T value) {
            return word + "(" + Written.number(readout.shown(value)) + ")";
        }
    }

    static Unit<Amount> power(UnitSystem system) {
        return system == UnitSystem.SI
                ? unit("kW", QuantityKind.POWER, system, Quantities::kW)
                : unit("hp", QuantityKind.POWER, system, Quantities::hp);
    }

    static Unit<Amount> temperature(UnitSystem system) {
        return system == UnitSystem.SI
                ? unit("degC", QuantityKind.TEMPERATURE, system, Quantities::degC)
                : unit("degF", QuantityKind.TEMPERATURE, system, Quantities::degF);
    }

    static Unit<Amount> altitude(UnitSystem system) {
        return system == UnitSystem.SI
                ? unit("metres", QuantityKind.ALTITUDE, system, Quantities::metres)
                : unit("feet", QuantityKind.ALTITUDE, system, Quantities::feet);
    }

    static Unit<Amount> bore(UnitSystem system) {
        return system == UnitSystem.SI
                ? unit("mm", QuantityKind.BORE, system, Quantities::mm)
                : unit("thou", QuantityKind.BORE, system, Quantities::thou);
    }

    static Unit<GaugePressure> gauge(UnitSystem system) {
        return new Unit<>(
                system == UnitSystem.SI ? "barGauge" : "psiGauge", QuantityKind.GAUGE_PRESSURE, Sliders.gauges(system));
    }

    private static Unit<Amount> unit(String word, QuantityKind kind, UnitSystem system, DoubleFunction<Amount> made) {
        // a kind may have two names, such as a bore that is a length
        return new Unit<>(
                word,
                kind,
                Sliders.amounts(
                        kind,
                        system,
                        shown -> new Amount(kind, made.apply(shown).value())));
    }

    /** As many digits as a slider can set. */
    static String number(double value) {
        return new BigDecimal(value)
                .setScale(6, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
