package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PassOutcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/** What every channel reads at the settled pieces of a pull, for the run as planned and for any other. */
final class Prediction {
    private static final double HOTTEST = 309.5;
    private static final double COLDEST = 250;
    private static final int TEMPERATURES = 7;
    /** By how much colder the bottle is begun to see how much of that is left later in the pass, K. */
    private static final double COLDER = 5;

    private final Outcome outcome;
    private final List<Bin> bins;
    private final double[] shape;
    private final Run planned;
    private final double[] temperature;
    private final double[] pressure;
    private final double[][] kept;
    private final FeedFlow feed;
    private final double feedTemperature;
    private final PolynomialSplineFunction flow;
    private final FeedFlow[] feeds;
    private final List<Optional<OperatingPoint>> points;

    /** The shape is what the logged boost differs from the planned, its mean left out, Pa. */
    Prediction(Outcome outcome, List<Bin> bins, double[] shape) {
        this.outcome = outcome;
        this.bins = bins;
        this.shape = shape;
        this.planned = Run.of(outcome);
        List<PassOutcome.Moment> pass = outcome.overPass();
        this.temperature = bins.stream()
                .mapToDouble(b -> PassOutcome.at(pass, b.seconds(), PassOutcome.Moment::temperature))
                .toArray();
        this.pressure = bins.stream()
                .mapToDouble(b -> PassOutcome.at(pass, b.seconds(), PassOutcome.Moment::pressure))
                .toArray();
        this.kept = kept();
        double[] known =
                Arrays.stream(temperature).filter(t -> !Double.isNaN(t)).toArray();
        boolean nitrous = known.length > 0 && outcome.setup().jets().isPresent();
        this.feedTemperature = nitrous ? Arrays.stream(known).average().orElseThrow() : Double.NaN;
        this.feed = nitrous ? feed(planned, feedTemperature) : null;
        this.flow = nitrous ? flows(known) : null;
        this.feeds = nitrous ? feeds() : new FeedFlow[bins.size()];
        this.points = points(planned, 1, List.of());
    }

    /**
     * How much of a colder start is left in each piece, of its temperature and of the pressure that goes with that: a colder bottle flows
     * less and cools less, and a full one may stand above its vapour pressure.
     */
    private double[][] kept() {
        double[][] all = new double[2][bins.size()];
        Arrays.fill(all[0], 1);
        Arrays.fill(all[1], 1);
        if (outcome.overPass().isEmpty()) {
            return all;
        }
        Setup setup = outcome.setup();
        BottleFill colder =
                new BottleFill(setup.bottle().charge(), setup.bottle().startTemperature() - COLDER);
        List<PassOutcome.Moment> pass = Evaluate.of(outcome.car(), setup.withBottle(colder), outcome.at())
                .overPass();
        for (int i = 0; i < bins.size(); i++) {
            double cold = PassOutcome.at(pass, bins.get(i).seconds(), PassOutcome.Moment::temperature);
            if (!Double.isNaN(cold + temperature[i]) && cold < temperature[i]) {
                all[0][i] = (temperature[i] - cold) / COLDER;
                all[1][i] = (pressure[i] - PassOutcome.at(pass, bins.get(i).seconds(), PassOutcome.Moment::pressure))
                        / (vapour(temperature[i]) - vapour(cold));
            }
        }
        return all;
    }

    private static double vapour(double kelvin) {
        return NitrousOxide.saturationPressure(Math.min(kelvin, HOTTEST));
    }

    /** Temperature of the bottle in a piece: what it has cooled goes with what has flowed. */
    private double kelvin(Run run, double share, int i) {
        double start = outcome.overPass().get(0).temperature();
        return start - (start - temperature[i]) * share + run.bottle() * kept[0][i];
    }

    private static FluidState liquid(double kelvin) {
        return NitrousOxide.saturatedLiquid(Math.min(kelvin, HOTTEST));
    }

    private double plenum(double rpm) {
        return outcome.at().air().pressure() + outcome.setup().boost().armed().at(rpm);
    }

    private FeedFlow feed(Run run, double kelvin) {
        double middle = plenum(run.setup().arming().rpmHigh());
        return PointModel.of(run.car(), run.setup(), run.at(), liquid(kelvin)).feed(middle);
    }

    /** What the planned feed path passes in each piece; only what a run changes of that is read off the curve. */
    private FeedFlow[] feeds() {
        FeedFlow[] all = new FeedFlow[bins.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = Double.isNaN(temperature[i]) ? null : feed(temperature[i], i);
        }
        return all;
    }

    private FeedFlow feed(double kelvin, int i) {
        return PointModel.of(planned.car(), planned.setup(), planned.at(), liquid(kelvin))
                .feed(plenum(bins.get(i).rpm()) + shape[i]);
    }

    /** The flow of a bottle begun colder or warmer is worked out; the little that another flow cools it by is read off the curve. */
    private FeedFlow through(Run run, double kelvin, double share, int i) {
        return run.bottle() == 0
                ? feeds[i].times(share * flowAt(kelvin) / flowAt(temperature[i]))
                : feed(kelvin, i).times(share);
    }

    /** Flow of the planned feed path over bottle temperature, over that at the middle one. */
    private PolynomialSplineFunction flows(double[] known) {
        double low = Math.max(COLDEST, Arrays.stream(known).min().orElseThrow() - 25);
        double high = Math.min(HOTTEST, Arrays.stream(known).max().orElseThrow() + 8);
        double[] at = new double[TEMPERATURES];
        double[] share = new double[TEMPERATURES];
        for (int i = 0; i < TEMPERATURES; i++) {
            at[i] = low + (high - low) * i / (TEMPERATURES - 1);
            share[i] = feed(planned, at[i]).massFlow() / feed.massFlow();
        }
        return new SplineInterpolator().interpolate(at, share);
    }

    private double flowAt(double kelvin) {
        double[] knots = flow.getKnots();
        return flow.value(Math.max(knots[0], Math.min(knots[knots.length - 1], kelvin)));
    }

    /** How the path of another run flows against that of the planned one. */
    private double pathShare(Run run) {
        if (feed == null) {
            return 1;
        }
        if (run.car().nitrous().nitrous().equals(planned.car().nitrous().nitrous())) {
            return run.at().factors().of(Factor.NITROUS_FLOW)
                    / planned.at().factors().of(Factor.NITROUS_FLOW);
        }
        return feed(run, feedTemperature).massFlow() / feed.massFlow();
    }

    /** The points of a run; those with the nitrous off are taken from the planned run's where only the nitrous differs. */
    private List<Optional<OperatingPoint>> points(Run run, double share, List<Optional<OperatingPoint>> plan) {
        FluidState cold = liquid(Double.isNaN(feedTemperature) ? 290 : feedTemperature);
        PointModel model = PointModel.of(run.car(), run.setup(), run.at(), cold);
        PointModel fuel = run.pumpLoss() == 0
                ? model
                : PointModel.of(
                        run.car(), run.setup(), run.at().withVoltage(run.at().voltage() - run.pumpLoss()), cold);
        boolean same = !plan.isEmpty() && run.withoutNitrousAs(planned);
        List<Optional<OperatingPoint>> all = new ArrayList<>();
        for (int i = 0; i < bins.size(); i++) {
            all.add(same && !bins.get(i).on() ? plan.get(i) : point(run, model, fuel, share, i));
        }
        return all;
    }

    private Optional<OperatingPoint> point(Run run, PointModel model, PointModel fuel, double share, int i) {
        Bin bin = bins.get(i);
        double plenum = plenum(bin.rpm()) + shape[i] + run.boost();
        try {
            if (!bin.on()) {
                return Optional.of(model.at(bin.rpm(), plenum, Mode.ARMED));
            }
            if (feeds[i] == null) {
                return Optional.empty();
            }
            double kelvin = kelvin(run, share, i);
            FeedFlow through = through(run, kelvin, share, i);
            return Optional.of(model.withBottle(liquid(kelvin))
                    .at(bin.rpm(), plenum, Mode.NITROUS, through, fuel.nitrousFuel(plenum)));
        } catch (NoAnswerException none) {
            return Optional.empty();
        } catch (IllegalArgumentException outside) {
            return Optional.empty();
        }
    }

    /** What each channel reads in each bin, SI; NaN where the models have no answer. */
    double[][] of(Run run) {
        boolean asPlanned = run.car().equals(planned.car())
                && run.setup().equals(planned.setup())
                && run.at().equals(planned.at())
                && run.boost() == 0
                && run.bottle() == 0
                && run.pumpLoss() == 0;
        double share = asPlanned ? 1 : pathShare(run);
        List<Optional<OperatingPoint>> found = asPlanned ? points : points(run, share, points);
        double[][] read = new double[Observable.values().length][bins.size()];
        for (int i = 0; i < bins.size(); i++) {
            for (Observable what : Observable.values()) {
                read[what.row()][i] = read(what, run, share, i, found.get(i));
            }
        }
        return read;
    }

    private double read(Observable what, Run run, double share, int i, Optional<OperatingPoint> there) {
        boolean on = bins.get(i).on();
        Gauges gauges = run.gauges();
        if (what == Observable.BATTERY_VOLTAGE) {
            return run.at().voltage();
        }
        if (what == Observable.BOTTLE_TEMPERATURE) {
            return on || outcome.setup().jets().isEmpty()
                    ? Double.NaN
                    : outcome.setup().bottle().startTemperature() + run.bottle();
        }
        if (there.isEmpty()) {
            return Double.NaN;
        }
        OperatingPoint point = there.get();
        return switch (what) {
            case LAMBDA -> point.lambda() * gauges.lambda();
            case WHEEL_POWER -> point.wheelPower() * gauges.power();
            case CRANK_POWER -> point.power().brake() * gauges.power();
            case MANIFOLD_PRESSURE -> point.plenumPressure() + gauges.manifold();
            case FUEL_PRESSURE -> point.main().railPressure() + gauges.rail();
            case NITROUS_FUEL_PRESSURE -> on ? point.nitrousFuel().railPressure() + gauges.nitrousFuel() : Double.NaN;
            case BOTTLE_PRESSURE -> on ? bottlePressure(run, share, i) + gauges.bottle() : Double.NaN;
            case INJECTOR_DUTY -> point.main().duty();
            default -> Double.NaN;
        };
    }

    private double bottlePressure(Run run, double share, int i) {
        return pressure[i] + kept[1][i] * (vapour(kelvin(run, share, i)) - vapour(temperature[i]));
    }
}
