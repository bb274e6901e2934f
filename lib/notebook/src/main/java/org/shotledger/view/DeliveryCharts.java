package org.shotledger.view;

import static org.shotledger.view.Rows.column;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.shotledger.chart.ChartPicture;
import org.shotledger.chart.Plot;
import org.shotledger.chart.Scale;
import org.shotledger.delivery.PulseCheck;
import org.shotledger.delivery.PulsePoint;
import org.shotledger.delivery.Ramp;
import org.shotledger.delivery.RampStep;
import org.shotledger.limits.Side;
import org.shotledger.spread.CylinderSpread;
import org.shotledger.stepup.Shot;
import org.shotledger.stepup.StepUp;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** Pulsed delivery, ramps, the spread of the cylinders and the step-up plan as charts. */
public final class DeliveryCharts {
    private static final int POINTS = 161;

    private DeliveryCharts() {}

    /**
     * What the valves' delays do to the mixture over the duty.
     *
     * @param check the check of a shot on one output
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(PulseCheck check, UnitSystem system) {
        List<PulsePoint> points = check.points().stream()
                .filter(p -> p.pulse().nitrousShare() > 0 && p.pulse().nitrousShare() < 1)
                .filter(p -> p.pulse().fuelShare() > 0 && p.pulse().fuelShare() < 1)
                .toList();
        double[] duty = column(points, p -> p.pulse().nitrousDuty());
        Plot plot = Plot.of(
                        "pulse-" + (check.separate() ? "two" : "one"),
                        "Mixture of a pulsed shot, "
                                + (check.separate() ? "a duty for each valve" : "one duty for both valves"),
                        "How far the mixture lies from the wanted one at each duty, as an average over a pulse; the band is"
                                + " the spread of the delays.",
                        new Scale("Duty of the nitrous solenoid", QuantityKind.FRACTION, system),
                        new Scale("Lambda", QuantityKind.RATIO, system))
                .band(
                        "spread of the delays",
                        duty,
                        column(points, PulsePoint::richest),
                        column(points, PulsePoint::leanest))
                .line("wanted: fuel in step with nitrous", duty, column(points, PulsePoint::wanted))
                .line("delivered", duty, column(points, PulsePoint::lambda));
        if (!Double.isNaN(check.leastDuty())) {
            plot.markAt("least usable", check.leastDuty()).markAt("most usable", check.mostDuty());
        }
        return plot.picture();
    }

    /**
     * The torque of a ramp against what is allowed.
     *
     * @param ramp a ramp over engine speed or time
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(Ramp ramp, UnitSystem system) {
        Scale axis = ramp.axis() == Ramp.Axis.TIME
                ? new Scale("Time since opening", QuantityKind.TIME, system)
                : new Scale("Engine speed", QuantityKind.ROTATION, system);
        double[] x = stairs(ramp.steps(), null);
        return Plot.of(
                        "ramp-" + ramp.axis().name().toLowerCase(java.util.Locale.ROOT),
                        "Torque of the ramp in gear " + ramp.gear(),
                        "The stepped share of the shot keeps the torque under what is allowed.",
                        axis,
                        new Scale("Crank torque", QuantityKind.TORQUE, system))
                .line("largest within the step", x, stairs(ramp.steps(), RampStep::crankTorque))
                .total("allowed", x, stairs(ramp.steps(), RampStep::allowedTorque))
                .reach(Double.NaN, 0)
                .rightAxis(new Scale("Share of the shot", QuantityKind.FRACTION, system))
                .rightLine("share", x, stairs(ramp.steps(), RampStep::share))
                .picture();
    }

    /** Each step twice, at its two ends; without a value the ends themselves. */
    private static double[] stairs(List<RampStep> steps, ToDoubleFunction<RampStep> value) {
        double[] at = new double[2 * steps.size()];
        for (int i = 0; i < steps.size(); i++) {
            RampStep step = steps.get(i);
            at[2 * i] = value == null ? step.from() : value.applyAsDouble(step);
            at[2 * i + 1] = value == null ? step.to() : value.applyAsDouble(step);
        }
        return at;
    }

    /**
     * How likely a cylinder is leaner than a lambda, for several ways to supply the cylinders.
     *
     * @param spreads the spreads of one operating point
     * @param leanLimit lean limit of the builder
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(List<CylinderSpread> spreads, double leanLimit, UnitSystem system) {
        double low = spreads.stream()
                .mapToDouble(CylinderSpread::richestLikely)
                .min()
                .orElseThrow();
        double high = spreads.stream()
                .mapToDouble(CylinderSpread::leanestLikely)
                .max()
                .orElseThrow();
        double room = (high - low) / 2;
        double[] lambda = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            lambda[i] = low - room + (high - low + 2 * room) * i / (POINTS - 1);
        }
        Plot plot = Plot.of(
                "cylinder-spread",
                "How likely one cylinder is leaner",
                "The share of cylinders leaner than a lambda; the steeper the fall, the more alike they are.",
                new Scale("Lambda", QuantityKind.RATIO, system),
                new Scale("Cylinders leaner than that", QuantityKind.FRACTION, system));
        for (CylinderSpread s : spreads) {
            double[] leaner = java.util.Arrays.stream(lambda)
                    .map(l -> 1 - s.probability(l))
                    .toArray();
            plot.line(s.supply().words(), lambda, leaner);
        }
        return plot.limitAt("lean limit", leanLimit, Side.AT_MOST).picture();
    }

    /**
     * The expected power of every shot with its band.
     *
     * @param plan the plan
     * @param system the units
     * @return the picture
     */
    public static ChartPicture of(StepUp plan, UnitSystem system) {
        double[] jets = column(plan.shots(), s -> s.setup().jets().orElseThrow().nitrousBore());
        return Plot.of(
                        "step-up",
                        "What each step should give",
                        "Expected wheel power of every shot; a pull outside the band is a reason to stop and find out why.",
                        new Scale("Nitrous jet", QuantityKind.BORE, system),
                        new Scale("Power at the wheels", QuantityKind.POWER, system))
                .band(
                        "go: two standard uncertainties",
                        jets,
                        column(plan.shots(), Shot::lowPower),
                        column(plan.shots(), Shot::highPower))
                .line("expected", jets, column(plan.shots(), Shot::wheelPower))
                .mark("nitrous off", plan.offPower())
                .picture();
    }
}
