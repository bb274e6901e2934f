package org.shotledger.risk;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Standing;
import org.shotledger.build.Vehicle;
import org.shotledger.units.QuantityKind;

/**
 * The lowest gear in which the tyres could carry the power at all, and how fast the engine runs up in it.
 *
 * <p>{@code F = P/v - rho CdA v^2/2 - m g f}; even with the whole weight on the driven wheels and a grip of one, a gear in which
 * {@code F > m g} spins them. The turning parts are left out, which makes the run-up faster: the safe side.
 *
 * @param gate the gate; empty when the sheet describes no car or its tyre size cannot be read
 * @param overshoot speed the engine gains in the cut time at the upper end of the window in that gear, rev/min
 */
record GearGate(Optional<Gate> gate, double overshoot) {
    private static final double GRAVITY = 9.80665;
    /** Grip of a road tyre on a dry track: common practice, no source. */
    private static final double GRIP = 1.0;

    /** Taken where the car is not known: common practice, no source. */
    private static final double USUAL_OVERSHOOT = 200;

    /** Width, aspect ratio and rim of a tyre as ISO 4000-1 writes them. */
    private static final Pattern TYRE = Pattern.compile("(\\d{3})/(\\d{2})\\s*Z?R\\s*(\\d{2})");

    static GearGate of(Budget budget, double cutTime) {
        Optional<Vehicle> vehicle = budget.build().vehicle();
        double radius = vehicle.map(v -> radius(v.tyres())).orElse(Double.NaN);
        if (Double.isNaN(radius)) {
            return new GearGate(Optional.empty(), USUAL_OVERSHOOT);
        }
        Vehicle car = vehicle.orElseThrow();
        int gear = 1;
        while (gear < car.gears().size() && force(budget, car, radius, gear) > GRIP * car.mass() * GRAVITY) {
            gear++;
        }
        double ratio = car.gears().get(gear - 1) * car.finalDrive();
        double runUp = force(budget, car, radius, gear) / car.mass() * ratio / radius * 30 / Math.PI;
        return new GearGate(Optional.of(gate(gear, car)), Math.max(0, runUp * cutTime));
    }

    private static Gate gate(int gear, Vehicle car) {
        return new Gate(
                "gear",
                "gear",
                QuantityKind.COUNT,
                gear,
                Double.NaN,
                0,
                Double.NaN,
                gear == 1
                        ? "every gear can carry the power"
                        : "in a lower gear the force at the wheels exceeds the whole weight of the car: they spin, and the engine"
                                + " runs up before anything can close",
                car.gears().size() + " gears",
                Standing.CALCULATED);
    }

    /** Force that accelerates the car at the point of most power, N. */
    private static double force(Budget budget, Vehicle car, double radius, int gear) {
        Evaluation peak = budget.peak();
        double speed = peak.rpm() * Math.PI / 30 * radius / (car.gears().get(gear - 1) * car.finalDrive());
        double drag = 0.5 * peak.conditions().air().density() * car.dragArea() * speed * speed;
        return peak.wheelPower() / speed - drag - car.rollingResistance() * car.mass() * GRAVITY;
    }

    private static double radius(String tyres) {
        Matcher size = TYRE.matcher(tyres);
        if (!size.find()) {
            return Double.NaN;
        }
        double wall = Double.parseDouble(size.group(1)) * 1e-3 * Double.parseDouble(size.group(2)) / 100;
        return Double.parseDouble(size.group(3)) * 0.0254 / 2 + wall;
    }
}
