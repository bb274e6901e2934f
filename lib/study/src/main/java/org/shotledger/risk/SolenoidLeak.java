package org.shotledger.risk;

import java.util.Locale;
import org.shotledger.engine.MoistAir;
import org.shotledger.flow.HomogeneousEquilibrium;
import org.shotledger.fluid.FluidState;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.gas.Gas;
import org.shotledger.plan.Plan;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.Require;
import org.shotledger.units.UnitSystem;

/**
 * A nitrous solenoid that seeps with the engine off and the bottle open.
 *
 * <p>Nitrous oxide seeps through a hole of the given size at the choked homogeneous-equilibrium flux of the bottle's liquid with
 * a discharge coefficient of 0.8 (common practice) and pushes the air out of the intake, {@code m = p V M/(R T)}. The first fuel
 * the starter brings in then finds an intake full of oxidiser: a backfire burns in the plenum. The pressure given is that of a
 * closed vessel, {@code u} kept, products in equilibrium: an upper bound, and no intake is built for it.
 *
 * @param holeBore diameter of a hole that seeps as much, m
 * @param flow nitrous oxide that seeps, kg/s
 * @param intakeVolume volume of plenum and runners, m3
 * @param fillMass nitrous oxide that fills it at ambient pressure, kg
 * @param fillSeconds time until it is full, s
 * @param waitSeconds time the car stands, s
 * @param seeped nitrous oxide that seeps in that time, kg; what the intake does not hold lies around the car
 * @param fuelMass main fuel that burns completely with a full intake, kg
 * @param heat heat of that fire with the decomposition of the nitrous oxide, J
 * @param closedPressure pressure of that fire in a closed vessel, Pa absolute
 */
public record SolenoidLeak(
        double holeBore,
        double flow,
        double intakeVolume,
        double fillMass,
        double fillSeconds,
        double waitSeconds,
        double seeped,
        double fuelMass,
        double heat,
        double closedPressure) {
    /** A grain on the seat, and the wait in a staging lane: assumed. */
    private static final double USUAL_HOLE = 0.1e-3;

    /** How long a car waits armed, s: common practice, no source. */
    private static final double USUAL_WAIT = 600;
    /** Coefficient of a leak of unknown shape: our choice, on the unsafe side of a sharp hole. */
    private static final double DISCHARGE = 0.8;
    /** Plenum and runners over displacement: common practice, no source. */
    private static final double USUAL_VOLUME = 2;

    /**
     * A seep as through a tenth of a millimetre over ten minutes into an intake of twice the displacement.
     *
     * @param plan the plan
     * @return what gathers
     */
    public static SolenoidLeak of(Plan plan) {
        double volume = USUAL_VOLUME * plan.car().engine().displacement();
        return of(plan, USUAL_HOLE, volume, USUAL_WAIT);
    }

    /**
     * A seep of one's own.
     *
     * @param plan the plan
     * @param holeBore diameter of a hole that seeps as much, m, positive
     * @param intakeVolume volume of plenum and runners, m3, positive
     * @param waitSeconds time the car stands, s, positive
     * @return what gathers
     */
    public static SolenoidLeak of(Plan plan, double holeBore, double intakeVolume, double waitSeconds) {
        Require.positive("diameter of the leak", holeBore, "m");
        Require.positive("volume of the intake", intakeVolume, "m3");
        Require.positive("time the car stands", waitSeconds, "s");
        Scenario sound = Scenario.of(plan);
        MoistAir air = sound.at().air();
        FluidState liquid = sound.bottle();
        double flux = HomogeneousEquilibrium.criticalFlux(liquid).massFlux();
        double flow = DISCHARGE * Math.PI / 4 * holeBore * holeBore * flux;
        double full = air.pressure()
                * intakeVolume
                * Oxidisers.NITROUS_OXIDE_MOLAR_MASS
                / (Gas.MOLAR_CONSTANT * air.temperature());
        Fuel fuel = sound.fuels().main();
        double burned = full / fuel.stoichiometricNitrousFuel();
        return new SolenoidLeak(
                holeBore,
                flow,
                intakeVolume,
                full,
                full / flow,
                waitSeconds,
                flow * waitSeconds,
                burned,
                burned * fuel.lowerHeatingValue() + full * Oxidisers.NITROUS_OXIDE_DECOMPOSITION,
                ConstantVolumeCombustion.of(fuel, air.temperature(), air.pressure())
                        .pressure());
    }

    /**
     * The danger in one line.
     *
     * @return time, amounts and what to do
     */
    public String summary() {
        return String.format(
                Locale.ROOT,
                "A solenoid that seeps like a %s hole fills the intake with %s of nitrous oxide in %.0f s; %s of fuel then burn"
                        + " with %s, in a closed vessel up to %s. No sensor watches a standing engine: close the bottle when the car"
                        + " stands, and after any wait with the bottle open turn the engine over with fuel and ignition off and the"
                        + " throttle open before it is started.",
                QuantityKind.BORE.text(holeBore, UnitSystem.SI),
                grams(fillMass),
                fillSeconds,
                grams(fuelMass),
                QuantityKind.ENERGY.text(heat, UnitSystem.SI),
                QuantityKind.ABSOLUTE_PRESSURE.text(closedPressure, UnitSystem.SI));
    }

    private static String grams(double mass) {
        return String.format(Locale.ROOT, "%.1f g", 1000 * mass);
    }
}
