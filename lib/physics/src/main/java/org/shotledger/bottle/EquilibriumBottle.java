package org.shotledger.bottle;

/**
 * Liquid and vapour at one temperature: {@code dU/dt = -m h_out + Q}, {@code dM/dt = -m}, with a lumped shell.
 *
 * <p>Source: first law; the equilibrium model reviewed by Zimmerman et al., AIAA 2013-4045. Known error there: about 15 % in
 * pressure; 12, 7.5 and 8 % RMS on the three tanks of {@link TwoNodeBottle}. It has no boiling delay, so the dip of the first
 * second (8 to 25 %) is missing and late pressures are often too high. Any state of the equation is answered: liquid-full, mixed, vapour,
 * supercritical.
 */
public final class EquilibriumBottle implements BottleModel {
    /** The model as a swappable part. */
    public static final EquilibriumBottle MODEL = new EquilibriumBottle();

    private EquilibriumBottle() {}

    @Override
    public String title() {
        return "liquid and vapour in equilibrium";
    }

    @Override
    public String standing() {
        return "nothing fitted; RMS error of pressure on three measured tanks 12.0, 7.5 and 8.4 %";
    }

    @Override
    public double expectedError() {
        return 0.15;
    }

    @Override
    public History run(Emptying emptying) {
        return new BottleRun(emptying, null).go(this);
    }
}
