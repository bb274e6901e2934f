package org.shotledger.ledger;

import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;

/**
 * How well the power at the wheels is known: the one figure that plan, step-up and document share.
 *
 * <p>The base pull carries the power without nitrous; the flow of the jets and the share of the nitrous work that arrives carry what
 * nitrous adds. The three are taken as independent, {@code u = sqrt((u_0 P_off)^2 + P_N^2 (u_m^2 + u_k^2))} (JCGM 100, 5.1.2).
 */
public final class PowerUncertainty {
    private PowerUncertainty() {}

    /**
     * One standard uncertainty of the power at the wheels.
     *
     * @param car what is built
     * @param point an operating point of it
     * @param offPower power at the wheels at the same speed and boost with the nitrous closed, W
     * @return W
     */
    public static double of(Car car, OperatingPoint point, double offPower) {
        double base = car.basePull().uncertainty() * offPower;
        double added = point.wheelPower() - offPower;
        double work = nitrousShare(car) / car.model().nitrous().value();
        return Math.sqrt(base * base + added * added * (square(nitrousFlow(point)) + square(work)));
    }

    /**
     * One standard uncertainty of the nitrous flow, from the predictive band of feed path and jets.
     *
     * @param point an operating point
     * @return share of the flow; 0 with the nitrous off
     */
    public static double nitrousFlow(OperatingPoint point) {
        return point.nitrous().band().logarithmicDeviation();
    }

    /**
     * One standard uncertainty of the share of the nitrous work that arrives: its band, every value in it equally likely (JCGM 100,
     * 4.3.7).
     *
     * @param car what is built
     * @return of the share itself
     */
    public static double nitrousShare(Car car) {
        return (car.model().nitrous().high() - car.model().nitrous().low()) / Math.sqrt(12);
    }

    private static double square(double x) {
        return x * x;
    }
}
