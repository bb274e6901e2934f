package org.shotledger.engine;

import java.util.EnumMap;
import java.util.Map;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.gas.Element;
import org.shotledger.gas.Gas;
import org.shotledger.gas.GasMixture;
import org.shotledger.gas.GasPolynomial;
import org.shotledger.gas.ReactingGas;
import org.shotledger.units.Require;

/**
 * The ideal constant-volume fuel-air cycle (Heywood, Internal Combustion Engine Fundamentals, chapter 5): isentropic
 * compression of the unburned charge, all gas; combustion to equilibrium at constant volume; isentropic expansion with
 * shifting equilibrium down to 1700 K and frozen composition below; no heat to the walls. Nitrous oxide enters with its heat
 * of formation, so its decomposition is in the work.
 *
 * <p>Known error: work, peak state and exhaust temperature within 0.1 %, end of compression within 0.5 % of the same cycle made with a general-purpose chemistry
 * library, petrol (iso-octane), ethanol, methanol and a blend, lambda 0.65 to 1.10, up to 0.35 kg of nitrous oxide for each
 * kg of air (tested). What an engine reaches of it is {@link EngineFactor}'s business.
 *
 * @param work net work of the cycle, J for each unit of the mixture's flows (W where they are kg/s)
 * @param oxygen that air and nitrous oxide brought, kg for each unit of the mixture's flows
 * @param dryAir kg for each unit of the mixture's flows
 * @param compressionTemperature at the end of compression, K
 * @param peakTemperature after combustion, K
 * @param peakPressure after combustion, Pa
 * @param endTemperature at the end of the expansion, K
 * @param endPressure at the end of the expansion, Pa
 */
public record FuelAirCycle(
        double work,
        double oxygen,
        double dryAir,
        double compressionTemperature,
        double peakTemperature,
        double peakPressure,
        double endTemperature,
        double endPressure) {
    /** Where the composition freezes in the expansion, K: reactions among stable molecules stop near it (Heywood, 4.9). */
    static final double FREEZING = 1700;

    private static final double FIRST_GUESS = 2800;

    /**
     * The cycle of a fresh charge alone.
     *
     * @param mixture what is burned; only proportions matter for the temperatures
     * @param temperature of the charge when compression begins, everything evaporated, K, 180 to 600
     * @param pressure when compression begins, Pa, 10 kPa to 2 MPa
     * @param compressionRatio 4 to 25
     * @return the cycle
     * @throws IllegalArgumentException so rich that soot would form
     */
    public static FuelAirCycle of(Mixture mixture, double temperature, double pressure, double compressionRatio) {
        return of(mixture, temperature, pressure, compressionRatio, 0);
    }

    /**
     * The cycle of a charge mixed with residual gas of its own kind.
     *
     * @param mixture what is burned afresh
     * @param temperature of charge and residual gas together when compression begins, K, 180 to 700
     * @param pressure when compression begins, Pa, 10 kPa to 2 MPa
     * @param compressionRatio 4 to 25
     * @param residual share of residual gas in all mass, 0 to 0.3
     * @return the cycle; work is that of fresh and residual gas together
     * @throws IllegalArgumentException so rich that soot would form
     */
    public static FuelAirCycle of(
            Mixture mixture, double temperature, double pressure, double compressionRatio, double residual) {
        Require.within("temperature when compression begins", temperature, 180, 700, "K");
        Require.within("pressure when compression begins", pressure, 1e4, 2e6, "Pa");
        Require.within("compression ratio", compressionRatio, 4, 25, "");
        Require.within("share of residual gas", residual, 0, 0.3, "");
        double share = residual / (1 - residual);
        ReactingGas products = new ReactingGas(times(ChargeGas.atoms(mixture), 1 + share));
        GasPolynomial.Builder charge = ChargeGas.add(new GasPolynomial.Builder(), mixture);
        double formation = ChargeGas.formation(mixture);
        if (share > 0) {
            products.at(FREEZING, 1);
            GasMixture burned = products.composition();
            ChargeGas.add(charge, burned, residual);
            formation += residual * energyAtZero(burned);
        }
        double mass = mixture.totalFlow() * (1 + share);
        GasPolynomial gas = charge.build();
        double volume = mass * gas.gasConstant() * temperature / pressure;
        double start = formation + mass * gas.energy(temperature);
        double t2 = gas.isentropic(temperature, 1 / compressionRatio);
        double burning = formation + mass * gas.energy(t2);
        ReactingGas.State peak = products.ofEnergy(burning, volume / compressionRatio, FIRST_GUESS);
        ReactingGas.State end = expand(products, peak, volume);
        return new FuelAirCycle(
                start - end.energy(),
                mixture.oxygenSupplied(),
                mixture.dryAir(),
                t2,
                peak.temperature(),
                peak.pressure(),
                end.temperature(),
                end.pressure());
    }

    private static ReactingGas.State expand(ReactingGas products, ReactingGas.State peak, double volume) {
        double guess = peak.temperature() * Math.pow(peak.volume() / volume, 0.2);
        ReactingGas.State shifting = products.ofEntropy(peak.entropy(), volume, guess);
        if (shifting.temperature() >= FREEZING) {
            return shifting;
        }
        return products.frozen(freezing(products, peak, shifting), volume);
    }

    /** The state at which the expansion passes the freezing temperature, by secant steps on the logarithm of the volume. */
    private static ReactingGas.State freezing(
            ReactingGas products, ReactingGas.State peak, ReactingGas.State shifting) {
        double before = Math.log(shifting.volume());
        ReactingGas.State at = products.at(FREEZING, shifting.volume());
        double missBefore = at.entropy() - peak.entropy();
        double next = before - missBefore / (at.moles() * Gas.MOLAR_CONSTANT);
        for (int i = 0; i < 20; i++) {
            at = products.at(FREEZING, Math.exp(next));
            double miss = at.entropy() - peak.entropy();
            double slope = (miss - missBefore) / (next - before);
            before = next;
            missBefore = miss;
            if (Math.abs(miss) < 1e-9 * Math.abs(peak.entropy()) || slope == 0 || Double.isNaN(slope)) {
                break;
            }
            next -= miss / slope;
        }
        return at;
    }

    private static double energyAtZero(GasMixture gas) {
        double t = Fuel.REFERENCE_TEMPERATURE;
        return gas.enthalpy(t) - gas.moles() * Gas.MOLAR_CONSTANT * t;
    }

    private static Map<Element, Double> times(Map<Element, Double> atoms, double factor) {
        Map<Element, Double> scaled = new EnumMap<>(Element.class);
        atoms.forEach((element, moles) -> scaled.put(element, factor * moles));
        return scaled;
    }

    /**
     * Work for each kilogram of oxygen supplied: the form that changes least over mixture and nitrous oxide.
     *
     * @return J/kg
     */
    public double workPerOxygen() {
        return work / oxygen;
    }

    /**
     * Work for each kilogram of dry air.
     *
     * @return J/kg
     */
    public double workPerAir() {
        return work / dryAir;
    }
}
