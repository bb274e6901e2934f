package org.shotledger.logs;

import java.util.Arrays;
import java.util.Locale;

/**
 * Which gear is engaged, from engine speed over vehicle speed. The rolling radius is rarely known to the per cent, so that one factor for
 * all gears, within 8 %, is taken that brings most samples nearest to a gear, within 3 % of it; both figures are our choice.
 *
 * @param gears gear of each sample, 1 for the first; 0 while none is engaged, in a shift, with a slipping clutch or spinning tyres
 * @param factor what the ratios are multiplied by to fit, 0.92 to 1.08
 * @param sentence what was found
 */
@SuppressWarnings("ArrayRecordComponent") // a column beside others, never compared
public record GearFinder(int[] gears, double factor, String sentence) {
    private static final double MOST_OFF = 0.08;
    /** Step in which the factor is tried: our choice, a sixth of what counts as near. */
    private static final double OFF_STEP = 0.005;

    private static final double NEAR = 0.03;

    /**
     * Finds the gears.
     *
     * @param rpm engine speeds, rev/min; NaN where there is none
     * @param speed vehicle speeds at the same moments, m/s; NaN likewise
     * @param car gear ratios, final drive and rolling radius
     * @return the gears, all 0 when the car names none
     */
    public static GearFinder of(double[] rpm, double[] speed, RunningCar car) {
        double[] ratio = new double[rpm.length];
        for (int i = 0; i < ratio.length; i++) {
            ratio[i] = speed[i] > 1 ? overall(rpm[i], speed[i], car) / car.finalDrive() : Double.NaN;
        }
        double best = 1;
        double most = -1;
        for (int k = 0; k <= Math.round(MOST_OFF / OFF_STEP); k++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double factor = 1 + sign * k * OFF_STEP;
                double near = engaged(ratio, factor, car, new int[ratio.length]);
                if (near > most) {
                    most = near;
                    best = factor;
                }
            }
        }
        int[] gears = new int[ratio.length];
        engaged(ratio, best, car, gears);
        long n = Arrays.stream(gears).filter(g -> g > 0).count();
        return new GearFinder(
                gears,
                best,
                String.format(
                        Locale.ROOT,
                        "%d of %d samples lie within %.0f %% of a gear with the stated ratios and rolling radius times %.3f.",
                        n,
                        gears.length,
                        100 * NEAR,
                        best));
    }

    /** Turns of the engine for one of the wheels. */
    static double overall(double rpm, double speed, RunningCar car) {
        return rpm * Math.PI / 30 * car.tyreRadius() / speed;
    }

    /** Sets the gear of each sample; the answer grows with each sample in a gear, the more the nearer it lies. */
    private static double engaged(double[] ratio, double factor, RunningCar car, int[] gears) {
        double fit = 0;
        for (int i = 0; i < ratio.length; i++) {
            double nearest = NEAR;
            for (int g = 0; g < car.gears().size(); g++) {
                double off = Math.abs(Math.log(ratio[i] / (car.gears().get(g) * factor)));
                if (off <= nearest) {
                    nearest = off;
                    gears[i] = g + 1;
                }
            }
            fit += 1 - Math.pow(nearest / NEAR, 2);
        }
        return fit;
    }
}
