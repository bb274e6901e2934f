package org.shotledger.boost;

import org.junit.jupiter.api.Test;
import org.shotledger.units.AllowedRange;

/** The ranges that the documentation of the parts states, each tried on both sides. */
class BoostRangesTest {
    private static final FlowLoss LOSS = new FlowLoss("l", 1e3, 1, 1);

    @Test
    void turbine_and_its_gas() {
        AllowedRange.check("effective area of t", 1e-5, 1e-2, "m2", x -> new Turbine("t", x, 0.7, 0.97, LOSS));
        AllowedRange.check("efficiency of t", 0.3, 0.85, "", x -> new Turbine("t", 1e-3, x, 0.97, LOSS));
        AllowedRange.check("mechanical efficiency of t", 0.8, 1, "", x -> new Turbine("t", 1e-3, 0.7, x, LOSS));
        AllowedRange.check("exhaust temperature", 500, 2200, "K", x -> new ExhaustGas(0.3, x, 290, 1.3));
        AllowedRange.check("gas constant of the exhaust", 200, 500, "J/(kg K)", x -> new ExhaustGas(0.3, 1000, x, 1.3));
        AllowedRange.check("gamma of the exhaust", 1.2, 1.4, "", x -> new ExhaustGas(0.3, 1000, 290, x));
        AllowedRange.check("expansion ratio", 1, 100, "", x -> Turbine.outletTemperature(1000, x, 0.7, 1.3));
        AllowedRange.check("isentropic efficiency", 0.2, 1, "", x -> Turbine.outletTemperature(1000, 2, x, 1.3));
    }

    @Test
    void compressor_and_its_map() {
        AllowedRange.check("pressure ratio", 1, 100, "", x -> Compressor.outletTemperature(300, x, 0.7, 1.4));
        AllowedRange.check("isentropic efficiency", 0.2, 1, "", x -> Compressor.outletTemperature(300, 2, x, 1.4));
        AllowedRange.check("corrected flow of a map point", 1e-4, 10, "kg/s", x -> new SpeedLine.Point(x, 2, 0.7));
        AllowedRange.check("pressure ratio of a map point", 1, 6, "", x -> new SpeedLine.Point(0.2, x, 0.7));
        AllowedRange.check("efficiency of a map point", 0.2, 0.9, "", x -> new SpeedLine.Point(0.2, 2, x));
        AllowedRange.check("reference temperature of a map", 250, 330, "K", x -> new MapReference(x, 1e5));
        AllowedRange.check("reference pressure of a map", 80e3, 110e3, "Pa", x -> new MapReference(298, x));
    }

    @Test
    void cooler_and_tract() {
        AllowedRange.check("effectiveness of c", 0, 1, "", x -> new ChargeCooler("c", x, LOSS));
        AllowedRange.check("pressure loss of l", 0, 100e3, "Pa", x -> new FlowLoss("l", x, 1, 1));
        AllowedRange.check("reference density of l", 0.3, 6, "kg/m3", x -> new FlowLoss("l", 1e3, 1, x));
    }
}
