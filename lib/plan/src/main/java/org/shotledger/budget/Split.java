package org.shotledger.budget;

import java.util.List;
import org.shotledger.nitrous.ActivationWindow;

/**
 * How the power divides between boost and nitrous over engine speed.
 *
 * @param target the wheel power asked for, W
 * @param rpmLow lower end of the asked band, rev/min
 * @param rpmHigh upper end of the asked band, rev/min
 * @param window when the nitrous may be on
 * @param points one point an engine speed, ascending
 */
public record Split(double target, double rpmLow, double rpmHigh, ActivationWindow window, List<Point> points) {

    /** Copies the list. */
    public Split {
        points = List.copyOf(points);
    }

    /**
     * One engine speed.
     *
     * @param rpm engine speed, rev/min
     * @param gaugePressure plenum pressure above ambient, Pa
     * @param boostWheelPower wheel power with the nitrous off at this boost, W
     * @param nitrousWheelPower what switching the nitrous on adds, W; 0 outside the activation window
     * @param crankTorque torque at the crankshaft with nitrous, N m
     * @param lambda oxygen supplied over oxygen demanded, all streams
     * @param peakPressure peak cylinder pressure with nitrous, Pa absolute
     * @param leastMargin smallest relative margin of all limits at this speed
     * @param firstLimit the limit with that margin, in words
     */
    public record Point(
            double rpm,
            double gaugePressure,
            double boostWheelPower,
            double nitrousWheelPower,
            double crankTorque,
            double lambda,
            double peakPressure,
            double leastMargin,
            String firstLimit) {

        /**
         * Power of both together.
         *
         * @return wheel power with nitrous, W
         */
        public double wheelPower() {
            return boostWheelPower + nitrousWheelPower;
        }
    }
}
