package org.shotledger.risk;

import org.shotledger.bottle.Bottle;
import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.BottleState;

/** What stands at the siphon of a scenario's bottle when it is warmer or colder than planned. */
final class SoakedBottle {
    /** Highest temperature that is tried, K: that of the hottest filling a setup may have. */
    private static final double HOTTEST = 340;

    private static final double CLOSE = 1e-9;
    /** A pressure this close to the vapour pressure is the vapour pressure. */
    private static final double SAME = 1e-9;

    private final Bottle vessel;
    private final double charge;
    private final boolean asCharged;

    SoakedBottle(Scenario scenario) {
        this.vessel = scenario.car().bottle().vessel();
        this.charge = scenario.setup().bottle().charge();
        this.asCharged = scenario.at().bottle().moment() == BottleState.Moment.FIRST_OPENING;
    }

    FluidState atTemperature(double temperature) {
        return asCharged ? vessel.charged(charge, temperature).outlet() : NitrousOxide.saturatedLiquid(temperature);
    }

    FluidState atPressure(double pressure) {
        double boiling = pressure < NitrousOxide.CRITICAL_PRESSURE
                ? NitrousOxide.saturationTemperature(pressure)
                : NitrousOxide.CRITICAL_TEMPERATURE;
        if (!asCharged || Math.abs(vessel.pressureAt(charge, boiling) / pressure - 1) < SAME) {
            return NitrousOxide.saturatedLiquid(boiling);
        }
        if (vessel.pressureAt(charge, boiling) < pressure) { // so little in it that nothing but vapour is left
            return hotter(pressure, boiling, HOTTEST);
        }
        return hotter(pressure, NitrousOxide.TRIPLE_TEMPERATURE, boiling);
    }

    private FluidState hotter(double pressure, double low, double high) {
        double temperature = Bracket.root(t -> vessel.pressureAt(charge, t) - pressure, low, high, CLOSE);
        return atTemperature(temperature);
    }
}
