package org.shotledger.budget;

import java.util.List;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Sizes other shots at the boost of a budget: the same engine, the same kit, other jets.
 */
public final class ShotSizer {
    private final Budget budget;
    private final Band band;
    private final MixtureGoal goal;

    private ShotSizer(Budget budget, Band band, MixtureGoal goal) {
        this.budget = budget;
        this.band = band;
        this.goal = goal;
    }

    /**
     * The sizer of a budget.
     *
     * @param budget the budget whose boost, band and mixture are kept
     * @return the sizer
     */
    public static ShotSizer of(Budget budget) {
        double ambient = budget.conditions().air().pressure();
        double held = budget.recommended().gaugePressure();
        Feeds feeds = new Feeds(
                budget.evaluator(),
                budget.conditions(),
                ambient + budget.build().turbo().boostCeiling());
        var window = budget.build().wetKit().window();
        Band band = new Band(
                budget.evaluator(),
                budget.conditions(),
                feeds,
                BoostSchedule.of(budget.boostAlone(), ambient + held),
                Math.max(budget.wish().rpmLow(), window.rpmLow()),
                Math.min(budget.wish().rpmHigh(), window.rpmHigh()));
        return new ShotSizer(budget, band, budget.mixtureGoal());
    }

    /**
     * The same sizer for another mixture.
     *
     * @param wanted total lambda, ratio or lambda of the nitrous circuit
     * @return the changed sizer
     */
    public ShotSizer with(MixtureGoal wanted) {
        return new ShotSizer(budget, band, wanted);
    }

    /**
     * The strongest point with the nitrous off.
     *
     * @return the point of the band with the most wheel power
     */
    public Evaluation off() {
        return Band.strongest(band.without());
    }

    /**
     * The jets, between the rungs of the ladder, that give a wheel power and the wanted mixture.
     *
     * @param wheelPower power at the wheels, W, above that of {@link #off}
     * @return the exact pair
     * @throws WishException when no jets give that power
     */
    public JetPair exact(double wheelPower) {
        return new Sizing(budget.build(), band, goal)
                .pairFor(wheelPower)
                .orElseThrow(() -> new WishException("No jets give "
                        + QuantityKind.POWER.text(wheelPower, UnitSystem.US)
                        + " at the wheels at the boost of this budget;"
                        + " the nitrous off gives " + QuantityKind.POWER.text(off().wheelPower(), UnitSystem.US)
                        + ". Ask for a power above that and nearer to it."));
    }

    /**
     * The pair of the ladder nearest to a wheel power.
     *
     * @param wheelPower power at the wheels, W, above that of {@link #off}
     * @return the pair and what it gives
     * @throws WishException when no jets give that power
     */
    public JetChoice.Option onLadder(double wheelPower) {
        return new JetChooser(budget.build(), band, goal, wheelPower).nearest(exact(wheelPower));
    }

    /**
     * A pair over the band of the wish.
     *
     * @param pair the jets
     * @return one point an engine speed; speeds at which the compressor map has no answer are left out
     */
    public List<Evaluation> over(JetPair pair) {
        return band.with(pair);
    }

    /**
     * The strongest point of a pair.
     *
     * @param pair the jets
     * @return the point of the band with the most wheel power
     */
    public Evaluation strongest(JetPair pair) {
        return Band.strongest(band.with(pair));
    }

    /**
     * The limits of a pair over the band.
     *
     * @param pair the jets
     * @return each limit where it is closest
     */
    public Limits limits(JetPair pair) {
        return BandLimits.of(budget.build(), band.with(pair));
    }
}
