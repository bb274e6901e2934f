package org.shotledger.risk;

import org.shotledger.car.SheetPaths;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * How far the three inputs are expected to stray from the plan: the units in which a tolerance is counted.
 *
 * @param bottlePressure half-width of the band of bottle pressure, Pa, positive
 * @param fuelPressure half-width of the band of nitrous fuel pressure, Pa, positive
 * @param boost half-width of the band of plenum pressure, Pa, positive
 * @param basis where the three come from
 */
public record DriftBand(double bottlePressure, double fuelPressure, double boost, String basis) {

    /** Half a reading of a bottle gauge and a warm afternoon: common practice, no source. */
    private static final double USUAL_BOTTLE = 50 * UnitFactors.PSI;

    /** What a regulator creeps from cold to hot: common practice, no source. */
    private static final double USUAL_FUEL = 2 * UnitFactors.PSI;

    /** What a boost control overshoots: common practice, no source. */
    private static final double USUAL_BOOST = UnitFactors.PSI;

    public DriftBand {
        Require.positive("band of bottle pressure", bottlePressure, "Pa");
        Require.positive("band of fuel pressure", fuelPressure, "Pa");
        Require.positive("band of boost", boost, "Pa");
    }

    /**
     * The band of a scenario: twice the standard uncertainty its sheet states for the bottle's start temperature and for the
     * regulator's base pressure, or 50 psi and 2 psi where it states none; 1 psi of boost.
     *
     * @param sound the scenario as planned
     * @return the band, which says what it rests on
     */
    public static DriftBand of(Scenario sound) {
        double kelvin = stated(sound, "bottle.start-temperature");
        double fuel = stated(sound, SheetPaths.fuelPressureAtJets(sound.car()));
        double bottle = Double.isNaN(kelvin)
                ? USUAL_BOTTLE
                : 2 * kelvin * slope(sound.bottle().temperature());
        return new DriftBand(
                bottle,
                Double.isNaN(fuel) ? USUAL_FUEL : 2 * fuel,
                USUAL_BOOST,
                words("bottle pressure", kelvin) + "; " + words("fuel pressure", fuel)
                        + "; boost: common practice, no source");
    }

    private static double stated(Scenario sound, String path) {
        return sound.car().origin(path).map(o -> o.uncertainty()).orElse(Double.NaN);
    }

    private static String words(String name, double stated) {
        return name
                + (Double.isNaN(stated)
                        ? ": common practice, no source"
                        : ": twice the standard uncertainty of the sheet");
    }

    /** Rise of the vapour pressure with temperature, Pa/K; nearest below the critical point where it is warmer. */
    private static double slope(double temperature) {
        double t = Math.min(temperature, NitrousOxide.CRITICAL_TEMPERATURE - 1);
        return NitrousOxide.saturationPressure(t + 0.5) - NitrousOxide.saturationPressure(t - 0.5);
    }
}
