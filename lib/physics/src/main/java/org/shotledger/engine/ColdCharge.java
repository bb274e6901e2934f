package org.shotledger.engine;

import org.shotledger.fuel.FuelVapour;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;

/**
 * What a cold charge does that a practitioner can see, in place of a smallest temperature without a reason.
 *
 * <p>Fuel that stays liquid wets the runners: cylinders differ, the mixture is lean until walls are wet and rich when the
 * shot ends. It is worked out by vapour pressure; as engines burn well with most of the fuel liquid at the valves on a cold
 * start, it is a note, not a limit, unless the builder sets one. Water that the air brings turns to ice below freezing where
 * the nozzle sits before the throttle: the plate can stick. With nozzles behind the throttle it leaves as frost within the
 * second and is a note.
 *
 * @param temperature of the charge, K
 * @param liquidFuel share of all fuel that must stay liquid at that temperature, 0 to 1
 * @param condensed water and ice that the charge cannot keep as vapour, kg/s
 * @param freezes whether that water is ice
 * @param icing water vapour brought over what the charge can keep above ice, below freezing; 0 above it. Beyond 1 ice forms
 */
public record ColdCharge(double temperature, double liquidFuel, double condensed, boolean freezes, double icing) {
    /** Triple point of water, K. */
    private static final double FREEZING = 273.16;

    private static final double HOTTEST = 400;

    /**
     * Looks at a charge.
     *
     * @param charge what the engine breathes
     * @return what its temperature does to fuel and water; nothing of either above 400 K
     */
    public static ColdCharge of(Charge charge) {
        Mixture mix = charge.mixture();
        double t = charge.temperature();
        if (t >= HOTTEST) {
            return new ColdCharge(t, 0, 0, false, 0);
        }
        double within = Math.max(FuelVapour.COLDEST, t);
        FuelVapour.Shares vapour = FuelVapour.of(mix.mainFuel(), mix.nitrousFuel())
                .possible(mix.mainFlow(), mix.nitrousFuelFlow(), charge.gasFlow(), within, charge.pressure());
        double fuel = mix.mainFlow() + mix.nitrousFuelFlow();
        double liquid = fuel == 0
                ? 0
                : (mix.mainFlow() * (1 - vapour.main()) + mix.nitrousFuelFlow() * (1 - vapour.extra())) / fuel;
        double most = saturation(within) / charge.pressure() * charge.gasFlow() * Oxidisers.WATER_MOLAR_MASS;
        double condensed = Math.max(0, mix.waterVapour() - most);
        double icing = t < FREEZING ? mix.waterVapour() / most : 0;
        return new ColdCharge(t, liquid, condensed, icing > 1, icing);
    }

    /**
     * Saturation pressure of water over liquid, below freezing over ice (Murphy and Koop, Q. J. R. Meteorol. Soc. 131 (2005)
     * 1539, eq. 7, from memory, valid above 110 K).
     *
     * @param temperature K, 180 to 400
     * @return Pa
     */
    static double saturation(double temperature) {
        return temperature >= FREEZING
                ? Steam.saturationPressure(temperature)
                : Math.exp(
                        9.550426 - 5723.265 / temperature + 3.53068 * Math.log(temperature) - 0.00728332 * temperature);
    }
}
