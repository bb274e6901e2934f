package org.shotledger.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.build.Build;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;
import org.shotledger.wetkit.ActivationWindow;
import org.shotledger.wetkit.JetPair;

/**
 * Makes a budget: weighs boost levels, sizes the jets for each, and recommends the split whose closest limit is furthest
 * away.
 */
final class Planner {
    private static final int BOOST_LEVELS = 11;
    private static final double LOWEST_SHARE = 0.4;
    private static final double SPEED_STEP = 250;
    /** A pair of the ladder meets the wish when it gives at least this share of it. */
    private static final double MET = 0.995;

    private final Build build;
    private final Wish wish;
    private final Evaluator evaluator;
    private final Conditions at;
    private final double[] speeds;
    private final BoostAlone alone;
    private final Feeds feeds;

    Planner(Build build, Wish wish) {
        this.build = build;
        this.wish = wish;
        this.evaluator = Calibration.of(build);
        this.at = Conditions.of(build, wish.conditions());
        this.speeds = speeds();
        this.alone = new BoostSearch(evaluator, at).over(speeds);
        this.feeds =
                new Feeds(evaluator, at, at.air().pressure() + build.turbo().boostCeiling());
    }

    Budget plan() {
        refuseWhatBoostMakes();
        List<SplitCandidate> candidates = candidates();
        SplitCandidate best = candidates.stream()
                .max(Comparator.comparingDouble(SplitCandidate::leastMargin))
                .orElseThrow(this::outOfReach);
        if (best.verdict() == Verdict.BROKEN) {
            throw broken(best);
        }
        Band band = band(at.air().pressure() + best.gaugePressure());
        JetChoice jets = choose(band, best.jets());
        JetPair pair = jets.chosen().pair();
        Evaluation peak = Band.strongest(band.with(pair));
        Limits limits = BandLimits.withPower(build, band, pair);
        BottlePlan bottle = new BottleRun(evaluator, peak).plan(wish);
        Split split = split(at.air().pressure() + best.gaugePressure(), pair);
        Ledger ledger = new LedgerWriter(build, wish, evaluator, peak, bottle).write();
        return new Budget(build, wish, evaluator, at, alone, candidates, split, jets, peak, bottle, limits, ledger);
    }

    private double[] speeds() {
        var table = build.engine().volumetricEfficiency();
        double low = Math.ceil(Math.max(table.low(), 1500) / SPEED_STEP) * SPEED_STEP;
        double high = Math.floor(Math.min(table.high(), build.engine().redLineRpm()) / SPEED_STEP) * SPEED_STEP;
        return Band.grid(low, high, (int) Math.round((high - low) / SPEED_STEP) + 1);
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
                .filter(p -> p.rpm() >= wish.rpmLow() && p.rpm() <= wish.rpmHigh())
                .max(Comparator.comparingDouble(BoostAlone.Point::wheelPower))
                .orElseThrow(() -> new WishException("The wish's band from " + wish.rpmLow() + " to " + wish.rpmHigh()
                        + " rpm holds none of the engine speeds the build covers, " + speeds[0] + " to "
                        + speeds[speeds.length - 1] + " rpm. Widen the band or the volumetric-efficiency table."));
    }

    private List<SplitCandidate> candidates() {
        double most = bestInBand().gaugePressure();
        List<SplitCandidate> found = new ArrayList<>();
        for (double share : Band.grid(LOWEST_SHARE, 1, BOOST_LEVELS)) {
            candidate(at.air().pressure() + share * most, wish.wheelPower()).ifPresent(found::add);
        }
        return found;
    }

    private Optional<SplitCandidate> candidate(double plenumPressure, double wheelPower) {
        Band band = band(plenumPressure);
        Sizing sizing = new Sizing(build, band);
        if (sizing.most() < wheelPower || sizing.least() > wheelPower) {
            return Optional.empty();
        }
        JetPair jets = sizing.pairFor(wheelPower);
        List<Evaluation> points = band.with(jets);
        Evaluation peak = Band.strongest(points);
        double boost = evaluator
                .at(at, peak.rpm(), Demand.boost(peak.demand().plenumPressure()))
                .wheelPower();
        Limits limits = BandLimits.of(build, points);
        return Optional.of(new SplitCandidate(
                plenumPressure - at.air().pressure(),
                peak.rpm(),
                boost,
                peak.wheelPower() - boost,
                jets,
                peak.nitrous().massFlow(),
                limits.leastMargin(),
                limits.first().orElseThrow().name()));
    }

    private Band band(double plenumPressure) {
        ActivationWindow window = build.wetKit().window();
        double low = Math.max(wish.rpmLow(), window.rpmLow());
        double high = Math.min(wish.rpmHigh(), window.rpmHigh());
        if (low > high) {
            throw new WishException("The wish's band from " + wish.rpmLow() + " to " + wish.rpmHigh()
                    + " rpm lies outside the window in which the nitrous may be on, " + window.rpmLow() + " to "
                    + window.rpmHigh() + " rpm. Move the band or the window.");
        }
        return new Band(evaluator, at, feeds, BoostSchedule.of(alone, plenumPressure), low, high);
    }

    private JetChoice choose(Band band, JetPair exact) {
        List<JetChoice.Option> options = new ArrayList<>();
        for (JetPair pair : new Sizing(build, band).around(exact)) {
            options.add(option(band, pair));
        }
        options.sort(Comparator.comparing((JetChoice.Option o) -> o.wheelPower() < MET * wish.wheelPower())
                .thenComparing(o -> o.leastMargin() < 0)
                .thenComparing(o -> -o.leastMargin()));
        return new JetChoice(build.wetKit().nozzles(), exact, options);
    }

    private JetChoice.Option option(Band band, JetPair pair) {
        List<Evaluation> points = band.with(pair);
        Evaluation peak = Band.strongest(points);
        Limits limits = BandLimits.of(build, points);
        return new JetChoice.Option(
                pair,
                peak.nitrous().massFlow(),
                peak.nitrousFuel().massFlow(),
                peak.charge().mixture().nitrousOxidiserFuel(),
                peak.lambda(),
                peak.wheelPower(),
                limits.leastMargin(),
                limits.first().orElseThrow().name());
    }

    private Split split(double plenumPressure, JetPair pair) {
        BoostSchedule boost = BoostSchedule.of(alone, plenumPressure);
        List<Split.Point> points = new ArrayList<>();
        for (double rpm : speeds) {
            if (boost.covers(rpm)) {
                splitPoint(rpm, boost.plenumPressure(rpm), pair).ifPresent(points::add);
            }
        }
        return new Split(wish.wheelPower(), wish.rpmLow(), wish.rpmHigh(), points);
    }

    private Optional<Split.Point> splitPoint(double rpm, double plenum, JetPair pair) {
        try {
            Evaluation off = evaluator.at(at, rpm, Demand.boost(plenum));
            boolean open = build.wetKit().window().contains(rpm);
            Evaluation on = open ? evaluator.at(at, rpm, off.demand().with(pair)) : off;
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
        double most = new Sizing(build, band(bestInBand().plenumPressure())).most();
        return new WishException("No jets of the ladder reach the wish of " + hp(wish.wheelPower())
                + " at the wheels under '" + wish.conditions() + "': at full boost the largest pair gives " + hp(most)
                + ". Ask for less, add nozzles, or open the solenoid and hose.");
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
                hp(mostInsideLimits())));
    }

    /** The most wheel power for which some boost level keeps every limit, to 1 %. */
    private double mostInsideLimits() {
        double low = bestInBand().wheelPower();
        double high = wish.wheelPower();
        double most = bestInBand().gaugePressure();
        while (high - low > 0.01 * low) {
            double middle = (low + high) / 2;
            boolean kept = false;
            for (double share : Band.grid(LOWEST_SHARE, 1, BOOST_LEVELS)) {
                kept |= candidate(at.air().pressure() + share * most, middle)
                        .filter(c -> c.leastMargin() >= 0)
                        .isPresent();
            }
            if (kept) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static String hp(double watts) {
        return QuantityKind.POWER.text(watts, UnitSystem.US);
    }
}
