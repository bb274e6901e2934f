package org.shotledger.bottle;

import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.VesselPoint;

/** Contents of one temperature and pressure, whatever their phase: {@code dU/dt = Q - m h_out}. */
final class MixedBody extends Body {
    private static final double LEAST_SHARE = 1e-6;

    private final VesselPoint point = new VesselPoint();
    /** Whether the siphon draws vapour. */
    boolean uncovered;

    MixedBody(Emptying task, Exchange exchange) {
        super(task, exchange);
    }

    /** State at a set of quantities; a trial step may overshoot the end of the contents. */
    VesselPoint at(double[] y) {
        double mass = Math.max(y[Layout.MASS], LEAST_SHARE * task.charge().mass());
        return point.at(mass / bottle.waterCapacity(), y[Layout.ENERGY] / mass);
    }

    @Override
    double[] rates(double time, double[] y) {
        VesselPoint state = at(y);
        double temperature = state.temperature();
        double capacity = THIN_GAS_CAPACITY
                * Math.max(y[Layout.MASS], LEAST_SHARE * task.charge().mass());
        FluidState outlet = outlet(state);
        double flow = flow(time, outlet);
        double shell = exchange.shellTemperature(y, temperature);
        double outside = exchange.fromOutside(shell, capacity);
        double wet = wettedShare(state);
        double toContents = exchange.shellCapacity > 0
                ? exchange.toContents(wet + HeatInput.GAS_SHARE * (1 - wet), shell, temperature, capacity)
                : exchange.open() ? outside : 0;
        return rates(flow, outlet.enthalpy(), toContents, outside);
    }

    private double wettedShare(VesselPoint state) {
        double quality = state.quality();
        if (Double.isNaN(quality)) {
            return state.density() > NitrousOxide.CRITICAL_DENSITY ? 1 : 0;
        }
        return Math.min(1, (1 - quality) * state.density() / state.liquidDensity());
    }

    @Override
    FluidState outlet(double[] y) {
        return outlet(at(y));
    }

    /**
     * What the siphon takes. Until the event is found the liquid's law is continued past the dew line, so that the
     * derivatives have no jump inside a step.
     */
    private FluidState outlet(VesselPoint state) {
        boolean single = Double.isNaN(state.quality());
        if (single && (uncovered || state.density() > NitrousOxide.CRITICAL_DENSITY)) {
            return state.state();
        }
        double temperature = Math.min(state.temperature(), NitrousOxide.CRITICAL_TEMPERATURE);
        return uncovered ? NitrousOxide.saturatedVapour(temperature) : NitrousOxide.saturatedLiquid(temperature);
    }

    @Override
    double pressure(double[] y) {
        return at(y).pressure();
    }

    @Override
    double temperature(double[] y) {
        return at(y).temperature();
    }

    @Override
    double liquidMass(double[] y) {
        VesselPoint state = at(y);
        if (!Double.isNaN(state.quality())) {
            return (1 - state.quality()) * y[Layout.MASS];
        }
        return state.density() > NitrousOxide.CRITICAL_DENSITY ? y[Layout.MASS] : 0;
    }

    /** Positive while there is liquid at the siphon, falls through zero when it uncovers. */
    double liquidShare(double[] y) {
        VesselPoint state = at(y);
        if (!Double.isNaN(state.quality())) {
            return 1 - state.quality();
        }
        double density = state.density();
        if (density > NitrousOxide.CRITICAL_DENSITY || state.temperature() >= NitrousOxide.CRITICAL_TEMPERATURE) {
            return density / NitrousOxide.CRITICAL_DENSITY - 1;
        }
        double top = Math.min(Math.max(state.pressure(), NitrousOxide.TRIPLE_PRESSURE), NitrousOxide.CRITICAL_PRESSURE);
        return Math.min(-1e-12, NitrousOxide.saturationTemperature(top) / state.temperature() - 1);
    }

    /** Room above the liquid as a share of its density; zero when liquid fills the bottle, negative when it is compressed. */
    double room(double[] y) {
        VesselPoint state = at(y);
        return 1 - state.density() / state.liquidDensity();
    }

    @Override
    double relativeTolerance() {
        return 1e-9;
    }

    @Override
    double[] absoluteTolerance() {
        double mass = task.charge().mass();
        double[] tolerance = new double[Layout.SIZE];
        java.util.Arrays.fill(tolerance, Double.MAX_VALUE);
        tolerance[Layout.MASS] = 1e-10 * mass;
        tolerance[Layout.ENERGY] = 1e-5 * mass;
        tolerance[Layout.SHELL] = 1e-8 * Math.max(1e-6, exchange.shellCapacity);
        return tolerance;
    }
}
