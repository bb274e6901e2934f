package org.shotledger.boost;

import org.shotledger.gas.DryAir;
import org.shotledger.units.Require;

/** Work of compression of air, {@code W = m cp T1 (PR^((g-1)/g) - 1) / eta}. */
public final class Compressor {
    private Compressor() {}

    /**
     * The operating point on a map.
     *
     * @param map the map
     * @param flow physical flow of air, kg/s
     * @param inletTemperature stagnation temperature before the wheel, K
     * @param inletPressure stagnation pressure before the wheel, Pa
     * @param outletPressure stagnation pressure after the wheel, Pa
     * @return the point
     * @throws OutsideMapException where the map has no answer
     */
    public static CompressorPoint at(
            CompressorMap map, double flow, double inletTemperature, double inletPressure, double outletPressure) {
        Require.within("compressor inlet temperature", inletTemperature, 220, 400, "K");
        Require.positive("compressor inlet pressure", inletPressure, "Pa");
        double corrected = map.reference().correctedFlow(flow, inletTemperature, inletPressure);
        MapPoint place = map.locate(corrected, outletPressure / inletPressure);
        double rpm = map.reference().speed(place.correctedRpm(), inletTemperature);
        double cp = DryAir.specificHeat(inletTemperature);
        double outlet = outletTemperature(
                inletTemperature, place.pressureRatio(), place.efficiency(), DryAir.gamma(inletTemperature));
        return new CompressorPoint(
                place,
                flow,
                rpm,
                outlet,
                outletPressure,
                flow * cp * (outlet - inletTemperature),
                (map.maximumRpm() - rpm) / rpm);
    }

    /**
     * Outlet temperature, {@code T2 = T1 (1 + (PR^((g-1)/g) - 1) / eta)}.
     *
     * @param inletTemperature K
     * @param pressureRatio 1 or more
     * @param efficiency isentropic, 0.2 to 1
     * @param gamma ratio of heat capacities
     * @return K
     */
    public static double outletTemperature(
            double inletTemperature, double pressureRatio, double efficiency, double gamma) {
        Require.within("pressure ratio", pressureRatio, 1, 100, "");
        Require.within("isentropic efficiency", efficiency, 0.2, 1, "");
        return inletTemperature * (1 + (Math.pow(pressureRatio, (gamma - 1) / gamma) - 1) / efficiency);
    }
}
