package org.shotledger.flow;

/**
 * Wall friction and mixture viscosity of lines.
 *
 * <p>Sources: S. W. Churchill, "Friction-factor equation spans all fluid-flow regimes", Chem. Eng. 84 (1977) no. 24, 91;
 * W. H. McAdams, W. K. Woods, L. C. Heroman, "Vaporization inside horizontal tubes II", Trans. ASME 64 (1942) 193.
 */
public final class Friction {
    private Friction() {}

    /**
     * Darcy friction factor for any regime (Churchill 1977).
     *
     * @param reynolds Reynolds number, above 0
     * @param relativeRoughness wall roughness over bore, 0 to 0.05
     * @return Darcy factor f in {@code dp = f L/D rho u^2 / 2}
     */
    public static double churchill(double reynolds, double relativeRoughness) {
        double a = 2.457 * Math.log(1 / (Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness));
        double a16 = pow16(a);
        double b16 = pow16(37530 / reynolds);
        double laminar = 8 / reynolds;
        return 8 * Math.pow(Math.pow(laminar, 12) + Math.pow(a16 + b16, -1.5), 1.0 / 12);
    }

    /**
     * Viscosity of a homogeneous mixture, {@code 1/mu = x/mu_v + (1-x)/mu_l} (McAdams 1942).
     *
     * @param quality vapour mass fraction, 0 to 1
     * @param liquid viscosity of the liquid, Pa s
     * @param vapour viscosity of the vapour, Pa s
     * @return mixture viscosity, Pa s
     */
    public static double mcAdams(double quality, double liquid, double vapour) {
        return 1 / (quality / vapour + (1 - quality) / liquid);
    }

    private static double pow16(double value) {
        double square = value * value;
        double fourth = square * square;
        double eighth = fourth * fourth;
        return eighth * eighth;
    }
}
