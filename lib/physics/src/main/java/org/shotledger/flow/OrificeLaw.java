package org.shotledger.flow;

import java.util.List;
import org.shotledger.fluid.FluidState;

/**
 * A law for the flow of nitrous oxide through a hole. A job sheet or a notebook names the law; every result tells which one
 * acted.
 */
public interface OrificeLaw {
    /** The default: share of equilibrium flow by class of hole, see the class. */
    OrificeLaw CLASS = new ClassLaw();

    /** Homogeneous equilibrium times one coefficient. */
    OrificeLaw EQUILIBRIUM = new EquilibriumLaw();

    /** Equilibrium flow times the coefficient of a full-running square-edged hole. */
    OrificeLaw LONG_ORIFICE = new LongOrificeLaw();

    /** Ideal gas for vapour, the default for everything else. */
    OrificeLaw IDEAL_GAS = new IdealGasLaw();

    /**
     * Name in sheets and reports.
     *
     * @return lower-case words
     */
    String name();

    /**
     * The law that acts where this one is set.
     *
     * @param inlet state at rest before the hole
     * @return this law, or the default where this one does not cover the state
     */
    OrificeLaw acting(FluidState inlet);

    /**
     * Where the flux and its coefficient come from.
     *
     * @param hole the hole
     * @param inlet state at rest before it
     * @return sources, parted by a semicolon
     */
    String source(NitrousJet hole, FluidState inlet);

    /**
     * Best estimate of the flow over the pressure behind.
     *
     * @param hole the hole; its measured factor and its place in the band are not applied here
     * @param inlet state at rest before it
     * @return the curve
     * @throws IllegalArgumentException when the law does not cover the hole or the state
     */
    OrificeCurve curve(NitrousJet hole, FluidState inlet);

    /**
     * The predictive band of a hole nobody has tested.
     *
     * @param hole the hole
     * @param inlet state at rest before it
     * @return 90 % band relative to the best estimate, whose best is 1
     */
    FlowBand band(NitrousJet hole, FluidState inlet);

    /**
     * The laws that can be chosen.
     *
     * @return all laws, the default first
     */
    static List<OrificeLaw> all() {
        return List.of(CLASS, EQUILIBRIUM, LONG_ORIFICE, IDEAL_GAS);
    }

    /**
     * Finds a law.
     *
     * @param name "class", "equilibrium", "long orifice" or "ideal gas"
     * @return the law
     * @throws IllegalArgumentException when there is none of that name
     */
    static OrificeLaw named(String name) {
        return all().stream()
                .filter(law -> law.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The orifice law \"" + name + "\" is not known; choose "
                        + String.join(", ", all().stream().map(OrificeLaw::name).toList()) + "."));
    }
}
