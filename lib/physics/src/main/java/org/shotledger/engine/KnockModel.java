package org.shotledger.engine;

import org.shotledger.curve.Bracket;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * Knock as a ratio to a base pull that is known to be safe: the integral of {@link Knock} over the end gas, its delay changed
 * by what the published form leaves out or has too strong,
 * {@code tau ~ x(O2)^-oxygenPower lambda^richnessPower p_1^pressureRelief} with p_1 the pressure when compression begins, and the
 * end gas warmed by the part of the charge cooling that is not credited, because walls heat a cold charge again.
 *
 * <p>Sources. Oxygen: ignition delays of n-heptane in shock tubes, 1000 to 1350 K and 8 to 60 bar, go with
 * {@code x(O2)^(-0.95 +- 0.27)}; iso-octane in a rapid compression machine with -1.41 (He et al., Combustion and Flame 142
 * (2005) 266, from memory). Nothing is measured above 21 % oxygen at end-gas temperatures; all oxygen of the nitrous oxide is
 * counted, which is the unsafe side. Richness: 0.77 (He et al.) to 1.5; at 0.9 the index is strongest where measured knock in
 * a research engine is, lambda 0.89 for petrol to 0.93 with 30 % ethanol (Kolodziej and Wallner, Combustion Engines 171 (2017)
 * 164), and weaker on both sides. Pressure: without relief the knock-limited compression ratio of the same engine falls with
 * {@code p^-0.64}; measured over ten fuels is -0.49 to -0.60 (SAE 2023-01-0251); 0.27 meets the middle. Cooling: 60 to 70 % of full
 * evaporation was measured behind a carburettor (Kolodziej and Wallner), and knock down to lambda 0.80 with up to 55 K of it; what goes beyond, with alcohols
 * and nitrous oxide, is credited with less than half that share: our choice, because vapour pressure and warm walls hold it back.
 *
 * <p>With nitrous oxide this is not validated against engine data: none were found. Say so beside the figure.
 *
 * @param cooling share credited of the first 55 K of cooling by complete evaporation of fuels and nitrous oxide, 0 to 1
 * @param coolingBeyond share credited of what goes beyond 55 K, 0 to 1
 * @param oxygenPower 0 to 2
 * @param richnessPower 0 to 2.5
 * @param pressureRelief 0 to 0.6
 * @param octaneOffset added to the octane number of a charge with nitrous oxide or its fuel in it, -5 to 5
 */
public record KnockModel(
        double cooling,
        double coolingBeyond,
        double oxygenPower,
        double richnessPower,
        double pressureRelief,
        double octaneOffset) {
    /** Best estimate. */
    public static final KnockModel BEST = new KnockModel(0.65, 0.3, 1.0, 0.9, 0.27, 0);
    /** The favourable end of the band: our choice within the spread of the sources. */
    public static final KnockModel LOW = new KnockModel(0.75, 0.5, 0.7, 0.9, 0.40, 1);
    /** The unsafe end of the band: our choice within the spread of the sources, the published pressure power unrelieved. */
    public static final KnockModel HIGH = new KnockModel(0.5, 0.1, 1.4, 0.9, 0, -1);

    /** What is printed beside every figure with nitrous oxide. */
    public static final String STANDING = "not validated against engine data with nitrous";

    /** Octane number of a fuel that does not state one: our choice, that of the reference fuel. */
    private static final double UNKNOWN_OCTANE = 95;

    /** Largest retard that is tried, deg: our choice; more costs what the shot gives. */
    private static final double MOST_RETARD = 25;
    /** Full evaporation in the measured charges, K: 30 % ethanol at lambda 0.8. */
    private static final double MEASURED_COOLING = 55;

    public KnockModel {
        Require.within("credited share of the charge cooling", cooling, 0, 1, "");
        Require.within("credited share of further cooling", coolingBeyond, 0, 1, "");
        Require.within("power of the oxygen in the knock index", oxygenPower, 0, 2, "");
        Require.within("power of the richness in the knock index", richnessPower, 0, 2.5, "");
        Require.within("relief of pressure in the knock index", pressureRelief, 0, 0.6, "");
        Require.within("offset of the octane number", octaneOffset, -5, 5, "");
    }

    /**
     * Runs the cycle of a charge with the knock integral of its end gas; work, pressure and exhaust are those of
     * {@link Cylinder#run(CycleInput)}.
     *
     * @param cylinder the cylinder
     * @param gas the end gas
     * @param input the cycle of the charge
     * @return the cycle, ready for {@link #index(Cylinder, EndGas, CycleInput, Cycle)}
     */
    public Cycle cycle(Cylinder cylinder, EndGas gas, CycleInput input) {
        double octane = gas.octane().orElse(UNKNOWN_OCTANE) + (gas.nitrous() ? octaneOffset : 0);
        return cylinder.run(
                input,
                octane,
                gas.temperature(
                        input.temperature(), Math.min(credited(gas.fullCooling()), gas.warm() - gas.counted())));
    }

    /**
     * The index of a cycle already run; only its ratio to that of a safe base on the same engine means something.
     *
     * @param cylinder the cylinder
     * @param gas the end gas
     * @param input the cycle of the charge
     * @param cycle what {@link #cycle} gave for it
     * @return a pure number
     */
    public double index(Cylinder cylinder, EndGas gas, CycleInput input, Cycle cycle) {
        return cycle.knockIntegral()
                * Math.pow(gas.oxygenRatio(), oxygenPower)
                * Math.pow(gas.lambda(), -richnessPower)
                * Math.pow(cylinder.closingPressure(input) / UnitFactors.ATMOSPHERE, -pressureRelief);
    }

    /**
     * The index of a charge, with its cycle run.
     *
     * @param cylinder the cylinder
     * @param gas the end gas
     * @param input the cycle of the charge
     * @return a pure number
     */
    public double index(Cylinder cylinder, EndGas gas, CycleInput input) {
        return index(cylinder, gas, input, cycle(cylinder, gas, input));
    }

    /**
     * Cooling that the index counts on.
     *
     * @param full temperature drop by complete evaporation, K
     * @return K
     */
    public double credited(double full) {
        return full <= MEASURED_COOLING
                ? cooling * full
                : cooling * MEASURED_COOLING + coolingBeyond * (full - MEASURED_COOLING);
    }

    /**
     * Spark retard that brings an index down to that of the base.
     *
     * @param cylinder the cylinder
     * @param gas the end gas
     * @param input the cycle of the charge with the burning at no retard
     * @param baseIndex index of the safe base with this model
     * @return deg later, 0 where none is needed; infinite where 25 deg are not enough
     */
    public double retard(Cylinder cylinder, EndGas gas, CycleInput input, double baseIndex) {
        double start = input.burning().start();
        if (excess(cylinder, gas, input, baseIndex, 0) <= 0) {
            return 0;
        }
        double most = Math.min(MOST_RETARD, 60 - start);
        if (excess(cylinder, gas, input, baseIndex, most) > 0) {
            return Double.POSITIVE_INFINITY;
        }
        return Bracket.root(retard -> excess(cylinder, gas, input, baseIndex, retard), 0, most, 0.02);
    }

    private double excess(Cylinder cylinder, EndGas gas, CycleInput input, double baseIndex, double retard) {
        Wiebe later = input.burning().startingAt(input.burning().start() + retard);
        return Math.log(index(cylinder, gas, input.withBurning(later)) / baseIndex);
    }
}
