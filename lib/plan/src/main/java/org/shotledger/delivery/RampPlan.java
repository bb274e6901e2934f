package org.shotledger.delivery;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.car.Vehicle;
import org.shotledger.curve.Bracket;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.nitrous.Pulsing.Pulse;
import org.shotledger.units.Require;

/**
 * Makes ramps that hold a torque and a grip limit, from the boost of an outcome and a checked pulse.
 *
 * <p>Each step takes the smallest share that its whole width allows, so the limit is kept inside the step too.
 */
public final class RampPlan {
    /** Share of the shot to which a ramp is found, far finer than a controller sets it: 2 to the power of -14. */
    private static final double CLOSE = 0x1p-14;
    /** A ramp that takes longer is no ramp any more, s: our choice. */
    private static final double LONGEST = 30;

    private final Outcome outcome;
    private final PointModel model;
    private final PulseCheck pulse;
    private final double torqueLimit;
    private final Grip grip;
    private final List<Double> speeds;

    private RampPlan(Outcome outcome, PulseCheck pulse, double torqueLimit, Grip grip) {
        this.outcome = outcome;
        this.model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        this.pulse = pulse;
        this.torqueLimit = torqueLimit;
        this.grip = grip;
        this.speeds = outcome.withNitrous().stream().map(OperatingPoint::rpm).toList();
    }

    /**
     * Begins a plan.
     *
     * @param outcome what the setup does without pulsing, at two engine speeds with nitrous at least
     * @param pulse what the solenoids can do
     * @param torqueLimit largest torque at the crankshaft, N m, positive
     * @param grip grip of the driven axle
     * @return the plan
     * @throws IllegalArgumentException when the pulse has no usable duty, or the nitrous is on at no two speeds
     */
    public static RampPlan of(Outcome outcome, PulseCheck pulse, double torqueLimit, Grip grip) {
        Require.positive("torque limit of the ramp", torqueLimit, "N m");
        if (Double.isNaN(pulse.leastShare())) {
            throw new IllegalArgumentException(
                    "No duty of the solenoids is usable at " + pulse.pulsing().frequency()
                            + " Hz; pulse slower, allow more error of lambda, or use faster valves.");
        }
        if (outcome.withNitrous().size() < 2) {
            throw new IllegalArgumentException(
                    "The nitrous of " + outcome.car().name()
                            + " is on at fewer than two engine speeds; a ramp needs jets and arming conditions within the breathing table.");
        }
        return new RampPlan(outcome, pulse, torqueLimit, grip);
    }

    /**
     * A ramp over engine speed in one gear.
     *
     * @param gear gear, 1 for the first
     * @return the ramp over the engine speeds with nitrous
     */
    public Ramp overRpm(int gear) {
        double allowed = allowed(gear);
        List<RampStep> steps = new ArrayList<>();
        for (int i = 0; i + 1 < speeds.size(); i++) {
            steps.add(step(speeds.get(i), speeds.get(i + 1), speeds.subList(i, i + 2), allowed, gear));
        }
        return new Ramp(Ramp.Axis.RPM, gear, pulse.pulsing().frequency(), steps);
    }

    /**
     * One step for each gear, held over all engine speeds with nitrous.
     *
     * @return the ramp over the gears of the car
     */
    public Ramp overGears() {
        List<RampStep> steps = new ArrayList<>();
        for (int gear = 1; gear <= car().gears().size(); gear++) {
            steps.add(step(gear, gear, speeds, allowed(gear), gear));
        }
        return new Ramp(Ramp.Axis.GEAR, 0, pulse.pulsing().frequency(), steps);
    }

    /**
     * A ramp over time in one gear, begun when the engine reaches the lower end of its arming conditions. The engine speed
     * follows from the force of the ramp itself, drag and rolling resistance; spin-up of wheels and engine is left out, so a
     * real car gains speed a little later.
     *
     * @param gear gear, 1 for the first
     * @param width width of a step, s, at least 0.05
     * @return the ramp until the upper end of them, at most 30 s
     */
    public Ramp overTime(int gear, double width) {
        if (!(width >= 0.05 && width <= 5)) {
            throw new IllegalArgumentException("A step of the ramp is " + width + " s wide; allowed is 0.05 to 5 s.");
        }
        double allowed = allowed(gear);
        GearMotion motion = new GearMotion(
                car(),
                gear,
                outcome.car().driveline(),
                grip.tyreRadius(),
                outcome.at().air().density());
        double rpm = speeds.get(0);
        double last = speeds.get(speeds.size() - 1);
        List<RampStep> steps = new ArrayList<>();
        for (double time = 0; time < LONGEST && rpm < last; time += width) {
            double ahead = motion.after(rpm, Math.min(full(rpm), allowed), width);
            RampStep step = step(time, time + width, List.of(rpm, Math.min(ahead, last)), allowed, gear);
            steps.add(step);
            rpm = motion.after(rpm, torque(rpm, step.share()), width);
        }
        return new Ramp(Ramp.Axis.TIME, gear, pulse.pulsing().frequency(), steps);
    }

    private RampStep step(double from, double to, List<Double> within, double allowed, int gear) {
        double share = 1;
        for (double rpm : within) {
            share = Math.min(share, share(rpm, allowed));
        }
        Pulse snapped = snapped(share);
        double torque = 0;
        double lambda = 0;
        for (double rpm : within) {
            OperatingPoint point = at(rpm, snapped.nitrousShare(), snapped.fuelShare());
            torque = Math.max(torque, point.crankTorque());
            lambda = Math.max(lambda, point.lambda());
        }
        return new RampStep(
                from,
                to,
                snapped.nitrousDuty(),
                snapped.fuelDuty(),
                snapped.nitrousShare(),
                torque,
                allowed,
                lambda,
                reason(share, snapped.nitrousShare(), torque, allowed, gear));
    }

    private String reason(double wanted, double given, double torque, double allowed, int gear) {
        if (given == 1) {
            return "nothing: the shot in full";
        }
        String limit = allowed < torqueLimit ? "grip in gear " + gear : "torque";
        if (torque > allowed) {
            return limit + ", broken without nitrous already: take boost back";
        }
        if (wanted - given < 0.03) {
            return limit;
        }
        return limit
                + (given == 0
                        ? "; the valves make no pulse so short"
                        : "; the valves make no longer pulse short of open");
    }

    /** The largest usable share not above the wanted one, in steps of a per cent. */
    private Pulse snapped(double share) {
        Pulse best = new Pulse(0, 0, 0, 0);
        for (PulsePoint p : pulse.points()) {
            double duty = p.pulse().nitrousDuty();
            boolean usable = p.pulse().nitrousShare() == 1 || (duty >= pulse.leastDuty() && duty <= pulse.mostDuty());
            if (usable && Math.max(p.pulse().nitrousShare(), p.pulse().fuelShare()) <= share + 1e-9) {
                best = p.pulse();
            }
        }
        return best;
    }

    /** The largest share of the shot whose torque is allowed; torque rises with the share. */
    private double share(double rpm, double allowed) {
        if (full(rpm) <= allowed) {
            return 1;
        }
        return Bracket.edge(share -> torque(rpm, share) <= allowed, 0, 1, CLOSE).inside();
    }

    private double full(double rpm) {
        return torque(rpm, 1);
    }

    private double torque(double rpm, double share) {
        return at(rpm, share, share).crankTorque();
    }

    private OperatingPoint at(double rpm, double nitrousShare, double fuelShare) {
        double plenum = plenum(rpm);
        if (nitrousShare == 0 && fuelShare == 0) {
            return model.at(rpm, plenum, Mode.ARMED);
        }
        return model.at(
                rpm,
                plenum,
                Mode.NITROUS,
                model.feed(plenum).times(nitrousShare),
                model.nitrousFuel(plenum).times(fuelShare));
    }

    /** Plenum pressure of the outcome, straight between its points. */
    private double plenum(double rpm) {
        List<OperatingPoint> points = outcome.withNitrous();
        int i = 1;
        while (i < points.size() - 1 && points.get(i).rpm() < rpm) {
            i++;
        }
        OperatingPoint low = points.get(i - 1);
        OperatingPoint high = points.get(i);
        double t = Math.min(1, Math.max(0, (rpm - low.rpm()) / (high.rpm() - low.rpm())));
        return low.plenumPressure() + t * (high.plenumPressure() - low.plenumPressure());
    }

    private double allowed(int gear) {
        List<Double> gears = car().gears();
        if (gear < 1 || gear > gears.size()) {
            throw new IllegalArgumentException(
                    "The ramp asks for gear " + gear + "; the car has gears 1 to " + gears.size() + ".");
        }
        double ratio = gears.get(gear - 1) * car().finalDrive();
        return Math.min(torqueLimit, grip.crankTorque(ratio, outcome.car().driveline()));
    }

    private Vehicle car() {
        return outcome.car()
                .vehicle()
                .orElseThrow(() -> new IllegalArgumentException("The sheet of "
                        + outcome.car().name() + " has no vehicle; add its mass, gears, final drive and tyres."));
    }
}
