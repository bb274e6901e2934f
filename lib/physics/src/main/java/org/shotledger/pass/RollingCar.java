package org.shotledger.pass;

import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * A car as a mass on wheels that moves along a level line.
 *
 * @param mass with driver and everything on board, kg, 100 to 20000
 * @param dragArea drag coefficient times frontal area, m2, 0 to 5
 * @param rolling rolling resistance over weight, 0 to 0.1
 * @param axle which axle is driven
 * @param drivenShare share of the standing weight on the driven axle, 0.1 to 1; 1 where all wheels are driven
 * @param wheelbase m, 1 to 6
 * @param centreHeight height of the centre of mass, m, 0 to 1.5
 * @param tyreRadius rolling radius of the driven wheels, m, 0.15 to 0.6
 * @param grip greatest traction over load of the driven tyres on this surface, 0.1 to 6
 * @param drivenInertia of the driven wheels with everything that turns with them, kg m2, 0 to 50
 * @param freeInertia of the other wheels, kg m2, 0 to 50
 */
public record RollingCar(
        double mass,
        double dragArea,
        double rolling,
        Axle axle,
        double drivenShare,
        double wheelbase,
        double centreHeight,
        double tyreRadius,
        double grip,
        double drivenInertia,
        double freeInertia) {

    /** Driven axle. */
    public enum Axle {
        /** Front wheels. */
        FRONT,
        /** Rear wheels. */
        REAR,
        /** All wheels. */
        ALL
    }

    public RollingCar {
        Require.within("mass of the car", mass, 100, 20_000, "kg");
        Require.within("drag area of the car", dragArea, 0, 5, "m2");
        Require.within("rolling resistance of the car", rolling, 0, 0.1, "");
        Require.given("driven axle of the car", axle);
        Require.within("share of the weight on the driven axle", drivenShare, 0.1, 1, "");
        Require.within("wheelbase of the car", wheelbase, 1, 6, "m");
        Require.within("height of the centre of mass", centreHeight, 0, 1.5, "m");
        Require.within("rolling radius of the driven wheels", tyreRadius, 0.15, 0.6, "m");
        Require.within("grip of the driven tyres", grip, 0.1, 6, "");
        Require.within("inertia of the driven wheels", drivenInertia, 0, 50, "kg m2");
        Require.within("inertia of the free wheels", freeInertia, 0, 50, "kg m2");
    }

    /** Mass that the tyres of the driven axle have to push: the car and its free wheels, kg. */
    double pushedMass() {
        return mass + freeInertia / (tyreRadius * tyreRadius);
    }

    /** Mass and all wheels, kg. */
    double rollingMass() {
        return pushedMass() + drivenInertia / (tyreRadius * tyreRadius);
    }

    /**
     * Greatest acceleration that grip and the front wheels on the ground allow.
     *
     * <p>The load on a driven rear axle is {@code m (g s + a h/L)}, on a front axle {@code m (g s - a h/L)}; traction
     * {@code mu N = m' a + R} then gives {@code a = (mu m g s - R)/(m' -+ mu m h/L)}. A car driven at the rear keeps its front wheels
     * down while {@code a <= g (1 - s) L/h}. Balance of moments about the contact of the tyres; squat of the springs, the height at
     * which the air pushes and the slip of the tyres are left out.
     *
     * @param resistance of air and rolling, N
     * @return m/s2
     */
    public double accelerationLimit(double resistance) {
        double transfer = grip * mass * centreHeight / wheelbase;
        double standing = grip * mass * UnitFactors.GRAVITY * drivenShare - resistance;
        return switch (axle) {
            case ALL -> (grip * mass * UnitFactors.GRAVITY - resistance) / pushedMass();
            case FRONT -> standing / (pushedMass() + transfer);
            case REAR ->
                Math.min(
                        transfer < pushedMass() ? standing / (pushedMass() - transfer) : Double.POSITIVE_INFINITY,
                        UnitFactors.GRAVITY * (1 - drivenShare) * wheelbase / centreHeight);
        };
    }
}
