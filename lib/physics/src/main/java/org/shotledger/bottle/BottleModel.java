package org.shotledger.bottle;

/** A model of what the bottle's contents do while something is taken out. */
public sealed interface BottleModel permits EquilibriumBottle, TwoNodeBottle {
    /**
     * The model for a bottle: the two-node one where the shell is known, else equilibrium.
     *
     * @param bottle the bottle
     * @return the model
     */
    static BottleModel of(Bottle bottle) {
        return bottle.wallMass() > 0 && bottle.wallSpecificHeat() > 0 ? TwoNodeBottle.MODEL : EquilibriumBottle.MODEL;
    }

    /**
     * Name for reports.
     *
     * @return short name
     */
    String title();

    /**
     * How well it is known: what was fitted, and its error on measured tanks that the fit had not seen.
     *
     * @return short phrase for a report
     */
    String standing();

    /**
     * Known relative error in pressure.
     *
     * @return one standard deviation, relative
     */
    double expectedError();

    /**
     * Runs an emptying.
     *
     * @param emptying what is taken, for how long, in what surroundings
     * @return what happened
     */
    History run(Emptying emptying);
}
