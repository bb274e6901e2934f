package org.shotledger.budget;

import org.shotledger.build.Build;
import org.shotledger.engine.MoistAir;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * What surrounds the engine at one moment.
 *
 * @param air pressure, temperature and humidity of the ambient air
 * @param bottleLiquid state of the liquid at the bottle's siphon
 * @param voltage supply voltage, V
 */
public record Conditions(MoistAir air, FluidState bottleLiquid, double voltage) {

    /**
     * The conditions of a build at the start of a pass.
     *
     * @param build the build
     * @param named name of the place and weather in its sheet
     * @return the conditions
     */
    public static Conditions of(Build build, String named) {
        return new Conditions(
                build.air(named),
                NitrousOxide.saturatedLiquid(build.bottle().startTemperature()),
                build.injection().voltage());
    }

    /**
     * The same with another bottle temperature.
     *
     * @param temperature temperature of the saturated liquid, K, 182.33 to below 309.52
     * @return the changed conditions
     */
    public Conditions withBottleTemperature(double temperature) {
        return new Conditions(air, NitrousOxide.saturatedLiquid(temperature), voltage);
    }
}
