package org.shotledger.engine;

import org.shotledger.units.Require;

/**
 * The closed cycle of one cylinder as a single zone: slider-crank volume, Wiebe burning, heat to the walls, properties from
 * the NASA polynomials of charge and products. First law between the valve events,
 * {@code dU = Q dx - h A (T - T_w) dt - p dV}, by the trapezoidal rule with the energy carried as the state, so that it
 * closes to rounding. Products do not dissociate: peak pressure and temperature come out a little high, on the safe side.
 *
 * <p>An instance holds the tables of one engine and may be shared between threads.
 */
public final class Cylinder {
    private static final double MOTORING_EXPONENT = 1.32;
    private static final double KNOCK_FROM = -60;
    private static final double KNOCK_TO_BURNED = 0.99;

    private final Engine engine;
    private final HeatTransfer heatTransfer;
    private final double step;
    private final double[] angle;
    private final double[] volume;
    private final double[] area;
    private final double[] motored;
    private final double bottomVolume;

    /**
     * Lays the tables.
     *
     * @param engine the engine
     * @param intakeClosing where compression begins, deg after top dead centre, -180 to -90; common -150 to -120
     * @param exhaustOpening where expansion ends, deg after top dead centre, 90 to 180; common 120 to 150
     * @param step crank angle step, deg, 0.01 to 2
     * @param heatTransfer wall heat model
     */
    public Cylinder(
            Engine engine, double intakeClosing, double exhaustOpening, double step, HeatTransfer heatTransfer) {
        this.engine = Require.given("engine", engine);
        this.heatTransfer = Require.given("heat transfer model", heatTransfer);
        Require.within("intake valve closing", intakeClosing, -180, -90, "deg");
        Require.within("exhaust valve opening", exhaustOpening, 90, 180, "deg");
        Require.within("crank angle step", step, 0.01, 2, "deg");
        int steps = (int) Math.round((exhaustOpening - intakeClosing) / step);
        this.step = (exhaustOpening - intakeClosing) / steps;
        angle = new double[steps + 1];
        volume = new double[steps + 1];
        area = new double[steps + 1];
        motored = new double[steps + 1];
        Crank crank = new Crank(engine);
        for (int i = 0; i <= steps; i++) {
            angle[i] = intakeClosing + i * this.step;
            volume[i] = crank.volume(angle[i]);
            area[i] = crank.area(angle[i]);
            motored[i] = Math.pow(volume[0] / volume[i], MOTORING_EXPONENT);
        }
        bottomVolume = crank.volume(180);
    }

    /**
     * The usual set: valves at 140 degrees before and after top dead centre, 1 degree steps, Woschni.
     *
     * @param engine the engine
     * @return the cylinder
     */
    public static Cylinder of(Engine engine) {
        return new Cylinder(engine, -140, 140, 1, new Woschni(1));
    }

    /**
     * Cylinder volume when the intake valve closes.
     *
     * @return m3
     */
    public double closingVolume() {
        return volume[0];
    }

    /**
     * Runs one cycle.
     *
     * @param in what the cylinder holds and does
     * @return what it gave
     */
    public Cycle run(CycleInput in) {
        return run(in, null);
    }

    /**
     * Runs one cycle and keeps its course.
     *
     * @param in what the cylinder holds and does
     * @return the course over crank angle
     */
    public CycleTrace trace(CycleInput in) {
        CycleTrace trace = new CycleTrace(angle.length);
        run(in, trace);
        return trace;
    }

    private Cycle run(CycleInput in, CycleTrace trace) {
        double m = in.mass();
        double dt = step / (6 * in.rpm());
        double pistonSpeed = engine.meanPistonSpeed(in.rpm());
        double rUnburned = in.unburned().gasConstant();
        double rStep = in.burned().gasConstant() - rUnburned;
        double t = in.temperature();
        double p0 = m * rUnburned * t / volume[0];
        double speedPerPressure = heatTransfer.combustionSpeed(engine.cylinderDisplacement(), t, p0, volume[0]);
        double knockConstant = dt / Knock.constant(in.octane());
        Wiebe burning = in.burning();
        double burnStart = burning.start();
        double p = p0;
        double x = 0;
        double energy = m * in.unburned().energy(t);
        double endGas = t;
        double work = 0;
        double loss = 0;
        double knock = 0;
        double peakP = p;
        double peakT = t;
        int peak = 0;
        if (trace != null) {
            trace.set(0, angle[0], volume[0], p, t, 0);
        }
        for (int i = 1; i < angle.length; i++) {
            double x2 = angle[i] > burnStart ? burning.burned(angle[i]) : 0;
            double speed = x2 > 0 ? speedPerPressure * (p - p0 * motored[i - 1]) : 0;
            double h = heatTransfer.coefficient(engine.bore(), volume[i - 1], p, t, pistonSpeed, speed);
            double wall = h * area[i] * (t - in.wallTemperature()) * dt;
            double released = in.heat() * (x2 - x);
            double dV = volume[i] - volume[i - 1];
            double stiff = 0.5 * m * (rUnburned + x2 * rStep) * dV / volume[i];
            double exchange = x2 > x ? m * (x2 - x) * (in.burned().energy(t) - in.unburned().energy(t)) : 0;
            double gain = released - wall - exchange - 0.5 * p * dV;
            double cv = m * heatCapacity(in, t, x2);
            double t2 = (t * cv + gain) / (cv + stiff);
            cv = m * heatCapacity(in, 0.5 * (t + t2), x2);
            t2 = (t * cv + gain) / (cv + stiff);
            double p2 = m * (rUnburned + x2 * rStep) * t2 / volume[i];
            double done = 0.5 * (p + p2) * dV;
            energy += released - wall - done;
            t2 -= (m * energy(in, t2, x2) - energy) / cv;
            p2 = m * (rUnburned + x2 * rStep) * t2 / volume[i];
            work += done;
            loss += wall;
            if (x2 == 0) {
                endGas = t2;
            } else {
                double rise = 2 * (p2 - p) / (p2 + p) * rUnburned / (in.unburned().heatCapacity(endGas) + rUnburned);
                endGas *= 1 + rise * (1 + rise * (0.5 + rise / 6));
            }
            if (angle[i] > KNOCK_FROM && x2 < KNOCK_TO_BURNED) {
                knock += knockConstant
                        * Math.exp(
                                Knock.PRESSURE_EXPONENT * Math.log(p2 / Knock.ATMOSPHERE) - Knock.ACTIVATION / endGas);
            }
            if (p2 > peakP) {
                peakP = p2;
                peak = i;
            }
            peakT = Math.max(peakT, t2);
            p = p2;
            t = t2;
            x = x2;
            if (trace != null) {
                trace.set(i, angle[i], volume[i], p, t, x);
            }
        }
        double gross = work + openParts(p0, p, in.exhaustPressure());
        double gas = rUnburned + x * rStep;
        double share = heatCapacity(in, t, x) / (heatCapacity(in, t, x) + gas);
        double exhaust = t * (share + (1 - share) * Math.min(1, in.exhaustPressure() / p));
        return new Cycle(
                gross,
                gross / engine.cylinderDisplacement(),
                peakP,
                angle[peak],
                peakT,
                loss,
                exhaust,
                knock,
                x,
                t,
                p);
    }

    /** Work between the valve events and bottom dead centre: intake pressure before, a straight fall after. */
    private double openParts(double closingPressure, double openingPressure, double exhaustPressure) {
        double before = closingPressure * (volume[0] - bottomVolume);
        double after = 0.5 * (openingPressure + exhaustPressure) * (bottomVolume - volume[volume.length - 1]);
        return before + after;
    }

    private static double heatCapacity(CycleInput in, double t, double x) {
        double u = in.unburned().heatCapacity(t);
        return u + x * (in.burned().heatCapacity(t) - u);
    }

    private static double energy(CycleInput in, double t, double x) {
        double u = in.unburned().energy(t);
        return u + x * (in.burned().energy(t) - u);
    }
}
