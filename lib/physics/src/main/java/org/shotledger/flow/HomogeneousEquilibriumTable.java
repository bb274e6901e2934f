package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;

/**
 * Critical flux of homogeneous equilibrium from a table, for inner loops: the same function as
 * {@link HomogeneousEquilibrium#criticalFlux} with a relative error below 1e-5.
 *
 * <p>Products of Chebyshev interpolants on cells, split where the flux has kinks: at the saturation line, where the throat
 * reaches the saturation line (first bubble or first drop), and where a vapour throat turns sonic. Mixtures are tabulated over
 * {@code sqrt(1 - T/Tc)} and quality; single-phase states over the entropy and the enthalpy above that of the saturation line
 * at the same entropy, which alone fix the flux. Range: mixtures from 205 K to the critical point; liquid and dense fluid
 * whose isentrope boils at 205 to 308.5 K, and vapour whose isentrope has its dew point at 205 to 306 K and whose enthalpy is
 * up to 25 kJ/kg (warm dew point) to 90 kJ/kg (cold) above the sonic limit; anything else is refused. The table is made from the exact model at first use and never changes;
 * reading it allocates nothing and is thread-safe.
 */
public final class HomogeneousEquilibriumTable {
    private static final double LOWEST_TEMPERATURE = 205;
    private static final double HIGHEST_BOILING = 308.5;
    private static final double HIGHEST_DEW = 306;
    /** Largest enthalpy above the sonic limit, J/kg, at the two ends of the vapour's entropy. */
    private static final double LEAST_EXCESS = 25e3;

    private static final double MOST_EXCESS = 90e3;
    /** Bends the quality so that the steep start of wet mixtures fills equal cells. */
    private static final double QUALITY_BEND = 0.05;

    /** Bends sqrt(1 - T/Tc) so that cells are narrow close to the critical point. */
    private static final double THETA_BEND = 0.6;

    private static final double MOST_BENT = 1 / (1 + QUALITY_BEND);
    private static final double MOST_PLACE = place(LOWEST_TEMPERATURE);

    private HomogeneousEquilibriumTable() {}

    /** Made at first use. */
    private static final class Holder {
        static final CrossingLine LIQUID = new CrossingLine(true, LOWEST_TEMPERATURE, HIGHEST_BOILING);
        static final CrossingLine VAPOUR = new CrossingLine(false, LOWEST_TEMPERATURE, HIGHEST_DEW);
        static final Patches MIXTURE =
                new Patches(HomogeneousEquilibriumTable::exactMixture, 0, MOST_PLACE, 12, 0, MOST_BENT, 17);
        static final Patches SONIC_VAPOUR = new Patches(
                (s, share) -> VAPOUR.exactFlux(s, VAPOUR.sonicEnergy(s) + share * largestExcess(s)),
                VAPOUR.lowEntropy,
                VAPOUR.highEntropy,
                6,
                0,
                1,
                4);

        static double largestExcess(double entropy) {
            double share = (entropy - VAPOUR.lowEntropy) / (VAPOUR.highEntropy - VAPOUR.lowEntropy);
            return LEAST_EXCESS + share * (MOST_EXCESS - LEAST_EXCESS);
        }
    }

    private static double exactMixture(double place, double bent) {
        double theta = THETA_BEND * place / (1 - place);
        double t = NitrousOxide.CRITICAL_TEMPERATURE * (1 - theta * theta);
        double quality = Math.min(1, QUALITY_BEND * bent / (1 - bent));
        return HomogeneousEquilibrium.criticalFlux(NitrousOxide.mixture(t, quality))
                .massFlux();
    }

    private static double place(double temperature) {
        double theta = Math.sqrt(1 - temperature / NitrousOxide.CRITICAL_TEMPERATURE);
        return theta / (theta + THETA_BEND);
    }

    /**
     * Critical flux of any state in range.
     *
     * @param stagnation state upstream at rest
     * @return flux, kg/(m2 s)
     * @throws IllegalArgumentException outside the range of the table
     */
    public static double criticalFlux(FluidState stagnation) {
        return stagnation.isSaturated()
                ? mixtureFlux(stagnation.temperature(), stagnation.quality())
                : singlePhaseFlux(stagnation.enthalpy(), stagnation.entropy());
    }

    /**
     * Critical flux from a mixture, saturated liquid and saturated vapour included.
     *
     * @param temperature temperature at rest, K, 205 to critical
     * @param quality vapour mass fraction at rest, 0 to 1
     * @return flux, kg/(m2 s)
     * @throws IllegalArgumentException outside the range of the table
     */
    public static double mixtureFlux(double temperature, double quality) {
        if (!(temperature >= LOWEST_TEMPERATURE && temperature <= NitrousOxide.CRITICAL_TEMPERATURE)
                || !(quality >= 0 && quality <= 1)) {
            throw outside(
                    "A mixture of temperature " + temperature + " K and quality " + quality,
                    "205 to 309.52 K and a quality of 0 to 1");
        }
        return Holder.MIXTURE.value(place(temperature), quality / (quality + QUALITY_BEND));
    }

    /**
     * Critical flux from a liquid, dense fluid or vapour.
     *
     * @param enthalpy specific enthalpy at rest, J/kg
     * @param entropy specific entropy at rest, J/(kg K)
     * @return flux, kg/(m2 s)
     * @throws IllegalArgumentException outside the range of the table
     */
    public static double singlePhaseFlux(double enthalpy, double entropy) {
        CrossingLine liquid = Holder.LIQUID;
        if (entropy >= liquid.lowEntropy && entropy <= liquid.highEntropy) {
            double energy = liquid.energy(enthalpy, entropy);
            if (energy <= liquid.sonicEnergy(entropy)) {
                return liquid.flux(entropy, energy);
            }
        }
        CrossingLine vapour = Holder.VAPOUR;
        if (entropy >= vapour.lowEntropy && entropy <= vapour.highEntropy) {
            double energy = vapour.energy(enthalpy, entropy);
            double share = (energy - vapour.sonicEnergy(entropy)) / Holder.largestExcess(entropy);
            if (share <= 1) {
                return share <= 0 ? vapour.flux(entropy, energy) : Holder.SONIC_VAPOUR.value(entropy, share);
            }
        }
        throw outside(
                "A single-phase state of enthalpy " + enthalpy + " J/kg and entropy " + entropy + " J/(kg K)",
                "isentropes that boil at 205 to 308.5 K below the sonic limit, or meet their dew point at 205 to 306 K"
                        + " with up to 25 to 90 kJ/kg above the sonic limit");
    }

    private static IllegalArgumentException outside(String what, String allowed) {
        return new IllegalArgumentException(what + " is outside the table of critical fluxes; allowed are " + allowed
                + "; use HomogeneousEquilibrium instead.");
    }
}
