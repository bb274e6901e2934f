package org.shotledger.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/**
 * Makes a budget: weighs boost levels, sizes the jets for each, and recommends the split whose closest limit is furthest
 * away.
 */
final class Planner {
    private static final int BOOST_LEVELS = 11;
    private static final double LOWEST_SHARE = 0.4;
    /** Splits whose least margins differ by less than this are equal; the one with less nitrous is taken. */
    private static final double SAME_MARGIN = 0.005;

    private final Build build;
    private final Wish wish;
    private final Evaluator evaluator;
    private final Conditions at;
    private final double[] speeds;
    private final BoostAlone alone;
    private final Feeds feeds;
    private final MixtureGoal goal;

    Planner(Build build, Wish wish) {
        this.build = build;
        this.wish = wish;
        this.goal = wish.mixture().orElse(build.tune().goal());
        this.evaluator = Calibration.of(build);
        this.at = Conditions.of(build, wish.conditions());
        this.speeds = BoostSearch.speeds(build, wish);
        this.alone = new BoostSearch(evaluator, at).over(speeds);
        this.feeds =
                new Feeds(evaluator, at, at.air().pressure() + build.turbo().boostCeiling());
    }

    Budget plan() {
        refuseWhatBoostMakes();
        List<SplitCandidate> candidates = candidates(wish.wheelPower());
        SplitCandidate best = best(candidates).orElseThrow(this::outOfReach);
        if (best.verdict() == Verdict.BROKEN) {
            throw broken(best);
        }
        Band band = band(at.air().pressure() + best.gaugePressure());
        JetChoice jets = new JetChooser(build, band, goal, wish.wheelPower()).around(best.jets());
        JetPair pair = jets.chosen().pair();
        Evaluation peak = Band.strongest(band.with(pair));
        Limits limits = BandLimits.withPower(build, band, pair);
        BottlePlan bottle = new BottleRun(evaluator, peak).plan(wish);
        Split split = split(band, pair);
        Ledger ledger = LedgerWriter.write(LedgerSubject.of(build, wish, evaluator, peak, bottle));
        return new Budget(build, wish, evaluator, at, alone, candidates, split, jets, peak, bottle, limits, ledger);
    }

    /** How far the wish is within reach; the search stops at the wish. */
    Reach reach() {
        return Reach.search(this, wish.wheelPower(), wish.wheelPower());
    }

    /** The most wheel power without nitrous, W. */
    double boostAlone() {
        return bestInBand().wheelPower();
    }

    /** The split of a wheel power whose closest limit is furthest away; nothing where no jets give that power. */
    Optional<SplitCandidate> best(double wheelPower) {
        return best(candidates(wheelPower));
    }

    /** The candidate whose closest limit is furthest away; of equals the one with the least nitrous. */
    static Optional<SplitCandidate> best(List<SplitCandidate> candidates) {
        return candidates.stream()
                .max(Comparator.comparingDouble((SplitCandidate c) -> Math.floor(c.leastMargin() / SAME_MARGIN))
                        .thenComparing(c -> -c.nitrousFlow()));
    }

    private void refuseWhatBoostMakes() {
        BoostAlone.Point best = bestInBand();
        if (wish.wheelPower() <= best.wheelPower()) {
            throw new WishException("The wish of " + hp(wish.wheelPower()) + " at the wheels under '"
                    + wish.conditions()
                    + "' needs no nitrous: boost alone makes " + hp(best.wheelPower()) + " at " + Math.round(best.rpm())
                    + " rpm inside every limit. Ask for more, or run less boost.");
        }
    }

    private BoostAlone.Point bestInBand() {
        return alone.points().stream()
                .filter(p -> p.rpm() >= wish.rpmLow() && p.rpm() <= wish.rpmHigh() && !Double.isNaN(p.wheelPower()))
                .max(Comparator.comparingDouble(BoostAlone.Point::wheelPower))
                .orElseThrow(() -> new WishException("The wish's band from " + wish.rpmLow() + " to " + wish.rpmHigh()
                        + " rpm holds none of the engine speeds the build covers, " + speeds[0] + " to "
                        + speeds[speeds.length - 1] + " rpm. Widen the band or the volumetric-efficiency table."));
    }

    private List<SplitCandidate> candidates(double wheelPower) {
        double most = bestInBand().gaugePressure();
        List<SplitCandidate> found = new ArrayList<>();
        for (double share : Band.grid(LOWEST_SHARE, 1, BOOST_LEVELS)) {
            candidate(at.air().pressure() + share * most, wheelPower).ifPresent(found::add);
        }
        return found;
    }

    private Optional<SplitCandidate> candidate(double plenumPressure, double wheelPower) {
        Band band = band(plenumPressure);
        return new Sizing(build, band, goal)
                .pairFor(wheelPower)
                .flatMap(jets ->
                        JetChooser.evaluated(band, jets).map(points -> candidate(plenumPressure, jets, points)));
    }

    private SplitCandidate candidate(double plenumPressure, JetPair jets, List<Evaluation> points) {
        Evaluation peak = Band.strongest(points);
        double boost = evaluator
                .at(at, peak.rpm(), Demand.boost(peak.demand().plenumPressure()))
                .wheelPower();
        Limits limits = BandLimits.of(build, points);
        return new SplitCandidate(
                plenumPressure - at.air().pressure(),
                peak.rpm(),
                boost,
                peak.wheelPower() - boost,
                jets,
                peak.nitrous().massFlow(),
                limits.leastMargin(),
                limits.first().orElseThrow().name(),
                limits.verdict());
    }

    private Band band(double plenumPressure) {
        double[] band = Band.speeds(wish, build.wetKit().window());
        return new Band(evaluator, at, feeds, BoostSchedule.of(alone, plenumPressure), band);
    }

    private Split split(Band band, JetPair pair) {
        List<Split.Point> points = new ArrayList<>();
        for (double rpm : speeds) {
            if (band.covers(rpm)) {
                splitPoint(band, rpm, pair).ifPresent(points::add);
            }
        }
        return new Split(
                wish.wheelPower(), wish.rpmLow(), wish.rpmHigh(), build.wetKit().window(), points);
    }

    private Optional<Split.Point> splitPoint(Band band, double rpm, JetPair pair) {
        try {
            boolean open = build.wetKit().window().contains(rpm);
            Evaluation on = open ? band.one(rpm, pair) : band.without(rpm);
            Evaluation off = evaluator.at(at, rpm, Demand.boost(on.demand().plenumPressure()));
            Limit first = LimitSheet.of(build, on).first().orElseThrow();
            return Optional.of(new Split.Point(
                    rpm,
                    on.gaugePressure(),
                    off.wheelPower(),
                    on.wheelPower() - off.wheelPower(),
                    on.crankTorque(),
                    on.lambda(),
                    on.cylinder().peakPressure(),
                    first.relativeMargin(),
                    first.name()));
        } catch (OutsideMapException outside) {
            return Optional.empty();
        }
    }

    private WishException outOfReach() {
        double most = new Sizing(build, band(bestInBand().plenumPressure()), goal).most();
        Reach reach = reach();
        return new WishException("No jets of the ladder reach the wish of " + hp(wish.wheelPower())
                + " at the wheels under '" + wish.conditions()
                + "': at full boost the largest pair that still burns gives " + hp(most)
                + ". Inside every limit about " + hp(reach.wheelPower()) + " can be reached, where '" + reach.limit()
                + "' stops it; ask for that, or relieve that limit.");
    }

    private WishException broken(SplitCandidate best) {
        return new WishException(String.format(
                java.util.Locale.ROOT,
                "No combination reaches %s at the wheels under '%s' inside every limit: the best, with %s of boost, breaks"
                        + " '%s' by %.1f %%. Inside every limit about %s can be reached; ask for that, or relieve that limit.",
                hp(wish.wheelPower()),
                wish.conditions(),
                QuantityKind.GAUGE_PRESSURE.text(best.gaugePressure(), UnitSystem.SI),
                best.firstLimit(),
                -100 * best.leastMargin(),
                hp(reach().wheelPower())));
    }

    private static String hp(double watts) {
        return QuantityKind.POWER.text(watts, UnitSystem.US);
    }
}
