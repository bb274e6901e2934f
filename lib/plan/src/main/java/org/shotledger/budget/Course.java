package org.shotledger.budget;

import java.util.List;
import org.shotledger.build.Build;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;

/**
 * A build over the band of a wish: which speeds are looked at, how much boost each allows, and what a pair of jets does
 * there. The budget and every study of it look through this one window.
 */
public final class Course {
    /** Share of the torque and peak-pressure limits for which boost is taken back, a fraction of the limit. */
    public static final double RESERVE = Taper.RESERVE;

    private final Evaluator evaluator;
    private final Conditions at;
    private final BoostAlone alone;
    private final Feeds feeds;
    private final double[] speeds;
    private final BoostSchedule highest;

    private Course(Evaluator evaluator, Conditions at, BoostAlone alone, double[] speeds) {
        this.evaluator = evaluator;
        this.at = at;
        this.alone = alone;
        this.speeds = speeds;
        this.highest = BoostSchedule.of(alone, Double.POSITIVE_INFINITY);
        this.feeds = new Feeds(
                evaluator, at, at.air().pressure() + evaluator.build().turbo().boostCeiling());
    }

    /**
     * Lays the course: searches the boost each speed allows without nitrous.
     *
     * @param evaluator the calibrated models and the build
     * @param at what surrounds the engine
     * @param wish the band
     * @return the course
     * @throws WishException when the band lies outside the window in which the nitrous may be on, or when no speed in it can be
     *     boosted
     */
    public static Course of(Evaluator evaluator, Conditions at, Wish wish) {
        Build build = evaluator.build();
        ActivationWindow window = build.wetKit().window();
        double[] band = Band.speeds(wish, window);
        BoostAlone alone = new BoostSearch(evaluator, at).over(BoostSearch.speeds(build, wish));
        if (alone.points().stream().allMatch(p -> Double.isNaN(p.plenumPressure()))) {
            throw new WishException("The turbocharger of " + build.name() + " makes no boost at any speed under '"
                    + wish.conditions() + "'; check its map and turbine.");
        }
        return new Course(evaluator, at, alone, band);
    }

    /**
     * The same course with another state of the bottle; the boost without nitrous does not depend on it.
     *
     * @param temperature temperature of the saturated liquid, K
     * @return the changed course
     */
    public Course withBottleTemperature(double temperature) {
        return new Course(evaluator, at.withBottleTemperature(temperature), alone, speeds);
    }

    /**
     * The same course with another wet kit; the boost without nitrous does not depend on it.
     *
     * @param build the build with the other kit
     * @return the changed course
     */
    public Course withKitOf(Build build) {
        return new Course(new Evaluator(build, evaluator.model()), at, alone, speeds);
    }

    /**
     * The models and the build.
     *
     * @return the evaluator
     */
    public Evaluator evaluator() {
        return evaluator;
    }

    /**
     * What surrounds the engine.
     *
     * @return the conditions
     */
    public Conditions conditions() {
        return at;
    }

    /**
     * The speeds looked at, within the wish's band and the activation window.
     *
     * @return rev/min, ascending
     */
    public double[] speeds() {
        return java.util.Arrays.stream(speeds).filter(highest::covers).toArray();
    }

    /**
     * The plenum pressure held at a speed: the set one, or less where the limits without nitrous allow less.
     *
     * @param rpm engine speed, rev/min, one of {@link #speeds()}
     * @param gaugePressure boost set, Pa above ambient
     * @return Pa absolute
     */
    public double plenumPressure(double rpm, double gaugePressure) {
        return Math.min(at.air().pressure() + gaugePressure, highest.plenumPressure(rpm));
    }

    /**
     * The operating points with the nitrous on, boost taken back where torque or peak pressure would come closer to their
     * limits than {@link #RESERVE}.
     *
     * @param gaugePressure boost set, Pa above ambient
     * @param jets jets of each nozzle
     * @return one point a speed; speeds at which the compressor map has no answer are left out
     * @throws IllegalArgumentException where another model has no answer
     */
    public List<Evaluation> points(double gaugePressure, JetPair jets) {
        double held = at.air().pressure() + gaugePressure;
        return new Band(evaluator, at, feeds, BoostSchedule.of(alone, held), speeds).with(jets);
    }

    /**
     * The limits over several points, each at the point where it is closest.
     *
     * @param points operating points of this course
     * @return the limits
     */
    public Limits closest(List<Evaluation> points) {
        return BandLimits.of(evaluator.build(), points);
    }
}
