package org.shotledger.car;

import java.util.List;
import java.util.Optional;
import org.shotledger.engine.MoistAir;
import org.shotledger.fuel.Fuel;

/**
 * A measured pull without nitrous, with its own weather, fuel and mixture.
 *
 * @param air the air on that day
 * @param fuel the fuel in the tank on that day
 * @param lambda mixture measured
 * @param points what was measured, by engine speed, ascending, at least one
 * @param uncertainty standard uncertainty of the wheel power as a share of it
 * @param correction what the chart's power was corrected by; empty where the chart states the observed power
 */
public record BasePull(
        MoistAir air,
        Fuel fuel,
        double lambda,
        List<Point> points,
        double uncertainty,
        Optional<PullCorrection> correction) {

    /**
     * One engine speed.
     *
     * @param rpm rev/min
     * @param gaugePressure plenum pressure above ambient, Pa
     * @param wheelPower wheel power as observed, without any correction to a standard's air, W
     */
    public record Point(double rpm, double gaugePressure, double wheelPower) {}

    public BasePull {
        points = List.copyOf(points);
    }

    /**
     * The point of most power, at which a pull is usually quoted.
     *
     * @return the point
     */
    public Point strongest() {
        return points.stream()
                .max(java.util.Comparator.comparingDouble(Point::wheelPower))
                .orElseThrow();
    }
}
