package org.shotledger.evaluate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.shotledger.bottle.Charge;
import org.shotledger.bottle.Pass;
import org.shotledger.bottle.Sample;
import org.shotledger.car.Car;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Limits;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/** What happens when a setup is run on a car in a case: the one function that everything else asks. Pure. */
public final class Evaluate {
    /** How many moments of a pass are worked out: our choice, what a chart shows. */
    private static final int MOMENTS = 12;

    private final Car car;
    private final Setup setup;
    private final Case at;
    private final Optional<Day> day;
    private final PointModel model;
    private final HeldBoost held;

    private Evaluate(Car car, Setup setup, Case at, Optional<Day> day) {
        this.car = car;
        this.setup = setup;
        this.at = at;
        this.day = day;
        this.model = PointModel.of(car, setup, at, bottle());
        this.held = new HeldBoost(model, at.air().pressure());
    }

    /**
     * Runs a setup.
     *
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @return the outcome; where the models have no answer it holds broken limits that say so
     */
    public static Outcome of(Car car, Setup setup, Case at) {
        return new Evaluate(car, setup, at, new Bottles().day(car, setup, at)).outcome();
    }

    /**
     * Runs a setup at one engine speed.
     *
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @param rpm engine speed, rev/min
     * @return the armed engine there; empty where the models have no answer
     */
    public static Optional<OperatingPoint> at(Car car, Setup setup, Case at, double rpm) {
        return new Evaluate(car, setup, at, dayForBottle(car, setup, at)).armed(rpm);
    }

    /**
     * The operating-point model of a setup in a case, the bottle as the case has it.
     *
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @return the model
     */
    public static PointModel model(Car car, Setup setup, Case at) {
        return new Evaluate(car, setup, at, dayForBottle(car, setup, at)).model;
    }

    /**
     * Runs a setup in several cases.
     *
     * @param car what is built
     * @param setup what is set
     * @param cases what the world may be
     * @return one outcome a case, in their order
     */
    public static List<Outcome> all(Car car, Setup setup, List<Case> cases) {
        Bottles bottles = new Bottles();
        return cases.parallelStream()
                .map(at -> new Evaluate(car, setup, at, bottles.day(car, setup, at)).outcome())
                .toList();
    }

    /**
     * The same without the seconds of the pass.
     *
     * @param bottles bottles shared with other cars and setups
     * @param car what is built
     * @param setup what is set
     * @param cases what the world may be
     * @return one outcome a case, in their order, with every operating point and limit
     */
    public static List<Outcome> judged(Bottles bottles, Car car, Setup setup, List<Case> cases) {
        return cases.parallelStream()
                .map(at -> new Evaluate(car, setup, at, bottles.day(car, setup, at)).judged())
                .toList();
    }

    /**
     * The same without what {@link #closed} tells, and without the seconds of the pass.
     *
     * @param bottles bottles shared with other cars and setups
     * @param car what is built
     * @param setup what is set, with jets
     * @param cases what the world may be
     * @return one outcome a case, in their order, with the operating points at which the nitrous is open and the limits of these and of
     *     the bottle
     */
    public static List<Outcome> open(Bottles bottles, Car car, Setup setup, List<Case> cases) {
        return cases.parallelStream()
                .map(at -> new Evaluate(car, setup, at, bottles.day(car, setup, at)).open())
                .toList();
    }

    /**
     * Every pass that the setup asks for, over its seconds, the bottle brought back to its start temperature between them.
     *
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @return the passes in order, the one that is cut short the last; empty without nitrous
     */
    public static List<PassOutcome> passes(Car car, Setup setup, Case at) {
        Optional<Day> day = new Bottles().day(car, setup, at);
        if (day.isEmpty()) {
            return List.of();
        }
        Evaluate run = new Evaluate(car, setup, at, day);
        Optional<OperatingPoint> strongest = strongest(run.armed());
        int count = Math.min(setup.passes().count(), day.get().passes().passes().size());
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> run.pass(day.get(), strongest, number))
                .toList();
    }

    /**
     * The limits with the nitrous closed: driving without it, armed outside its speeds, and just after it has closed. They know neither
     * bottle nor jets.
     *
     * @param car what is built
     * @param setup what is set, with jets
     * @param at what the world is
     * @return the limits of those operating points, and the one of speeds without an answer
     */
    public static Limits closed(Car car, Setup setup, Case at) {
        Evaluate run = new Evaluate(car, setup, at, Optional.empty());
        double[] closed = run.closedSpeeds();
        List<OperatingPoint> off = run.off();
        List<OperatingPoint> armed = run.armed(closed, Mode.ARMED);
        Unanswered unanswered = run.unanswered(off);
        unanswered.look(closed, armed, run::armedPlenum, Mode.ARMED);
        return run.limits(off, armed, run.closing().stream().toList(), unanswered.limit(at.name()));
    }

    /**
     * The bottle over the passes that the setup asks for, without an operating point.
     *
     * @param bottles bottles shared with other cars and setups
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @return the bottle; empty without nitrous
     */
    public static Optional<BottleOutcome> bottle(Bottles bottles, Car car, Setup setup, Case at) {
        return bottles.day(car, setup, at)
                .map(d -> new BottleOutcome(
                        DayRules.of(car, setup, at.name(), d, 0),
                        Day.end(d.last(setup.passes().count()))));
    }

    /** A day is run for an operating point only where the bottle's state is what it leaves. */
    private static Optional<Day> dayForBottle(Car car, Setup setup, Case at) {
        return at.bottle().moment() == BottleState.Moment.END_OF_LAST_PASS
                ? new Bottles().day(car, setup, at)
                : Optional.empty();
    }

    private FluidState bottle() {
        BottleState state = at.bottle();
        return switch (state.moment()) {
            case GIVEN -> NitrousOxide.saturatedLiquid(state.temperature());
            case FIRST_OPENING -> charged().outlet();
            case END_OF_LAST_PASS ->
                day.map(d -> Day.end(d.last(setup.passes().count())))
                        .orElseGet(() -> charged().outlet());
        };
    }

    private Charge charged() {
        return car.bottle()
                .vessel()
                .charged(setup.bottle().charge(), setup.bottle().startTemperature());
    }

    private Outcome outcome() {
        Outcome judged = judged();
        Optional<PassOutcome> pass = day.map(d -> pass(d, strongest(judged.armed())));
        return new Outcome(car, setup, at, judged.off(), judged.armed(), judged.changeover(), pass, judged.limits());
    }

    private Outcome judged() {
        List<OperatingPoint> off = off();
        List<OperatingPoint> armed = setup.jets().isEmpty() ? List.of() : armed();
        List<OperatingPoint> changeover = setup.jets().isEmpty() ? List.of() : changeover();
        return new Outcome(
                car,
                setup,
                at,
                off,
                armed,
                changeover,
                Optional.empty(),
                limits(off, armed, changeover, answered(off, armed)));
    }

    private Outcome open() {
        double[] speeds = Speeds.withNitrous(car, setup.arming());
        List<OperatingPoint> on = armed(speeds, Mode.NITROUS);
        List<OperatingPoint> opening = opening().stream().toList();
        Unanswered unanswered = new Unanswered(model);
        unanswered.look(speeds, on, this::armedPlenum, Mode.NITROUS);
        Limits limits = limits(List.of(), on, opening, unanswered.limit(at.name()));
        return new Outcome(car, setup, at, List.of(), on, opening, Optional.empty(), limits);
    }

    /** What has no operating point has no limit to break: it is told by a limit of its own. */
    private Limit answered(List<OperatingPoint> off, List<OperatingPoint> armed) {
        Unanswered unanswered = unanswered(off);
        if (setup.jets().isPresent()) {
            unanswered.look(closedSpeeds(), armed, this::armedPlenum, Mode.ARMED);
            unanswered.look(Speeds.withNitrous(car, setup.arming()), armed, this::armedPlenum, Mode.NITROUS);
        }
        return unanswered.limit(at.name());
    }

    private Unanswered unanswered(List<OperatingPoint> off) {
        Unanswered unanswered = new Unanswered(model);
        unanswered.look(
                Speeds.all(car, setup.arming()),
                off,
                rpm -> plenum(setup.boost().off().at(rpm)),
                Mode.BOOST_ALONE);
        return unanswered;
    }

    /** Speeds at which the nitrous stays closed. */
    private double[] closedSpeeds() {
        return DoubleStream.of(Speeds.all(car, setup.arming()))
                .filter(rpm -> !setup.arming().contains(rpm))
                .toArray();
    }

    private double plenum(double gauge) {
        return at.air().pressure() + gauge;
    }

    private double armedPlenum(double rpm) {
        return plenum(setup.boost().armed().at(rpm));
    }

    private List<OperatingPoint> off() {
        return DoubleStream.of(Speeds.all(car, setup.arming()))
                .parallel()
                .mapToObj(rpm -> held.point(rpm, plenum(setup.boost().off().at(rpm)), Mode.BOOST_ALONE))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<OperatingPoint> armed() {
        List<OperatingPoint> points = new ArrayList<>(armed(closedSpeeds(), Mode.ARMED));
        points.addAll(armed(Speeds.withNitrous(car, setup.arming()), Mode.NITROUS));
        points.sort(Comparator.comparingDouble(OperatingPoint::rpm));
        return points;
    }

    private List<OperatingPoint> armed(double[] speeds, Mode mode) {
        return DoubleStream.of(speeds)
                .parallel()
                .mapToObj(rpm -> held.point(rpm, armedPlenum(rpm), mode))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<OperatingPoint> armed(double rpm) {
        boolean open = setup.jets().isPresent() && setup.arming().contains(rpm);
        return held.point(rpm, armedPlenum(rpm), open ? Mode.NITROUS : Mode.ARMED);
    }

    /** Opening at the lowest speed, and after a shift anywhere in the window; closing at the highest speed. */
    private List<OperatingPoint> changeover() {
        return Stream.concat(opening().stream(), closing().stream()).toList();
    }

    private Optional<OperatingPoint> opening() {
        return DoubleStream.of(Speeds.withNitrous(car, setup.arming()))
                .boxed()
                .findFirst()
                .flatMap(low -> held.point(low, armedPlenum(low) + setup.boost().tolerance(), Mode.OPENING));
    }

    private Optional<OperatingPoint> closing() {
        return DoubleStream.of(Speeds.withNitrous(car, setup.arming()))
                .boxed()
                .reduce((low, high) -> high)
                .flatMap(high -> held.point(high, armedPlenum(high), Mode.CLOSING));
    }

    private static Optional<OperatingPoint> strongest(List<OperatingPoint> armed) {
        return armed.stream()
                .filter(point -> point.mode() == Mode.NITROUS)
                .max(Comparator.comparingDouble(OperatingPoint::wheelPower));
    }

    private PassOutcome pass(Day d, Optional<OperatingPoint> strongest) {
        int number = at.bottle().moment() == BottleState.Moment.END_OF_LAST_PASS
                ? Math.min(setup.passes().count(), d.passes().passes().size())
                : 1;
        return pass(d, strongest, number);
    }

    private PassOutcome pass(Day d, Optional<OperatingPoint> strongest, int number) {
        Pass pass = d.last(number);
        List<PassOutcome.Moment> moments = new ArrayList<>();
        for (Sample sample : thinned(pass.history().moments())) {
            if (sample.liquidMass() <= 0) {
                break;
            }
            Optional<OperatingPoint> then =
                    strongest.flatMap(point -> at(point, Day.entering(pass, sample), sample.massFlow()));
            moments.add(new PassOutcome.Moment(
                    sample.time(),
                    sample.temperature(),
                    sample.pressure(),
                    sample.liquidMass(),
                    sample.massFlow(),
                    then.map(OperatingPoint::lambda).orElse(Double.NaN),
                    then.map(OperatingPoint::wheelPower).orElse(Double.NaN)));
        }
        double seconds = setup.passes().seconds();
        return new PassOutcome(
                number,
                moments,
                pass.seconds(),
                pass.massUsed(),
                pass.end(),
                d.passes().whole(),
                d.given(seconds));
    }

    /** The integrator's own steps, thinned to what a chart shows. */
    private static List<Sample> thinned(List<Sample> all) {
        double step = all.get(all.size() - 1).time() / MOMENTS;
        List<Sample> some = new ArrayList<>();
        for (Sample sample : all) {
            if (some.isEmpty() || sample.time() >= some.get(some.size() - 1).time() + step) {
                some.add(sample);
            }
        }
        if (some.get(some.size() - 1).time() < all.get(all.size() - 1).time()) {
            some.add(all.get(all.size() - 1));
        }
        return some;
    }

    /** A point with what the bottle gives in another moment. */
    private Optional<OperatingPoint> at(OperatingPoint point, FluidState entering, double massFlow) {
        FeedFlow feed = point.nitrous().times(massFlow / point.nitrous().massFlow());
        try {
            return Optional.of(model.withBottle(entering)
                    .at(point.rpm(), point.plenumPressure(), Mode.NITROUS, feed, point.nitrousFuel()));
        } catch (NoAnswerException none) {
            return Optional.empty();
        }
    }

    private Limits limits(
            List<OperatingPoint> off, List<OperatingPoint> armed, List<OperatingPoint> changeover, Limit answered) {
        List<OperatingPoint> points = new ArrayList<>(off);
        points.addAll(armed);
        points.addAll(changeover);
        List<Limit> all = new ArrayList<>();
        all.add(answered);
        all.addAll(PointLimits.closest(car, points, at.name()));
        day.ifPresent(d -> all.addAll(DayRules.of(car, setup, at.name(), d, fuelVolume(armed))));
        return new Limits(all);
    }

    private double fuelVolume(List<OperatingPoint> armed) {
        double density = model.nitrousFuelDensity();
        return armed.stream()
                        .mapToDouble(point -> point.nitrousFuel().massFlow())
                        .max()
                        .orElse(0)
                / density;
    }
}
