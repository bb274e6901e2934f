package org.shotledger.pass;

import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.shotledger.units.UnitFactors;

/** The equation of motion inside one leg; {@link #at} leaves everything it worked out in the fields. */
final class PassMotion implements OrdinaryDifferentialEquation {
    static final int X = 0;
    static final int V = 1;
    static final int TURBO = 2;
    static final int USED = 3;
    static final int SECONDS = 4;
    static final int ENGINE = 5;
    static final int AIR = 6;
    static final int ROLLING = 7;
    static final int DRIVELINE = 8;
    static final int CLUTCH = 9;
    static final int SIZE = 10;

    /** What joins engine and wheels. */
    enum Phase {
        SLIPPING,
        DRIVING,
        SHIFTING,
        LIMITER
    }

    final DrivenPass pass;
    Phase phase;
    int gear;
    double throttleFrom;
    /** When the conditions were met, s; the ramp counts from here. */
    double nitrousFrom;
    /** Whether the valves are open in this leg. */
    boolean flowing;

    double share;
    double acceleration;
    double torque;
    boolean held;
    private double air;
    private double rolling;

    PassMotion(DrivenPass pass) {
        this.pass = pass;
    }

    @Override
    public int getDimension() {
        return SIZE;
    }

    @Override
    public double[] computeDerivatives(double time, double[] y) {
        at(time, y);
        Transmission transmission = pass.transmission();
        double[] rate = new double[SIZE];
        double engine = engineSpeed(y[V]);
        double input = inputSpeed(y[V]);
        double throttle = phase == Phase.SHIFTING ? 0 : time - throttleFrom;
        double strength = share > 0 ? pass.nitrous().strength(y[USED]) : 0;
        rate[X] = y[V];
        rate[V] = acceleration;
        rate[TURBO] = pass.engine().turboRate(rpm(y[V]), throttle, y[TURBO], share * strength);
        rate[USED] = share > 0 ? share * pass.nitrous().massFlow(y[USED]) : 0;
        rate[SECONDS] = flowing ? 1 : 0;
        rate[ENGINE] = torque * engine;
        rate[AIR] = air * y[V];
        rate[ROLLING] = rolling * y[V];
        if (phase != Phase.SHIFTING) {
            double drag = transmission.driveline().dragTorque();
            double spin =
                    turningInertia() * acceleration * ratio() / pass.vehicle().tyreRadius();
            double carried = torque - drag - spin;
            rate[DRIVELINE] = (drag + transmission.driveline().proportionalLoss() * carried) * input;
            rate[CLUTCH] = torque * (engine - input);
        }
        return rate;
    }

    void at(double time, double[] y) {
        RollingCar vehicle = pass.vehicle();
        double wind = y[V] + pass.strip().headWind();
        air = 0.5 * pass.strip().airDensity() * vehicle.dragArea() * wind * Math.abs(wind);
        rolling = vehicle.rolling() * vehicle.mass() * UnitFactors.GRAVITY;
        share = flowing
                ? pass.arming().share(Math.max(time - nitrousFrom, pass.arming().delay()))
                : 0;
        held = false;
        if (phase == Phase.SHIFTING) {
            torque = 0;
            acceleration = -(air + rolling) / vehicle.rollingMass();
            return;
        }
        double strength = share > 0 ? pass.nitrous().strength(y[USED]) : 0;
        torque = pass.engine().torque(rpm(y[V]), time - throttleFrom, y[TURBO], share * strength);
        pull(vehicle);
    }

    private void pull(RollingCar vehicle) {
        double drag = pass.transmission().driveline().dragTorque();
        double passed = 1 - pass.transmission().driveline().proportionalLoss();
        double lever = ratio() / vehicle.tyreRadius();
        double turning = turningInertia();
        double resistance = air + rolling;
        double full = ((torque - drag) * passed * lever - resistance)
                / (vehicle.rollingMass() + turning * lever * lever * passed);
        double limit = vehicle.accelerationLimit(resistance);
        acceleration = Math.min(full, phase == Phase.LIMITER ? Math.min(limit, 0) : limit);
        if (acceleration < full) {
            held = phase != Phase.LIMITER;
            torque = drag
                    + turning * lever * acceleration
                    + (vehicle.rollingMass() * acceleration + resistance) / (passed * lever);
        }
    }

    private double ratio() {
        return pass.transmission().ratio(gear);
    }

    private double turningInertia() {
        return phase == Phase.DRIVING ? pass.transmission().engineInertia() : 0;
    }

    /** Speed of the gearbox's input shaft, rad/s. */
    double inputSpeed(double speed) {
        return speed / pass.vehicle().tyreRadius() * ratio();
    }

    double launchSpeed() {
        return pass.transmission().launchRpm() * Math.PI / 30;
    }

    private double engineSpeed(double speed) {
        return phase == Phase.SLIPPING ? launchSpeed() : inputSpeed(speed);
    }

    double rpm(double speed) {
        return engineSpeed(speed) * 30 / Math.PI;
    }

    /** Energy of motion of the car, its wheels and the engine's parts, J. */
    double kinetic(double speed) {
        double engine = engineSpeed(speed);
        return 0.5 * pass.vehicle().rollingMass() * speed * speed + engineKinetic(engine);
    }

    double engineKinetic(double engineSpeed) {
        return 0.5 * pass.transmission().engineInertia() * engineSpeed * engineSpeed;
    }

    PassRow row(double time, double[] y) {
        at(time, y);
        double engine = engineSpeed(y[V]);
        return new PassRow(
                time, y[X], y[V], acceleration, rpm(y[V]), gear + 1, torque * engine, y[TURBO], share, y[USED], held);
    }
}
