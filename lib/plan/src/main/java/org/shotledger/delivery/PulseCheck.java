package org.shotledger.delivery;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.nitrous.Pulsing;
import org.shotledger.nitrous.Pulsing.Pulse;

/**
 * A pulsed shot over its duty, and the duties that may be used.
 *
 * <p>Every figure is the average over a pulse. A pulse at 20 Hz lasts several engine cycles, so a cylinder sees the shot come
 * and go; only the room between nozzle and valve evens that out. Hold-up and inertia of the lines are left out.
 *
 * @param pulsing the solenoids and their frequency
 * @param separate true when each solenoid has its own duty so that both deliver the same share
 * @param points by delivered nitrous share, ascending; the last is the shot in full
 * @param allowedError largest allowed relative error of lambda, spread of the delays included
 * @param leastDuty smallest usable nitrous duty; NaN when there is none
 * @param mostDuty largest usable nitrous duty short of standing open; NaN when there is none
 * @param leastShare share of the nitrous flow delivered there; NaN when there is none
 * @param mostShare share of the nitrous flow delivered at the largest usable duty; NaN when there is none
 * @param boundBy what sets the smallest duty: {@code "delays"}, {@code "mixture"} or {@code "spread of the delays"}
 */
public record PulseCheck(
        Pulsing pulsing,
        boolean separate,
        List<PulsePoint> points,
        double allowedError,
        double leastDuty,
        double mostDuty,
        double leastShare,
        double mostShare,
        String boundBy) {
    /** Largest allowed relative error of lambda: common practice, no source. */
    public static final double USUAL_ERROR = 0.02;
    /** Spread of a solenoid's delays with voltage, temperature and wear, s: common practice, no source. */
    public static final double USUAL_SPREAD = 0.001;

    /** Shares of the shot that are tried: whole per cents. */
    private static final int STEPS = 100;

    public PulseCheck {
        points = List.copyOf(points);
    }

    /**
     * Checks a shot at one engine speed.
     *
     * @param outcome the outcome that the operating point is part of
     * @param point the shot in full at that speed, nitrous on
     * @param pulsing the solenoids and their frequency
     * @param separate whether the controller gives each solenoid its own duty
     * @param spread how far each solenoid's delays may be off, s, not negative
     * @param allowedError largest allowed relative error of lambda, positive
     * @return the check
     */
    public static PulseCheck of(
            Outcome outcome,
            OperatingPoint point,
            Pulsing pulsing,
            boolean separate,
            double spread,
            double allowedError) {
        if (!(spread >= 0 && spread < 0.1)) {
            throw new IllegalArgumentException(
                    "The spread of the solenoids' delays is " + spread + " s; allowed is 0 to 0.1 s.");
        }
        if (!(allowedError > 0 && allowedError < 0.5)) {
            throw new IllegalArgumentException(
                    "The allowed error of lambda is " + allowedError + "; allowed is above 0, below 0.5.");
        }
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        Mixer mixer = (n, f) -> model.at(
                point.rpm(),
                point.plenumPressure(),
                Mode.NITROUS,
                point.nitrous().times(n),
                point.nitrousFuel().times(f));
        List<PulsePoint> points = new ArrayList<>();
        for (int i = 1; i <= STEPS; i++) {
            Pulse pulse = pulse(pulsing, separate, (double) i / STEPS);
            if (pulse.nitrousShare() > 0 || pulse.fuelShare() > 0) {
                points.add(point(pulsing, pulse, spread, mixer));
            }
        }
        return usable(pulsing, separate, points, allowedError);
    }

    private interface Mixer {
        OperatingPoint at(double nitrousShare, double fuelShare);
    }

    /** With one output the step is the duty; with two it is the share, moved into what both can deliver. */
    private static Pulse pulse(Pulsing pulsing, boolean separate, double step) {
        if (!separate) {
            return pulsing.together(step);
        }
        boolean deliverable = step == 1 || (step >= pulsing.leastShare() && step <= pulsing.mostShare());
        return deliverable ? pulsing.matched(step) : new Pulse(0, 0, 0, 0);
    }

    private static PulsePoint point(Pulsing pulsing, Pulse pulse, double spread, Mixer mixer) {
        OperatingPoint average = mixer.at(pulse.nitrousShare(), pulse.fuelShare());
        double wanted = mixer.at(pulse.nitrousShare(), pulse.nitrousShare()).lambda();
        return new PulsePoint(
                pulse,
                average.lambda(),
                wanted,
                lambda(pulsing.leaner(spread), pulse, mixer),
                lambda(pulsing.leaner(-spread), pulse, mixer),
                average.wheelPower(),
                average.crankTorque());
    }

    private static double lambda(Pulsing real, Pulse pulse, Mixer mixer) {
        return mixer.at(
                        real.nitrous().deliveredFraction(pulse.nitrousDuty(), real.frequency()),
                        real.fuel().deliveredFraction(pulse.fuelDuty(), real.frequency()))
                .lambda();
    }

    /** The usable range hangs together below the shot in full: it ends at the first duty that breaks the rule. */
    private static PulseCheck usable(Pulsing pulsing, boolean separate, List<PulsePoint> points, double allowedError) {
        PulsePoint least = null;
        PulsePoint most = null;
        String boundBy = "delays";
        for (int i = points.size() - 1; i >= 0; i--) {
            PulsePoint p = points.get(i);
            boolean pulses = both(p.pulse(), 0)
                    && p.pulse().nitrousShare() < 1
                    && p.pulse().fuelShare() < 1;
            if (pulses && p.worstError() <= allowedError) {
                most = most == null ? p : most;
                least = p;
            } else if (least != null) {
                boundBy = boundBy(pulses, p.error(), allowedError);
                break;
            }
        }
        return new PulseCheck(
                pulsing,
                separate,
                points,
                allowedError,
                least == null ? Double.NaN : least.pulse().nitrousDuty(),
                most == null ? Double.NaN : most.pulse().nitrousDuty(),
                least == null ? Double.NaN : least.pulse().nitrousShare(),
                most == null ? Double.NaN : most.pulse().nitrousShare(),
                boundBy);
    }

    private static String boundBy(boolean pulses, double error, double allowedError) {
        if (!pulses) {
            return "delays";
        }
        return Math.abs(error) > allowedError ? "mixture" : "spread of the delays";
    }

    private static boolean both(Pulse pulse, double above) {
        return pulse.nitrousShare() > above && pulse.fuelShare() > above;
    }
}
