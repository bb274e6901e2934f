package org.shotledger.bottle;

/**
 * What is stamped on a cylinder and on its disc: two figures that have nothing to do with one another. The service pressure is the
 * cylinder's, the burst rating the disc's.
 *
 * @param servicePressure service pressure of the marking, Pa absolute (1800 psi: 125.1e5); NaN when it has not been read
 * @param discPressure rated burst pressure of the relief disc, Pa absolute; NaN when it has not been read
 */
public record Cylinder(double servicePressure, double discPressure) {
    /**
     * Lowest service pressure of the cylinder types that the table of 49 CFR 173.304a(a)(2) lists for 68 %: 1800 psi, Pa. Taken
     * without the atmosphere, so that any barometer's conversion of the marking meets it.
     */
    public static final double LEAST_SERVICE_PRESSURE = 124.1e5;

    /** Minimum test pressure over service pressure of seamless cylinders, 49 CFR 180.209 table 1 (3A, 3AA, 3AL). */
    public static final double TEST_PRESSURE_RATIO = 5.0 / 3;

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException when a figure given lies outside 10 to 1000 bar
     */
    public Cylinder {
        check("service pressure", servicePressure);
        check("burst rating of the disc", discPressure);
    }

    private static void check(String name, double value) {
        if (!Double.isNaN(value) && !(value >= 10e5 && value <= 1000e5)) {
            throw new IllegalArgumentException(
                    "Cylinder: the " + name + " is " + value + " Pa absolute; allowed are 1e6 to 1e8 Pa.");
        }
    }

    /**
     * A cylinder whose marking and disc have not been read.
     *
     * @return both figures unknown
     */
    public static Cylinder unread() {
        return new Cylinder(Double.NaN, Double.NaN);
    }

    /**
     * Pressure at which the cylinder is tested.
     *
     * @return 5/3 of the service pressure, Pa; NaN when that is unknown
     */
    public double testPressure() {
        return TEST_PRESSURE_RATIO * servicePressure;
    }
}
