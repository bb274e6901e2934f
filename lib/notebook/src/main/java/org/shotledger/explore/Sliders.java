package org.shotledger.explore;

import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.shotledger.controls.Control;
import org.shotledger.controls.Controls;
import org.shotledger.controls.Readout;
import org.shotledger.units.AbsolutePressure;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;
import org.shotledger.units.Quantities;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.StatedPressure;
import org.shotledger.units.UnitSystem;
import org.shotledger.view.Viewing;

/** Sliders over quantities, in the units of the session; what they give is of the type of their ends. */
public final class Sliders {
    private Sliders() {}

    /**
     * A slider over a quantity.
     *
     * @param name what it sets, unique in its panel
     * @param low lowest value, for example {@code degF(60)}
     * @param high highest value, of the same kind
     * @return the slider; it starts in the middle
     * @throws IllegalArgumentException when the ends are of two kinds, or not in order
     */
    public static Control<Amount> slider(String name, Amount low, Amount high) {
        if (low.kind() != high.kind()) {
            throw new IllegalArgumentException("The slider '" + name + "' goes from a "
                    + low.kind().words() + " to a " + high.kind().words() + "; give both ends in one kind.");
        }
        return Controls.slider(name, low, high, amounts(low.kind(), system()));
    }

    /**
     * A slider over a pressure above ambient.
     *
     * @param name what it sets, unique in its panel
     * @param low lowest value, for example {@code psiGauge(10)}
     * @param high highest value
     * @return the slider; it starts in the middle
     * @throws IllegalArgumentException when the ends are not in order
     */
    public static Control<GaugePressure> slider(String name, GaugePressure low, GaugePressure high) {
        return Controls.slider(name, low, high, gauges(system()));
    }

    /**
     * A slider over an absolute pressure.
     *
     * @param name what it sets, unique in its panel
     * @param low lowest value, for example {@code psiAbs(12)}
     * @param high highest value
     * @return the slider; it starts in the middle
     * @throws IllegalArgumentException when the ends are not in order
     */
    public static Control<AbsolutePressure> slider(String name, AbsolutePressure low, AbsolutePressure high) {
        Readout<AbsolutePressure> readout = system() == UnitSystem.SI
                ? readout(QuantityKind.ABSOLUTE_PRESSURE, UnitSystem.SI, AbsolutePressure::pascals, Quantities::barAbs)
                : readout(QuantityKind.ABSOLUTE_PRESSURE, UnitSystem.US, AbsolutePressure::pascals, Quantities::psiAbs);
        return Controls.slider(name, low, high, readout);
    }

    /**
     * A slider over a pressure that is not said to be gauge or absolute.
     *
     * @param name what it sets, unique in its panel
     * @param low lowest value, for example {@code psi(10)}
     * @param high highest value
     * @return the slider; it starts in the middle, and its values still have to be said {@code gauge()} or {@code abs()}
     * @throws IllegalArgumentException when the ends are not in order
     */
    public static Control<StatedPressure> slider(String name, StatedPressure low, StatedPressure high) {
        Readout<StatedPressure> readout = system() == UnitSystem.SI
                ? readout(QuantityKind.PRESSURE_DIFFERENCE, UnitSystem.SI, StatedPressure::pascals, Quantities::bar)
                : readout(QuantityKind.PRESSURE_DIFFERENCE, UnitSystem.US, StatedPressure::pascals, Quantities::psi);
        return Controls.slider(name, low, high, readout);
    }

    private static UnitSystem system() {
        return Viewing.units().first();
    }

    static Readout<GaugePressure> gauges(UnitSystem system) {
        return system == UnitSystem.SI
                ? readout(QuantityKind.GAUGE_PRESSURE, system, GaugePressure::pascals, Quantities::barGauge)
                : readout(QuantityKind.GAUGE_PRESSURE, system, GaugePressure::pascals, Quantities::psiGauge);
    }

    /** Any kind of amount: what is shown is a straight line of the SI value. */
    static Readout<Amount> amounts(QuantityKind kind, UnitSystem system) {
        double zero = kind.shown(0, system);
        double one = kind.shown(1, system) - zero;
        return readout(kind, system, Amount::value, shown -> new Amount(kind, (shown - zero) / one));
    }

    /** Amounts that are written with a short name in a cell, so that a cell gives the very same figure. */
    static Readout<Amount> amounts(QuantityKind kind, UnitSystem system, DoubleFunction<Amount> written) {
        return readout(kind, system, Amount::value, written);
    }

    private static <T> Readout<T> readout(
            QuantityKind kind, UnitSystem system, ToDoubleFunction<T> si, DoubleFunction<T> value) {
        return new Readout<>() {
            @Override
            public double shown(T quantity) {
                return kind.shown(si.applyAsDouble(quantity), system);
            }

            @Override
            public T value(double shown) {
                return value.apply(shown);
            }

            @Override
            public String unit() {
                return org.shotledger.display.Units.printed(kind.unit(system));
            }

            @Override
            public int digits() {
                String number = kind.number(0.0, system);
                return number.contains(".") ? number.length() - number.indexOf('.') - 1 : 0;
            }
        };
    }
}
