package org.shotledger.boost;

/**
 * A compressor at work.
 *
 * @param place its place on the map
 * @param flow physical flow of air, kg/s
 * @param rpm physical wheel speed
 * @param outletTemperature K
 * @param outletPressure Pa
 * @param power taken from the shaft, W
 * @param speedMargin {@code (limit - speed) / speed}
 */
public record CompressorPoint(
        MapPoint place,
        double flow,
        double rpm,
        double outletTemperature,
        double outletPressure,
        double power,
        double speedMargin) {}
