package org.shotledger.view;

import java.util.List;
import org.shotledger.delivery.PulseCheck;
import org.shotledger.delivery.PulsePoint;
import org.shotledger.delivery.Ramp;
import org.shotledger.delivery.RampStep;
import org.shotledger.spread.CylinderSpread;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Pulsed delivery and the spread from cylinder to cylinder as tables. */
public final class DeliveryTables {
    private DeliveryTables() {}

    /**
     * What can be pulsed with what.
     *
     * @param checks checks of one shot at several frequencies, on one output or two
     * @return one row a check
     */
    public static Listing usable(List<PulseCheck> checks) {
        Listing.Builder rows = Listing.titled("Usable duty of the nitrous solenoid")
                .words("Frequency")
                .words("Outputs")
                .figures("Duty from", QuantityKind.FRACTION)
                .figures("to", QuantityKind.FRACTION)
                .figures("Share of the shot from", QuantityKind.FRACTION)
                .figures("up to", QuantityKind.FRACTION)
                .words("Lower end set by");
        for (PulseCheck check : checks) {
            rows.row(
                    String.format(
                            java.util.Locale.ROOT, "%.0f Hz", check.pulsing().frequency()),
                    check.separate() ? "one for each solenoid" : "one for both",
                    check.leastDuty(),
                    check.mostDuty(),
                    check.leastShare(),
                    check.mostShare(),
                    Double.isNaN(check.leastDuty()) ? "no usable duty" : check.boundBy());
        }
        return rows.build();
    }

    /**
     * One shot over its duty.
     *
     * @param check the check
     * @return one row for every tenth step
     */
    public static Listing of(PulseCheck check) {
        Listing.Builder rows = Listing.titled(String.format(
                        java.util.Locale.ROOT,
                        "A pulsed shot at %.0f Hz, averages over a pulse, %s",
                        check.pulsing().frequency(),
                        check.separate() ? "each solenoid with its own duty" : "both solenoids on one output"))
                .figures("Nitrous duty", QuantityKind.FRACTION)
                .figures("Fuel duty", QuantityKind.FRACTION)
                .figures("Nitrous delivered", QuantityKind.FRACTION)
                .figures("Fuel delivered", QuantityKind.FRACTION)
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Error by delays", QuantityKind.FRACTION)
                .figures("Worst with their spread", QuantityKind.FRACTION)
                .figures("Power at the wheels", QuantityKind.POWER);
        int last = check.points().size() - 1;
        for (int i = 0; i <= last; i++) {
            PulsePoint p = check.points().get(i);
            if (i % 10 == 0 || i == last) {
                rows.row(
                        p.pulse().nitrousDuty(),
                        p.pulse().fuelDuty(),
                        p.pulse().nitrousShare(),
                        p.pulse().fuelShare(),
                        p.lambda(),
                        p.error(),
                        p.worstError(),
                        p.wheelPower());
            }
        }
        return rows.build();
    }

    /**
     * A ramp to type into a controller.
     *
     * @param ramp the ramp
     * @return one row a step
     */
    public static Listing of(Ramp ramp) {
        QuantityKind axis = switch (ramp.axis()) {
            case TIME -> QuantityKind.TIME;
            case RPM -> QuantityKind.ROTATION;
            case GEAR -> QuantityKind.COUNT;
        };
        String of = ramp.gear() > 0 ? " in gear " + ramp.gear() : "";
        Listing.Builder rows = Listing.titled(String.format(
                        java.util.Locale.ROOT,
                        "Ramp over %s%s at %.0f Hz",
                        ramp.axis().words(),
                        of,
                        ramp.frequency()))
                .figures("From", axis)
                .figures("to", axis)
                .figures("Nitrous duty", QuantityKind.FRACTION)
                .figures("Fuel duty", QuantityKind.FRACTION)
                .figures("Share of the shot", QuantityKind.FRACTION)
                .figures("Crank torque", QuantityKind.TORQUE)
                .figures("allowed", QuantityKind.TORQUE)
                .figures("Leanest", QuantityKind.RATIO)
                .words("Held back by");
        for (RampStep step : ramp.steps()) {
            rows.row(
                    step.from(),
                    step.to(),
                    step.nitrousDuty(),
                    step.fuelDuty(),
                    step.share(),
                    step.crankTorque(),
                    step.allowedTorque(),
                    step.lambda(),
                    step.reason());
        }
        return rows.build();
    }

    /**
     * The spread of several ways to supply the cylinders.
     *
     * @param spreads the spreads of one operating point
     * @return one row a figure, one column a way
     */
    public static Listing spreads(List<CylinderSpread> spreads) {
        Listing.Builder rows = Listing.titled("From cylinder to cylinder, all tolerances propagated exactly")
                .words("Supply")
                .figures("Lambda", QuantityKind.RATIO)
                .figures("No cylinder leaner than", QuantityKind.RATIO)
                .figures("nor richer than", QuantityKind.RATIO)
                .figures("with confidence", QuantityKind.FRACTION)
                .figures("Leanest possible", QuantityKind.RATIO)
                .figures("All holes off to lean", QuantityKind.RATIO)
                .figures("All inside the lambda limits", QuantityKind.FRACTION)
                .mixed("Worst peak pressure");
        for (CylinderSpread s : spreads) {
            rows.row(
                    s.supply().words(),
                    s.lambda(),
                    s.leanestLikely(),
                    s.richestLikely(),
                    s.confidence(),
                    s.leanest(),
                    s.allTogetherLean(),
                    s.insideLimits(),
                    new Cell.Figure(s.worstPeakPressure(), QuantityKind.ABSOLUTE_PRESSURE));
        }
        return rows.build();
    }
}
