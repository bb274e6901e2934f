package org.shotledger.bottle;

import static org.shotledger.bottle.FillingLimit.Kind;

import java.util.ArrayList;
import java.util.List;

/**
 * The hard limits of one charge in one bottle. None can be switched off; a caller can only make them stricter.
 *
 * <p>What the regulation says, and what not (49 CFR, shipment of cylinders on public roads in the United States; other countries have
 * rules of their own, mostly by UN packing instruction P200 with 0.68, 0.74, 0.75 kg/L for test pressures of 180, 225, 250 bar,
 * from memory):
 *
 * <ul>
 *   <li>173.304a(a)(2), table: nitrous oxide 68 % of the water capacity by weight, in cylinders of the types marked 1800 psi or more.
 *       The row of nitrous oxide is from memory; carbon dioxide has the same figure, and newer editions allow it more in cylinders
 *       marked 2000 psi and up; that is not used here.
 *   <li>173.304a(c): the filling is by weight and is checked on a scale after the cylinder is taken off the line. It does not
 *       bound the pressure of a liquefied gas.
 *   <li>173.301a(c): the pressure at 21 degC (70 degF) is not above the marked service pressure.
 *   <li>173.301a(d): at 55 degC (131 degF) 5/4 of the service pressure, <em>except</em> (d)(1) for liquefied nitrous oxide; so
 *       that rule is none of these limits.
 *   <li>Relief: disc not rated above the minimum test pressure (CGA S-1.1, incorporated by 173.301(f); from memory), test
 *       pressure 5/3 of the service pressure (180.209). A disc may open from 90 % of its rating (tolerance of CGA S-1.1, from memory).
 * </ul>
 *
 * <p>That a bottle must have room for vapour when a pass starts and when its heater turns off is this project's own rule: a
 * liquid-full bottle gains some 10 to 15 bar for each kelvin near 0.75 kg/L, and neither jets nor gauge are made for it.
 *
 * @param limits the limits, in the order of the kinds; those that do not apply (no heater) are left out
 * @param liquidFullTemperature temperature from which liquid fills the bottle, K; NaN when it never does
 * @param start pressure of this charge at the start temperature
 * @param soak pressure of this charge at the hottest soak
 */
public record FillingCheck(
        List<FillingLimit> limits, double liquidFullTemperature, ChargePressure start, ChargePressure soak) {
    /** Largest charge per water capacity, 49 CFR 173.304a(a)(2), kg/L. */
    public static final double LARGEST_DENSITY = 0.68;

    /** Share of its rating from which a disc may open: tolerance of CGA S-1.1, from memory. */
    public static final double DISC_SHARE = 0.9;

    /** 21 degC, K. */
    private static final double REFERENCE_TEMPERATURE = 294.15;

    /** Covers the rounding of a charge and a water capacity that are given to three digits. */
    private static final double ROUNDING = 1.0005;

    /** The barometer of the place may make a gauge marking up to this much of an absolute one, Pa. */
    private static final double BAROMETER = 1.1e5;

    public FillingCheck {
        limits = List.copyOf(limits);
    }

    /**
     * Checks a filling.
     *
     * @param filling bottle, charge, markings, temperatures, band and heater
     * @return every limit that applies, with value, bound and margin
     */
    public static FillingCheck of(Filling filling) {
        Bottle bottle = filling.bottle();
        double charge = filling.mass();
        double full = ChargePressure.liquidFullTemperature(bottle, charge);
        double fullBound = Double.isNaN(full) ? Double.POSITIVE_INFINITY : full;
        ChargePressure start = ChargePressure.of(bottle, charge, filling.startTemperature());
        ChargePressure soak = ChargePressure.of(bottle, charge, filling.hottestSoak());
        ChargePressure reference = ChargePressure.of(bottle, charge, REFERENCE_TEMPERATURE);
        Cylinder cylinder = filling.cylinder();
        double disc = filling.discShare() * cylinder.discPressure();
        List<FillingLimit> limits = new ArrayList<>();
        limits.add(plain(
                Kind.FILLING_DENSITY, bottle.fillingDensity(charge), ROUNDING * filling.largestDensity(), charge));
        limits.add(plain(Kind.SERVICE_PRESSURE, cylinder.servicePressure(), Cylinder.LEAST_SERVICE_PRESSURE, charge));
        limits.add(pressure(Kind.PRESSURE_AT_21, reference, cylinder.servicePressure(), charge));
        limits.add(plain(Kind.DISC_RATING, cylinder.discPressure(), cylinder.testPressure() + BAROMETER, charge));
        limits.add(plain(Kind.START_TEMPERATURE, filling.startTemperature(), fullBound, charge));
        limits.add(pressure(Kind.START_PRESSURE_HIGH, start, filling.bandHigh(), charge));
        limits.add(pressure(
                Kind.START_PRESSURE_LOW, new ChargePressure(start.pressure(), false), filling.bandLow(), charge));
        limits.add(pressure(Kind.START_PRESSURE_DISC, start, disc, charge));
        limits.add(pressure(Kind.SOAK_PRESSURE_DISC, soak, disc, charge));
        if (!Double.isNaN(filling.heaterOff())) {
            limits.add(plain(Kind.HEATER_OFF, filling.heaterOff(), fullBound, charge));
        }
        return new FillingCheck(limits, full, start, soak);
    }

    private static FillingLimit plain(Kind kind, double value, double bound, double charge) {
        return new FillingLimit(kind, value, bound, false, charge);
    }

    private static FillingLimit pressure(Kind kind, ChargePressure value, double bound, double charge) {
        return new FillingLimit(kind, value.pressure(), bound, value.beyond(), charge);
    }

    /**
     * The limits that are broken or cannot be judged.
     *
     * @return in the order of the kinds; empty when all hold
     */
    public List<FillingLimit> broken() {
        return limits.stream().filter(limit -> !limit.holds()).toList();
    }

    /**
     * One limit.
     *
     * @param kind which
     * @return the limit; empty when it does not apply
     */
    public java.util.Optional<FillingLimit> find(Kind kind) {
        return limits.stream().filter(limit -> limit.kind() == kind).findFirst();
    }
}
