package org.shotledger.ledger;

import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.flow.JetFlow;

/**
 * How well the power at the wheels is known: the one figure that plan, step-up and document share.
 *
 * <p>The base pull carries the power without nitrous; the flow of the jets and the share of the nitrous heat that works carry what
 * nitrous adds. The three are taken as independent, {@code u = sqrt((u_0 P_off)^2 + P_N^2 (u_m^2 + u_k^2))} (JCGM 100, 5.1.2).
 */
public final class PowerUncertainty {
    /**
     * Standard uncertainty of the share of the nitrous heat that works: our reading of the trade's 0.8 to 1.0 lb of nitrous oxide in
     * 10 s for each 100 hp; common practice, no source.
     */
    public static final double NITROUS_SHARE = 0.1;

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
        double work = NITROUS_SHARE / car.model().nitrousShare();
        return Math.sqrt(base * base + added * added * (square(nitrousFlow(point)) + square(work)));
    }

    /**
     * One standard uncertainty of the nitrous flow, as the flow model of the jets expects of itself.
     *
     * @param point an operating point
     * @return share of the flow; 0 with the nitrous off
     */
    public static double nitrousFlow(OperatingPoint point) {
        return point.nitrous().jets().stream()
                .mapToDouble(JetFlow::expectedError)
                .max()
                .orElse(0);
    }

    private static double square(double x) {
        return x * x;
    }
}
