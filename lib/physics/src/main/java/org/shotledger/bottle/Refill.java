package org.shotledger.bottle;

import java.util.function.DoublePredicate;
import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.VesselPoint;

/**
 * Filling a bottle from a mother bottle that stands so that liquid leaves it, without a pump.
 *
 * <p>Liquid flows while the mother's pressure is the higher: {@code dU = h dm} in both, contents in equilibrium, quick enough that
 * neither shell matters, nothing vented. A bottle as warm as the mother takes hardly anything: chill it, or stand the mother warmer.
 * Known error: not measured; shells that give heat on make the receiving bottle take less, venting makes it take more.
 *
 * @param transferred nitrous oxide that went over, kg
 * @param own the bottle afterwards
 * @param mother the mother bottle afterwards: what is left in it
 * @param reached whether the charge asked for was reached; else the pressures met or the mother's liquid ran out
 */
public record Refill(double transferred, Charge own, Charge mother, boolean reached) {
    private static final int STEPS = 400;
    private static final double COLDEST = 200;
    private static final double CLOSE = 0.05;

    /**
     * Fills up to a charge.
     *
     * @param mother mother bottle with its contents
     * @param own bottle to be filled, with what is left in it
     * @param target charge wanted in it, kg, not above {@link FillingCheck#LARGEST_DENSITY} of its water capacity
     * @return what went over
     */
    public static Refill of(Charge mother, Charge own, double target) {
        double largest = 1000 * FillingCheck.LARGEST_DENSITY * own.bottle().waterCapacity();
        if (!(target > 0 && target <= largest)) {
            throw new IllegalArgumentException("Refill: the charge wanted is " + target + " kg; allowed are above 0 to "
                    + largest + " kg, 68 % of the water capacity; this limit is not to be moved.");
        }
        double wanted = Math.max(0, target - own.mass());
        double step = wanted / STEPS;
        VesselPoint from = new VesselPoint();
        VesselPoint to = new VesselPoint();
        double gone = 0;
        double energyFrom = mother.mass() * mother.state().internalEnergy();
        double energyTo = own.mass() * own.state().internalEnergy();
        Charge source = mother;
        Charge sink = own;
        for (int i = 0; i < STEPS && source.liquidMass() > step && source.pressure() > sink.pressure(); i++) {
            double enthalpy = source.outlet().enthalpy();
            gone += step;
            energyFrom -= step * enthalpy;
            energyTo += step * enthalpy;
            source = at(mother, mother.mass() - gone, energyFrom, from);
            sink = at(own, own.mass() + gone, energyTo, to);
        }
        return new Refill(gone, sink, source, gone >= wanted * (1 - 1e-9));
    }

    private static Charge at(Charge before, double mass, double energy, VesselPoint point) {
        FluidState state =
                point.at(mass / before.bottle().waterCapacity(), energy / mass).state();
        return new Charge(before.bottle(), mass, state, before.wallTemperature());
    }

    /**
     * How cold the bottle must be before it is filled.
     *
     * @param mother mother bottle with its contents
     * @param own bottle to be filled, with what is left in it
     * @param target charge wanted, kg
     * @return warmest temperature of the bottle from which the charge is reached, K, within 0.05; NaN when chilling to 200 K is not enough
     */
    public static double chillTo(Charge mother, Charge own, double target) {
        double now = own.temperature();
        if (of(mother, own, target).reached()) {
            return now;
        }
        DoublePredicate reached = temperature -> of(mother, own.bottle().charged(own.mass(), temperature), target)
                .reached();
        return reached.test(COLDEST)
                ? Bracket.edge(reached, COLDEST, now, CLOSE).inside()
                : Double.NaN;
    }
}
