package org.shotledger.engine;

import java.util.Arrays;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.curve.Bracket;
import org.shotledger.units.Require;
import org.shotledger.units.UnitFactors;

/**
 * The closed cycle of one cylinder as a single zone: slider-crank volume, Wiebe burning, heat to the walls, properties from
 * the NASA polynomials of charge and products. First law between the valve events,
 * {@code dU = Q dx - h A (T - T_w) dt - p dV}, by the trapezoidal rule with the energy carried as the state, so that it
 * closes to rounding. With products that react when hot ({@link TrappedCharge#reacting}) it is the fuel-air cycle with
 * heat loss and finite burning; with frozen ones peak pressure and temperature come out too high.
 *
 * <p>An instance holds the tables of one engine and may be shared between threads.
 */
public final class Cylinder {
    /**
     * Exponent of the motored pressure in Woschni's gas speed. Our choice: polytropic exponents of compression measured in
     * spark-ignition engines lie at 1.30 +- 0.05 (Heywood, section 9.2, from memory), rich and cold charges above; 0.05 moves the
     * heat loss by 1 %.
     */
    private static final double MOTORING_EXPONENT = 1.32;

    /** Crank angle from which the end gas is watched, deg: earlier its delay is longer than a cycle. */
    private static final double KNOCK_FROM = -60;
    /** Share burned up to which there is end gas: the last per cent lies at the walls and is cold. */
    private static final double KNOCK_TO_BURNED = 0.99;

    private final Engine engine;
    private final Woschni heatTransfer;
    private final double step;
    private final double[] angle;
    private final double[] volume;
    private final double[] area;
    private final double[] motored;
    private final double[] inverseVolume;
    private final double bottomVolume;

    /**
     * Tabulates the geometry over crank angle.
     *
     * @param engine the engine
     * @param intakeClosing where compression begins, deg after top dead centre, -180 to -90; common -150 to -120
     * @param exhaustOpening where expansion ends, deg after top dead centre, 90 to 180; common 120 to 150
     * @param step crank angle step, deg, 0.01 to 2
     * @param heatTransfer wall heat model
     */
    public Cylinder(Engine engine, double intakeClosing, double exhaustOpening, double step, Woschni heatTransfer) {
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
        inverseVolume = new double[steps + 1];
        Crank crank = new Crank(engine);
        for (int i = 0; i <= steps; i++) {
            angle[i] = intakeClosing + i * this.step;
            volume[i] = crank.volume(angle[i]);
            area[i] = crank.area(angle[i]);
            motored[i] = Math.pow(volume[0] / volume[i], MOTORING_EXPONENT);
            inverseVolume[i] = 1 / volume[i];
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
     * A cylinder whose heat loss makes a known cycle give a known work: the base pull's own. The one factor on power
     * and the closed cycle then tell the same there; what they differ by elsewhere is tested.
     *
     * @param engine the engine
     * @param base the cycle of the base pull with its own burning
     * @param work gross indicated work of a cycle and cylinder, J
     * @return the cylinder, with Woschni's coefficient times 0.3 to 3; an end of that range where the work lies beyond it
     */
    public static Cylinder fitted(Engine engine, CycleInput base, double work) {
        Require.positive("indicated work of the base pull", work, "J");
        DoubleUnaryOperator miss =
                factor -> withHeatLoss(engine, factor).run(base).work() - work;
        double low = 0.3;
        double high = 3;
        if (miss.applyAsDouble(low) <= 0) {
            return withHeatLoss(engine, low);
        }
        if (miss.applyAsDouble(high) >= 0) {
            return withHeatLoss(engine, high);
        }
        return withHeatLoss(engine, Bracket.root(miss, low, high, 1e-6));
    }

    private static Cylinder withHeatLoss(Engine engine, double factor) {
        return new Cylinder(engine, -140, 140, 1, new Woschni(factor));
    }

    /**
     * Runs one cycle with the knock integral of an end gas that was warmer or colder at the start than the charge's mean, under
     * the pressure of the whole charge: compression multiplies both temperatures alike.
     *
     * @param in the cycle; its own octane number is not used
     * @param octane octane number of the end gas, 60 to 130
     * @param start temperature of the end gas at inlet valve closing, K, 150 to 700
     * @return what it gave
     */
    public Cycle run(CycleInput in, double octane, double start) {
        Require.within("temperature of the end gas at inlet valve closing", start, 150, 700, "K");
        return run(in, null, start / in.temperature(), octane);
    }

    /** Pressure when the intake valve closes, Pa. */
    double closingPressure(CycleInput in) {
        return in.mass() * in.unburned().gasConstant() * in.temperature() / volume[0];
    }

    /**
     * Runs one cycle.
     *
     * @param in what the cylinder holds and does
     * @return what it gave
     */
    public Cycle run(CycleInput in) {
        return run(in, null, 1, in.octane());
    }

    /**
     * Runs one cycle and keeps its trace.
     *
     * @param in what the cylinder holds and does
     * @return the trace over crank angle
     */
    public CycleTrace trace(CycleInput in) {
        CycleTrace trace = new CycleTrace(angle.length);
        run(in, trace, 1, in.octane());
        return trace;
    }

    private Cycle run(CycleInput in, CycleTrace trace, double endGasFactor, double octane) {
        double m = in.mass();
        double dt = step / (6 * in.rpm());
        double calm = heatTransfer.motoredSpeed(engine.meanPistonSpeed(in.rpm()));
        double rUnburned = in.unburned().gasConstant();
        double t = in.temperature();
        double p0 = m * rUnburned * t / volume[0];
        double speedPerPressure = heatTransfer.combustionSpeed(engine.cylinderDisplacement(), t, p0, volume[0]);
        double knockConstant = Math.log(dt / Knock.constant(octane));
        double activation = Knock.ACTIVATION / endGasFactor;
        double burnStart = in.burning().start();
        double p = p0;
        double logP = Math.log(p / UnitFactors.ATMOSPHERE);
        double speed = calm;
        double h = heatTransfer.coefficient(engine.bore(), p, t, calm);
        double x = 0;
        double energy = m * in.unburned().energy(t);
        double endGas = t;
        double lastRise = 0;
        double work = 0;
        double loss = 0;
        double knock = 0;
        double peakP = p;
        double peakT = t;
        int peak = 0;
        if (trace != null) {
            trace.set(0, angle[0], volume[0], p);
        }
        for (int i = 1; i < angle.length; i++) {
            double x2 = angle[i] > burnStart ? in.burning().burned(angle[i]) : 0;
            double dV = volume[i] - volume[i - 1];
            double wall = h * area[i] * (t - in.wallTemperature()) * dt;
            double released = in.heat() * (x2 - x);
            double exchange = x2 > x
                    ? m * (x2 - x) * (in.burned().energy(t) - in.unburned().energy(t))
                    : 0;
            double gas = x2 == 0 ? rUnburned : rUnburned + x2 * (in.burned().gasConstant(t) - rUnburned);
            double pressurePerKelvin = m * gas * inverseVolume[i];
            double cv = m * heatCapacity(in, t + 0.5 * lastRise, x2);
            double inverse = 1 / (cv + 0.5 * pressurePerKelvin * dV);
            double t2 = (t * cv + released - wall - exchange - 0.5 * p * dV) * inverse;
            double done = 0.5 * (p + pressurePerKelvin * t2) * dV;
            energy += released - wall - done;
            t2 -= (m * energy(in, t2, x2) - energy) * inverse;
            double p2 = pressurePerKelvin * t2;
            work += done;
            loss += wall;
            double speed2 = x2 > 0 ? calm + Math.max(0, speedPerPressure * (p2 - p0 * motored[i])) : calm;
            // Three logarithms of ratios near one for a single division.
            double sumP = p2 + p;
            double sumT = t2 + t;
            double sumW = speed2 + speed;
            double all = 1 / (sumP * sumT * sumW);
            double dLogP = logRatio((p2 - p) * sumT * sumW * all);
            double dLogT = logRatio((t2 - t) * sumP * sumW * all);
            double dLogW = logRatio((speed2 - speed) * sumP * sumT * all);
            h *= expSmall(Woschni.SPEED_EXPONENT * (dLogP + dLogW) + Woschni.TEMPERATURE_EXPONENT * dLogT);
            logP += dLogP;
            if (x2 == 0) {
                endGas = t2;
            } else if (x2 < KNOCK_TO_BURNED) {
                endGas *= expSmall(dLogP * rUnburned / (in.unburned().heatCapacity(endGas) + rUnburned));
            }
            if (angle[i] > KNOCK_FROM && x2 < KNOCK_TO_BURNED) {
                knock += Math.exp(knockConstant + Knock.PRESSURE_EXPONENT * logP - activation / endGas);
            }
            if (p2 > peakP) {
                peakP = p2;
                peak = i;
            }
            peakT = Math.max(peakT, t2);
            lastRise = t2 - t;
            speed = speed2;
            p = p2;
            t = t2;
            x = x2;
            if (trace != null) {
                trace.set(i, angle[i], volume[i], p);
            }
        }
        double gross = work + openParts(p0, p, in.exhaustPressure());
        double gas = rUnburned + x * (in.burned().gasConstant(t) - rUnburned);
        double share = heatCapacity(in, t, x) / (heatCapacity(in, t, x) + gas);
        double exhaust = t * (share + (1 - share) * Math.min(1, in.exhaustPressure() / p));
        return new Cycle(
                gross, gross / engine.cylinderDisplacement(), peakP, angle[peak], peakT, loss, exhaust, knock, x, t, p);
    }

    /** Work between the valve events and bottom dead centre: intake pressure before, a straight fall after. */
    private double openParts(double closingPressure, double openingPressure, double exhaustPressure) {
        double before = closingPressure * (volume[0] - bottomVolume);
        double after = 0.5 * (openingPressure + exhaustPressure) * (bottomVolume - volume[volume.length - 1]);
        return before + after;
    }

    /** {@code ln(b/a)} from {@code z = (b-a)/(b+a)}; neighbours of a cycle differ by less than a fifth: good to 1e-6. */
    private static double logRatio(double z) {
        double z2 = z * z;
        return 2 * z + 2 * z * z2 * (1.0 / 3 + z2 * (1.0 / 5));
    }

    /** {@code exp(x)} by its series, grouped for short chains; good to 1e-6 up to a fifth. */
    private static double expSmall(double x) {
        double x2 = x * x;
        return (1 + x) + x2 * ((0.5 + x * (1.0 / 6)) + x2 * (1.0 / 24 + x * (1.0 / 120)));
    }

    private static double heatCapacity(CycleInput in, double t, double x) {
        if (x == 1) {
            return in.burned().heatCapacity(t);
        }
        double u = in.unburned().heatCapacity(t);
        return x == 0 ? u : u + x * (in.burned().heatCapacity(t) - u);
    }

    private static double energy(CycleInput in, double t, double x) {
        if (x == 1) {
            return in.burned().energy(t);
        }
        double u = in.unburned().energy(t);
        return x == 0 ? u : u + x * (in.burned().energy(t) - u);
    }

    /** Cylinders of the same engine, valve events, step and wall heat are the same: the other tables follow from these. */
    @Override
    public boolean equals(Object other) {
        if (this == other) {
            return true;
        }
        return other instanceof Cylinder o
                && engine.equals(o.engine)
                && heatTransfer.equals(o.heatTransfer)
                && Arrays.equals(angle, o.angle);
    }

    @Override
    public int hashCode() {
        return Objects.hash(engine, heatTransfer, angle.length);
    }
}
