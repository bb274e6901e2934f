package org.shotledger.delivery;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shotledger.car.Vehicle;
import org.shotledger.drive.Driveline;
import org.shotledger.units.UnitFactors;

/**
 * What the driven axle can put on the ground.
 *
 * <p>{@code F = mu m g s / (1 - mu h/L)} for driven rear wheels: static share of the weight, and the load the acceleration
 * itself moves to the rear (Gillespie, Fundamentals of Vehicle Dynamics, chapter 2, from memory). Aerodynamic lift, squat and
 * the spin-up of wheels are left out.
 *
 * @param mass of the car with driver, kg, positive
 * @param friction of tyre on track, 0.1 to 3
 * @param drivenShare static share of the weight on the driven axle, 0.2 to 0.9
 * @param heightOverWheelbase height of the centre of gravity over the wheelbase, 0 for no load transfer, to 0.4
 * @param tyreRadius rolling radius, m
 */
public record Grip(double mass, double friction, double drivenShare, double heightOverWheelbase, double tyreRadius) {
    /** Friction of a warm road-legal track tyre on a clean track: common practice, no source. */
    public static final double USUAL_FRICTION = 1.1;
    /** Static share of an estate with its bottle in the boot: common practice, no source. */
    public static final double USUAL_SHARE = 0.52;
    /** Height over wheelbase of a saloon: common practice, no source. */
    public static final double USUAL_HEIGHT = 0.20;

    /** A loaded tyre rolls on less than its printed radius: common practice, no source. */
    private static final double LOADED = 0.97;

    private static final Pattern TYRE = Pattern.compile("(\\d{3})/(\\d{2}) ?Z?R ?(\\d{2}).*");

    public Grip {
        require(mass > 100 && mass < 10_000, "mass", mass, "100 to 10000 kg");
        require(friction >= 0.1 && friction <= 3, "friction", friction, "0.1 to 3");
        require(drivenShare >= 0.2 && drivenShare <= 0.9, "driven share", drivenShare, "0.2 to 0.9");
        require(
                heightOverWheelbase >= 0 && heightOverWheelbase <= 0.4,
                "height over wheelbase",
                heightOverWheelbase,
                "0 to 0.4");
        require(tyreRadius > 0.15 && tyreRadius < 0.8, "tyre radius", tyreRadius, "0.15 to 0.8 m");
        require(
                friction * heightOverWheelbase < 1,
                "friction times height",
                friction,
                "so low that the nose stays down");
    }

    /**
     * The grip of a car with the usual load share and height.
     *
     * @param car the car; the size on its tyres gives the rolling radius
     * @param friction of tyre on track
     * @return the grip
     * @throws IllegalArgumentException when the tyre size cannot be read
     */
    public static Grip of(Vehicle car, double friction) {
        return new Grip(car.mass(), friction, USUAL_SHARE, USUAL_HEIGHT, radius(car.tyres()));
    }

    /**
     * Rolling radius of a tyre.
     *
     * @param size as written on it, for example {@code "275/35R18"}
     * @return radius, m
     * @throws IllegalArgumentException when the size is written another way
     */
    public static double radius(String size) {
        Matcher m = TYRE.matcher(size.trim());
        if (!m.matches()) {
            throw new IllegalArgumentException("The tyre size is \"" + size
                    + "\"; write width/height and rim as on the tyre, for example 275/35R18.");
        }
        double wall = Integer.parseInt(m.group(1)) / 1000.0 * Integer.parseInt(m.group(2)) / 100.0;
        return LOADED * (Integer.parseInt(m.group(3)) * UnitFactors.INCH / 2 + wall);
    }

    /**
     * The largest force at the driven tyres.
     *
     * @return force, N
     */
    public double force() {
        return friction * mass * UnitFactors.GRAVITY * drivenShare / (1 - friction * heightOverWheelbase);
    }

    /**
     * The crankshaft torque that uses the grip up in a gear.
     *
     * @param ratio gear ratio times final drive, positive
     * @param driveline its losses
     * @return torque, N m
     */
    public double crankTorque(double ratio, Driveline driveline) {
        return force() * tyreRadius / (ratio * (1 - driveline.proportionalLoss())) + driveline.dragTorque();
    }

    private static void require(boolean good, String name, double value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException(
                    "The " + name + " of the grip is " + value + "; allowed is " + allowed + ".");
        }
    }
}
