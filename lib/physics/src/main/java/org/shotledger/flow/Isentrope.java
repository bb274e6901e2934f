package org.shotledger.flow;

import org.shotledger.curve.Bracket;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.HelmholtzPoint;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.SaturationCurve;
import org.shotledger.fluid.SaturationPoint;
import org.shotledger.fluid.StatePoint;

/**
 * The path of constant entropy from a stagnation state towards lower pressure: a single-phase part (possibly empty), the
 * saturation line, a two-phase part (possibly empty). A scratch pad of one thread.
 */
final class Isentrope {
    private static final double TRIPLE = NitrousOxide.TRIPLE_TEMPERATURE;
    private static final double CRITICAL = NitrousOxide.CRITICAL_TEMPERATURE;
    private static final double CRITICAL_ENTROPY = SaturationCurve.liquidEntropy(CRITICAL);
    private static final double LEAST_ENTROPY = SaturationCurve.liquidEntropy(TRIPLE);
    private static final double MOST_ENTROPY = SaturationCurve.vapourEntropy(TRIPLE);
    private static final double NEAR = 1e-3;
    private static final int NEWTON_STEPS = 40;
    private static final double USUAL_COOLING = 30;
    private static final double DENSITY_TOLERANCE = 1e-6;

    final double pressure;
    final double entropy;
    final boolean saturated;
    /** Temperature where the second phase first appears, K; NaN where it never does above the triple point. */
    final double saturationTemperature;
    /** Pressure there, Pa. */
    final double saturationPressure;

    private final double enthalpy;
    private final double volume;
    private final double startTemperature;
    private final boolean fromLiquid;
    private final StatePoint point = new StatePoint();
    private final SaturationPoint line = new SaturationPoint();

    private double here;
    private double temperature;
    private double quality;
    private double hereVolume;
    private double velocitySquared;
    private double excess;

    Isentrope(FluidState stagnation) {
        pressure = stagnation.pressure();
        entropy = stagnation.entropy();
        enthalpy = stagnation.enthalpy();
        volume = 1 / stagnation.density();
        startTemperature = stagnation.temperature();
        saturated = stagnation.isSaturated();
        fromLiquid = entropy < CRITICAL_ENTROPY;
        saturationTemperature = saturated ? startTemperature : crossing();
        saturationPressure = saturated ? pressure : flashes() ? SaturationCurve.pressure(saturationTemperature) : 0;
    }

    private double crossing() {
        if (entropy > MOST_ENTROPY || entropy < LEAST_ENTROPY) {
            return Double.NaN;
        }
        double low = fromLiquid ? Math.max(TRIPLE, Math.min(startTemperature, CRITICAL) - USUAL_COOLING) : TRIPLE;
        if (entropyMiss(low) > 0 == fromLiquid) {
            low = TRIPLE;
        }
        // tight: close to the line the head is a small difference of enthalpies
        return Bracket.root(this::entropyMiss, low, CRITICAL, 1e-11);
    }

    private double entropyMiss(double t) {
        return (fromLiquid ? SaturationCurve.liquidEntropy(t) : SaturationCurve.vapourEntropy(t)) - entropy;
    }

    /** Tells whether the path enters the two-phase region. */
    boolean flashes() {
        return !Double.isNaN(saturationTemperature);
    }

    /** Moves to the single phase just before the second one appears. */
    void toSaturation() {
        one(point.mixture(saturationTemperature, fromLiquid ? 0 : 1));
    }

    /** Moves to a temperature of the two-phase part, whose upper end is the first trace of the second phase. */
    void toMixture(double temperature) {
        mixture(line.atTemperature(temperature));
    }

    /** Moves to a pressure on the path. */
    void toPressure(double p) {
        if (p <= saturationPressure) {
            mixture(line.atPressure(p));
        } else {
            one(point.pressureEntropy(p, entropy));
        }
    }

    private void one(StatePoint state) {
        here = state.pressure();
        temperature = state.temperature();
        quality = state.quality();
        hereVolume = 1 / state.density();
        double sound = state.soundSpeed();
        finish(state.enthalpy(), sound * sound);
    }

    private void mixture(SaturationPoint at) {
        double liquid = at.liquidEntropy();
        double x = (entropy - liquid) / (at.vapourEntropy() - liquid);
        here = at.pressure();
        temperature = at.temperature();
        quality = Math.min(Math.max(x, 0), 1);
        double liquidVolume = 1 / at.liquidDensity();
        hereVolume = liquidVolume + quality * (1 / at.vapourDensity() - liquidVolume);
        double slope = hereVolume * at.pressureSlope();
        double sound = slope * slope * temperature / at.heatCapacityAtVolume(hereVolume);
        finish(at.liquidEnthalpy() + temperature * (entropy - liquid), sound);
    }

    private void finish(double hereEnthalpy, double soundSquared) {
        double drop = pressure - here;
        // close to the start h0 - h would cancel: integrate v dp by the trapezium instead
        double head = drop < NEAR * pressure ? 0.5 * drop * (volume + hereVolume) : enthalpy - hereEnthalpy;
        velocitySquared = Math.max(0, 2 * head);
        excess = velocitySquared - soundSquared;
    }

    double mixtureExcess(double temperatureThere) {
        toMixture(temperatureThere);
        return excess;
    }

    /** Velocity squared less sound speed squared here: negative while a lower pressure still raises the flux. */
    double excess() {
        return excess;
    }

    double flux() {
        return Math.sqrt(velocitySquared) / hereVolume;
    }

    double fluxAt(double p) {
        toPressure(p);
        return flux();
    }

    Throat throat(Choking choking) {
        double velocity = Math.sqrt(velocitySquared);
        return new Throat(velocity / hereVolume, here, temperature, quality, 1 / hereVolume, velocity, choking);
    }

    double density() {
        return 1 / hereVolume;
    }

    /**
     * Finds the sonic state of the single-phase part, in density: the temperature on the isentrope follows by Newton's method
     * with {@code ds/dT = cv/T}.
     *
     * @param lowDensity density at the end of the part, kg/m3, where the stream is already sonic
     * @return pressure there, Pa
     */
    double sonicPressure(double lowDensity) {
        HelmholtzPoint gas = new HelmholtzPoint().temperature(startTemperature);
        gas.density(1 / volume);
        double sonic =
                Bracket.root(rho -> sonicExcess(gas, rho), 1 / volume, lowDensity, DENSITY_TOLERANCE * lowDensity);
        sonicExcess(gas, sonic); // leaves the gas in that state
        return gas.pressure();
    }

    private double sonicExcess(HelmholtzPoint gas, double rho) {
        // the isentrope is nearly T ~ rho^(dp/dT / (rho cv))
        double power = gas.pressureByTemperature() / (gas.density() * gas.cv());
        double guess = gas.temperature() * Math.pow(rho / gas.density(), power);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            gas.temperature(guess).density(rho);
            double step = (entropy - gas.entropy()) * guess / gas.cv();
            guess = Math.max(guess + step, 0.5 * guess);
            if (Math.abs(step) < 1e-6 * guess) {
                break;
            }
        }
        gas.temperature(guess).density(rho);
        return 2 * (enthalpy - gas.enthalpy()) - gas.soundSpeedSquared();
    }

    /** Lowest pressure at which the equation of state still answers on this path, Pa. */
    double lowestPressure() {
        return flashes() ? NitrousOxide.TRIPLE_PRESSURE : lowestGasPressure();
    }

    private double lowestGasPressure() {
        double low = 1;
        if (NitrousOxide.atTemperaturePressure(TRIPLE, low).entropy() <= entropy) {
            return low;
        }
        double high = Math.min(pressure, 0.999 * NitrousOxide.TRIPLE_PRESSURE);
        return Bracket.root(
                p -> NitrousOxide.atTemperaturePressure(TRIPLE, p).entropy() - entropy + 1e-6, low, high, 1e-3);
    }
}
