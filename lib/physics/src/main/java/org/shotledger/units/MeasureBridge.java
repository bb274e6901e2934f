package org.shotledger.units;

import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.*;

import javax.measure.Quantity;
import javax.measure.Unit;
import tech.units.indriya.quantity.Quantities;

/** To and from the Units of Measurement API. Apart, because its implementation is slow to start and seldom needed. */
final class MeasureBridge {
    private static final int DEGREES = 180;

    private MeasureBridge() {}

    static Quantity<?> quantity(Amount amount) {
        return Quantities.getQuantity(amount.value(), unit(amount.kind().dimension()));
    }

    static double siValue(Quantity<?> quantity, QuantityKind kind) {
        Unit<?> unit = unit(kind.dimension());
        if (!quantity.getUnit().isCompatible(unit)) {
            throw new UnitException("The quantity " + quantity + " is not "
                    + kind.dimension().words() + "; give one whose unit converts to " + unit + ".");
        }
        return convert(quantity, unit);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static double convert(Quantity<?> quantity, Unit unit) {
        return ((Quantity) quantity).to(unit).getValue().doubleValue();
    }

    private static Unit<?> unit(Dimension dimension) {
        return switch (dimension) {
            case NUMBER -> ONE;
            case PRESSURE -> PASCAL;
            case TEMPERATURE -> KELVIN;
            case POWER -> WATT;
            case TORQUE -> NEWTON.multiply(METRE);
            case ENERGY -> JOULE;
            case MASS -> KILOGRAM;
            case MASS_FLOW -> KILOGRAM.divide(SECOND);
            case VOLUME -> CUBIC_METRE;
            case VOLUME_FLOW -> CUBIC_METRE.divide(SECOND);
            case LENGTH -> METRE;
            case AREA -> SQUARE_METRE;
            case DENSITY -> KILOGRAM.divide(CUBIC_METRE);
            case ROTATION -> ONE.divide(MINUTE);
            case SPEED -> METRE_PER_SECOND;
            case TIME -> SECOND;
            case ANGLE -> RADIAN.multiply(Math.PI).divide(DEGREES);
            case SPECIFIC_ENERGY -> JOULE.divide(KILOGRAM);
            case SPECIFIC_HEAT -> JOULE.divide(KILOGRAM.multiply(KELVIN));
            case VOLTAGE -> VOLT;
            case CURRENT -> AMPERE;
            case RESISTANCE -> OHM;
            case CHARGE -> COULOMB;
            case FREQUENCY -> HERTZ;
            case INERTIA -> KILOGRAM.multiply(SQUARE_METRE);
        };
    }
}
