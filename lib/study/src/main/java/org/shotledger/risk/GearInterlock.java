package org.shotledger.risk;

import java.util.Locale;
import java.util.Optional;
import org.shotledger.car.Vehicle;
import org.shotledger.delivery.Grip;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.limits.Provenance;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitFactors;

/**
 * The lowest gear in which the driven tyres can carry the full power, and how fast the engine runs up in it.
 *
 * <p>{@code F = P/v - rho CdA v^2/2 - m g f} at the point of most power, against the force of {@link Grip}. The turning parts are
 * left out, which makes the run-up faster: the safe side.
 *
 * @param interlock the interlock; empty when the sheet describes no car
 * @param overshoot speed the engine gains in the cut time at the upper end of the window in that gear, rev/min
 */
record GearInterlock(Optional<Interlock> interlock, double overshoot) {

    /** Taken where the car is not known: common practice, no source. */
    private static final double USUAL_OVERSHOOT = 200;

    static GearInterlock of(Plan plan, double cutTime) {
        return plan.car()
                .vehicle()
                .map(car -> of(plan, car, Grip.of(car, Grip.USUAL_FRICTION), cutTime))
                .orElse(new GearInterlock(Optional.empty(), USUAL_OVERSHOOT));
    }

    private static GearInterlock of(Plan plan, Vehicle car, Grip grip, double cutTime) {
        int gear = 1;
        while (gear < car.gears().size() && force(plan, car, grip, gear) > grip.force()) {
            gear++;
        }
        double ratio = car.gears().get(gear - 1) * car.finalDrive();
        double runUp = force(plan, car, grip, gear) / car.mass() * ratio / grip.tyreRadius() * 30 / Math.PI;
        return new GearInterlock(Optional.of(interlock(gear, grip)), Math.max(0, runUp * cutTime));
    }

    private static Interlock interlock(int gear, Grip grip) {
        String spins = String.format(
                Locale.ROOT,
                "with full nitrous in a lower gear the tyres must carry more than their %.1f kN (friction %.1f, common practice):"
                        + " they spin, and the engine runs up before anything can close",
                grip.force() / 1e3,
                grip.friction());
        return new Interlock(
                "gear",
                "gear",
                QuantityKind.COUNT,
                gear,
                Double.NaN,
                0,
                Double.NaN,
                new Interlock.Kept(gear, Double.NaN),
                gear == 1 ? "every gear can carry the power" : spins,
                "",
                Provenance.CALCULATED);
    }

    /** Force that accelerates the car at the point of most power, N. */
    private static double force(Plan plan, Vehicle car, Grip grip, int gear) {
        OperatingPoint peak = plan.stated().strongest().orElseThrow();
        double ratio = car.gears().get(gear - 1) * car.finalDrive();
        double speed = peak.rpm() * Math.PI / 30 * grip.tyreRadius() / ratio;
        double drag = 0.5 * peak.air().density() * car.dragArea() * speed * speed;
        return peak.wheelPower() / speed - drag - car.rollingResistance() * car.mass() * UnitFactors.GRAVITY;
    }
}
