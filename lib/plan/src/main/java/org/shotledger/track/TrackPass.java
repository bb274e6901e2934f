package org.shotledger.track;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.car.Chassis;
import org.shotledger.car.Vehicle;
import org.shotledger.delivery.Grip;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Outcome;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.pass.Arming;
import org.shotledger.pass.DrivenPass;
import org.shotledger.pass.NitrousSupply;
import org.shotledger.pass.PassMark;
import org.shotledger.pass.PassResult;
import org.shotledger.pass.PassRow;
import org.shotledger.pass.Transmission;
import org.shotledger.plan.Plan;
import org.shotledger.setup.PassPlan;
import org.shotledger.setup.Setup;
import org.shotledger.workshop.Track;

/**
 * A pass in time: the car of an outcome along a track with that outcome's own setup.
 *
 * <p>Torque, mixture and peak pressure are operating points of the model that judged the setup, the bottle is its emptying, voltage and
 * with it the fuel pumps are those of its case. Known errors besides those of {@link DrivenPass#run}: the plenum fills at once, the wastegate
 * and the coasting shaft are time constants of the trade, the bottle does not recover while a shift closes its valves.
 *
 * @param outcome what was run, its case and setup
 * @param track the track
 * @param result marks, seconds under nitrous and the energy balance
 * @param moments the pass over time
 * @param knownNitrous nitrous oxide up to which the bottle was worked out, kg; beyond it its last state holds on
 */
public record TrackPass(Outcome outcome, Track track, PassResult result, List<Moment> moments, double knownNitrous) {
    /** Time between rows of the trace, s: our choice, what a chart shows. */
    private static final double STEP = 0.05;
    /** A bottle is worked out for this long at most, s: our choice, longer than any pass on a full bottle. */
    private static final double LONGEST = 60;

    public TrackPass {
        moments = List.copyOf(moments);
    }

    /**
     * One moment of a pass.
     *
     * @param time since the car moved, s
     * @param distance since the car moved, m
     * @param speed m/s
     * @param rpm engine speed, rev/min
     * @param gear counted from 1
     * @param power at the flywheel, W
     * @param boost plenum pressure above ambient, Pa
     * @param shaft speed of the turbocharger, rev/min
     * @param nitrous share of the shot, 0 to 1
     * @param used nitrous oxide since the start, kg
     * @param bottlePressure Pa absolute; NaN without nitrous
     * @param lambda mixture; NaN while a shift cuts the torque
     * @param peakPressure in the cylinders, Pa absolute; NaN while a shift cuts the torque
     * @param fuel both fuels since the start, kg
     * @param held whether grip or the front wheels hold the engine back
     */
    public record Moment(
            double time,
            double distance,
            double speed,
            double rpm,
            int gear,
            double power,
            double boost,
            double shaft,
            double nitrous,
            double used,
            double bottlePressure,
            double lambda,
            double peakPressure,
            double fuel,
            boolean held) {}

    /**
     * The pass of a plan in the case of its target, on the track of its job.
     *
     * @param plan the plan
     * @return the pass
     * @throws IllegalArgumentException when the sheet has no section "vehicle", its tyre size cannot be read, or the car does not arrive
     */
    public static TrackPass of(Plan plan) {
        return of(plan.stated(), plan.job().workshop().track());
    }

    /**
     * The pass of an outcome on a track.
     *
     * @param outcome what was run
     * @param track the track
     * @return the pass
     * @throws IllegalArgumentException as above
     */
    public static TrackPass of(Outcome outcome, Track track) {
        return prepared(outcome).on(track);
    }

    /**
     * Works out what passes of one outcome share, to run several.
     *
     * @param outcome what was run
     * @return its engine and bottle, to be asked for passes
     */
    public static Prepared prepared(Outcome outcome) {
        return new Prepared(outcome);
    }

    /** Engine and bottle of one outcome, worked out once. */
    public static final class Prepared {
        private final Outcome outcome;
        private final EngineField field;
        private final NitrousSupply bottle;
        /** The same with the bottle emptied, made when a pass first asks for it. */
        private Prepared whole;

        private Prepared(Outcome outcome) {
            this(outcome, EngineField.of(outcome), outcome);
        }

        private Prepared(Outcome outcome, EngineField field, Outcome emptied) {
            this.outcome = outcome;
            this.field = field;
            this.bottle = BottleOverMass.of(emptied, field);
        }

        /** The bottle emptied until its liquid or its pressure ends, where a pass takes longer than the plan counts. */
        private Prepared withWholeBottle() {
            if (whole == null) {
                Setup longer = outcome.setup()
                        .withPasses(new PassPlan(outcome.setup().passes().count(), LONGEST));
                whole = new Prepared(outcome, field, Evaluate.of(outcome.car(), longer, outcome.at()));
            }
            return whole;
        }

        /**
         * Runs a pass.
         *
         * @param track the track
         * @return the pass
         * @throws IllegalArgumentException when the sheet has no section "vehicle", its tyre size cannot be read, or the car does not
         *     arrive
         */
        public TrackPass on(Track track) {
            TrackPass pass = run(track);
            return pass.bottleLasts() ? pass : withWholeBottle().run(track);
        }

        private TrackPass run(Track track) {
            Vehicle car = outcome.car()
                    .vehicle()
                    .orElseThrow(
                            () -> new IllegalArgumentException(
                                    "The job sheet has no section \"vehicle\"; a pass in time needs mass, drag area, gears and tyres."));
            DrivenPass pass = new DrivenPass(
                    body(car, track.grip()),
                    transmission(outcome, car),
                    new FieldEngine(
                            field, car.chassis().turboInertia(), car.chassis().launchRpm()),
                    arming(outcome.setup(), track.arming()),
                    bottle,
                    track.strip(outcome.at().air().density()),
                    track.startSpeed(),
                    STEP);
            PassResult result = pass.run();
            double known = bottle instanceof BottleOverMass b ? b.known() : Double.POSITIVE_INFINITY;
            return new TrackPass(outcome, track, result, moments(result), known);
        }

        private List<Moment> moments(PassResult result) {
            List<Moment> list = new ArrayList<>();
            double fuel = 0;
            double before = 0;
            double flowBefore = 0;
            for (PassRow row : result.trace()) {
                boolean drives = row.power() > 0;
                double strength = row.nitrous() * bottle.strength(row.nitrousUsed());
                double plenum = field.plenum(row.rpm(), row.turbo(), strength);
                double flow = drives ? field.fuel(row.rpm(), plenum, row.nitrous()) : 0;
                fuel += (flow + flowBefore) / 2 * (row.time() - before);
                before = row.time();
                flowBefore = flow;
                double shift =
                        bottle instanceof BottleOverMass b ? row.nitrous() * b.lambdaChange(row.nitrousUsed()) : 0;
                list.add(new Moment(
                        row.time(),
                        row.distance(),
                        row.speed(),
                        row.rpm(),
                        row.gear(),
                        row.power(),
                        plenum - field.ambient,
                        row.turbo() * 30 / Math.PI,
                        row.nitrous(),
                        row.nitrousUsed(),
                        bottle instanceof BottleOverMass b ? b.pressure(row.nitrousUsed()) : Double.NaN,
                        drives ? field.lambda(row.rpm(), plenum, row.nitrous()) + shift : Double.NaN,
                        drives ? field.peak(row.rpm(), plenum, strength) : Double.NaN,
                        fuel,
                        row.held()));
            }
            return list;
        }
    }

    private static org.shotledger.pass.RollingCar body(Vehicle car, double grip) {
        Chassis chassis = car.chassis();
        return new org.shotledger.pass.RollingCar(
                car.mass(),
                car.dragArea(),
                car.rollingResistance(),
                chassis.axle(),
                chassis.drivenShare(),
                chassis.wheelbase(),
                chassis.centreHeight(),
                Double.isNaN(chassis.tyreRadius()) ? Grip.radius(car.tyres()) : chassis.tyreRadius(),
                grip,
                chassis.drivenInertia(),
                chassis.freeInertia());
    }

    private static Transmission transmission(Outcome outcome, Vehicle vehicle) {
        Car car = outcome.car();
        Chassis chassis = vehicle.chassis();
        double highest = car.engine().highestRpm();
        double leave = Double.isNaN(chassis.shiftRpm())
                ? Math.min(outcome.setup().arming().rpmHigh(), highest)
                : Math.min(chassis.shiftRpm(), highest);
        List<Double> shifts =
                new ArrayList<>(Collections.nCopies(vehicle.gears().size() - 1, leave));
        shifts.add(highest);
        return new Transmission(
                vehicle.gears(),
                vehicle.finalDrive(),
                shifts,
                chassis.shiftTime(),
                car.driveline(),
                chassis.engineInertia(),
                Math.min(chassis.launchRpm(), leave));
    }

    private static Arming arming(Setup setup, Track.Coming coming) {
        if (setup.jets().isEmpty()) {
            return Arming.NEVER;
        }
        ActivationWindow window = setup.arming();
        double back = Math.min(coming.hysteresis(), (window.rpmHigh() - window.rpmLow()) / 4);
        return new Arming(
                window.rpmLow(),
                window.rpmLow() - back,
                window.rpmHigh() - back,
                window.rpmHigh(),
                0,
                -1,
                -1,
                coming.gear(),
                coming.delay(),
                coming.startShare(),
                coming.ramp(),
                true);
    }

    /**
     * Time and speed at the finish.
     *
     * @return the last mark
     */
    public PassMark finish() {
        return result.finish();
    }

    /**
     * Seconds under nitrous, what a plan is to count for a pass.
     *
     * @return s
     */
    public double nitrousSeconds() {
        return result.nitrousSeconds();
    }

    /**
     * Whether the bottle lasts to the finish.
     *
     * @return false where the pass takes more than the bottle was worked out for
     */
    public boolean bottleLasts() {
        return result.nitrousUsed() <= knownNitrous;
    }

    /**
     * The moment at which a figure is greatest.
     *
     * @param figure of a moment; not-a-number is passed over
     * @return the moment; empty where the figure is nowhere a number
     */
    public Optional<Moment> highest(java.util.function.ToDoubleFunction<Moment> figure) {
        return moments.stream()
                .filter(moment -> !Double.isNaN(figure.applyAsDouble(moment)))
                .max(java.util.Comparator.comparingDouble(figure));
    }
}
