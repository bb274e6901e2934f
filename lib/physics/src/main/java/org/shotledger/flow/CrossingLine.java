package org.shotledger.flow;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.HelmholtzPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;
import org.shotledger.fluid.SaturationPoint;

/**
 * One side of the saturation line as functions of the entropy, for isentropes that reach it from a single phase.
 *
 * <p>With {@code e = h0 - h_sat(s)} the critical flux has three smooth pieces: up to {@code w_eq^2 / 2} the throat is two-phase
 * (tabulated); from there to {@code w^2 / 2} it sits at the line, {@code G = rho_sat sqrt(2 e)}, exactly; above that it is
 * sonic in the single phase (tabulated for vapour). w is the speed of sound of the phase, w_eq that of the mixture in
 * equilibrium with the first trace of the other phase.
 */
final class CrossingLine {
    private static final int CELLS = 18;
    private static final int ENERGY_CELLS = 3;
    private static final double ENTROPY_TOLERANCE = 1e-10;

    final double lowEntropy;
    final double highEntropy;

    private final boolean liquid;
    private final double lowTemperature;
    private final double highTemperature;
    private final Pieces enthalpy;
    private final Pieces density;
    private final Pieces mixtureEnergy;
    private final Pieces phaseEnergy;
    private final Patches mixtureThroat;

    CrossingLine(boolean liquid, double lowTemperature, double highTemperature) {
        this.liquid = liquid;
        this.lowTemperature = lowTemperature;
        this.highTemperature = highTemperature;
        double cold = entropyAt(lowTemperature);
        double warm = entropyAt(highTemperature);
        lowEntropy = Math.min(cold, warm);
        highEntropy = Math.max(cold, warm);
        enthalpy = pieces(this::exactEnthalpy);
        density = pieces(this::exactDensity);
        mixtureEnergy = pieces(t -> 0.5 * mixtureSoundSquared(t));
        phaseEnergy = pieces(t -> 0.5 * phaseSoundSquared(t));
        mixtureThroat = new Patches(
                (s, root) -> exactFlux(s, (1 - root * root) * mixtureEnergy.value(s)),
                lowEntropy,
                highEntropy,
                CELLS,
                0,
                1,
                ENERGY_CELLS);
    }

    private Pieces pieces(java.util.function.DoubleUnaryOperator ofTemperature) {
        return new Pieces(s -> ofTemperature.applyAsDouble(temperatureAt(s)), lowEntropy, highEntropy, CELLS);
    }

    private double entropyAt(double t) {
        return liquid ? SaturationCurve.liquidEntropy(t) : SaturationCurve.vapourEntropy(t);
    }

    private double temperatureAt(double entropy) {
        return Roots.find(t -> entropyAt(t) - entropy, lowTemperature - 1, highTemperature + 0.4, ENTROPY_TOLERANCE);
    }

    private double exactEnthalpy(double t) {
        return liquid ? SaturationCurve.liquidEnthalpy(t) : SaturationCurve.vapourEnthalpy(t);
    }

    private double exactDensity(double t) {
        return liquid ? SaturationCurve.liquidDensity(t) : SaturationCurve.vapourDensity(t);
    }

    private double mixtureSoundSquared(double t) {
        SaturationPoint point = new SaturationPoint().atTemperature(t);
        double volume = 1 / exactDensity(t);
        double slope = volume * point.pressureSlope();
        return slope * slope * t / point.heatCapacityAtVolume(volume);
    }

    private double phaseSoundSquared(double t) {
        return new HelmholtzPoint().temperature(t).density(exactDensity(t)).soundSpeedSquared();
    }

    /**
     * Exact critical flux of the single-phase state on an isentrope.
     *
     * @param entropy specific entropy, J/(kg K)
     * @param energy enthalpy above that of the crossing, J/kg
     * @return flux, kg/(m2 s)
     */
    double exactFlux(double entropy, double energy) {
        double t = temperatureAt(entropy);
        double target = exactEnthalpy(t) + energy;
        double p = SaturationCurve.pressure(t) * (1 + 1e-9) + Math.min(energy * exactDensity(t), 1e6);
        FluidState state = NitrousOxide.atPressureEntropy(p, entropy);
        // dh/dp at constant entropy is the specific volume
        for (int i = 0; i < 30; i++) {
            double miss = target - state.enthalpy();
            if (Math.abs(miss) <= 1e-9 * Math.abs(target) || state.isTwoPhase()) {
                break;
            }
            p *= Math.exp(miss * state.density() / p);
            state = NitrousOxide.atPressureEntropy(p, entropy);
        }
        return HomogeneousEquilibrium.criticalFlux(state).massFlux();
    }

    /** Largest energy above the crossing at which the throat is not yet sonic in the single phase, J/kg. */
    double sonicEnergy(double entropy) {
        return phaseEnergy.value(entropy);
    }

    double energy(double enthalpyThere, double entropy) {
        return Math.max(0, enthalpyThere - enthalpy.value(entropy));
    }

    /** Flux up to the sonic energy, kg/(m2 s). */
    double flux(double entropy, double energy) {
        double share = energy / mixtureEnergy.value(entropy);
        // towards the line the flux bends like a square root
        return share < 1
                ? mixtureThroat.value(entropy, Math.sqrt(1 - share))
                : density.value(entropy) * Math.sqrt(2 * energy);
    }
}
