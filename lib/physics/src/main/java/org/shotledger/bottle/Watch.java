package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fluid.VesselPoint;

/** What a run looks out for: events to report, the thermostat, and which set of equations holds. */
final class Watch {
    /** Share of the charge at which the bottle counts as empty: our choice. */
    private static final double SMALLEST_SHARE = 1e-3;
    /** Pressure at which it counts as empty, Pa: our choice, twice the atmosphere, no jet is fed by less. */
    private static final double LOWEST_PRESSURE = 2e5;
    /** Share of the first vapour's flow at which the pressure behind the jets has all but stopped it. */
    private static final double LEAST_FLOW = 0.02;

    /** Share of the bottle from which the vapour space counts as a body of its own, and below which it no longer does. */
    private static final double ROOM_TO_PART = 0.01;

    /** Share of vapour at which liquid and vapour are taken together again: our choice, well below the one at which they part. */
    private static final double ROOM_TO_JOIN = 0.003;
    /** A compressed liquid counts as at ease again from this much room on; smaller, and rounding would report it twice. */
    private static final double ROOM_AGAIN = 1e-3;

    /** Distance to the temperature from which they are not told apart, K: our choice. */
    private static final double WARM_MARGIN = 0.5;
    /** Share of the critical pressure above which they are not told apart: our choice. */
    private static final double NEAR_CRITICAL_SHARE = 0.98;
    /** Just below what the equation of state covers, 50 MPa. */
    private static final double HIGHEST_PRESSURE = 49e6;
    /** Just below what the equation of state covers, 525 K. */
    private static final double HIGHEST_TEMPERATURE = 520;
    /** A switch needs a difference to switch; smaller ones are taken as this share of the pressure. Our choice. */
    private static final double LEAST_HYSTERESIS = 2e-3;

    final List<BottleEvent> events = new ArrayList<>();
    boolean ended;

    private final Emptying task;
    private final Exchange exchange;
    private final MixedBody mixed;
    private final ApartBody apart;
    private final double heaterOn;
    private boolean parting;
    private boolean parted;
    private boolean below;
    private boolean above;
    private boolean full;
    private double vapourFlow;
    private double time;
    private double[] y;

    Watch(Emptying task, Exchange exchange, BoilingLaw law) {
        this.task = task;
        this.exchange = exchange;
        mixed = new MixedBody(task, exchange);
        parting = law != null;
        apart = parting ? new ApartBody(task, exchange, law) : null;
        heaterOn = Math.min(
                task.heat().heaterOn(), (1 - LEAST_HYSTERESIS) * task.heat().heaterOff());
    }

    Body body() {
        return parted ? apart : mixed;
    }

    void begin(double[] state) {
        moveTo(0, state);
        if (task.charge().liquidMass() <= 0) {
            uncover();
        }
        exchange.heating = task.heat().heaterPower() > 0
                && mixed.pressure(state) < task.heat().heaterOff();
    }

    void moveTo(double now, double[] state) {
        time = now;
        y = state;
    }

    void note(BottleEvent.Kind kind, double now, double[] state) {
        events.add(new BottleEvent(kind, now, body().pressure(state), state[Layout.MASS]));
        ended |= task.stops().contains(kind);
    }

    /** Contents come to rest. */
    Charge atRest(double[] state) {
        FluidState contents = mixed.at(state).state();
        return new Charge(
                task.charge().bottle(),
                state[Layout.MASS],
                contents,
                exchange.shellTemperature(state, contents.temperature()));
    }

    /** The integrator gave up: go on without parting the phases. */
    void stuck(RuntimeException reason) {
        if (parted) {
            parting = false;
            parted = false;
        } else {
            throw reason;
        }
    }

    List<Crossing> crossings(double now, double[] state) {
        moveTo(now, state);
        List<Crossing> list = new ArrayList<>();
        liquid(list);
        band(list);
        heater(list);
        ends(list);
        if (parted) {
            list.add(new Crossing(this::joinable, () -> parted = false));
        } else if (parting && !mixed.uncovered) {
            list.add(new Crossing(s -> -partable(s), this::part));
        }
        return list;
    }

    private void liquid(List<Crossing> list) {
        if (parted) {
            list.add(new Crossing(apart::liquidShare, this::uncover));
            return;
        }
        if (!mixed.uncovered) {
            list.add(new Crossing(mixed::liquidShare, this::uncover));
        }
        if (full) {
            list.add(new Crossing(s -> ROOM_AGAIN - mixed.room(s), () -> full = false));
        } else {
            list.add(new Crossing(mixed::room, () -> {
                full = true;
                note(BottleEvent.Kind.LIQUID_FULL, time, y);
            }));
        }
    }

    private void uncover() {
        note(BottleEvent.Kind.LIQUID_UNCOVERED, time, y);
        mixed.uncovered = true;
        parted = false;
        vapourFlow = mixed.flow(time, mixed.outlet(y));
    }

    private void band(List<Crossing> list) {
        double low = task.pressureLimit();
        if (low > 0 && !below) {
            list.add(new Crossing(s -> body().pressure(s) / low - 1, () -> {
                below = true;
                note(BottleEvent.Kind.PRESSURE_BELOW, time, y);
            }));
        }
        double high = task.pressureCeiling();
        if (high > 0 && !above) {
            list.add(new Crossing(s -> 1 - body().pressure(s) / high, () -> {
                above = true;
                note(BottleEvent.Kind.PRESSURE_ABOVE, time, y);
            }));
        }
    }

    private void heater(List<Crossing> list) {
        HeatInput heat = task.heat();
        if (heat.heaterPower() <= 0) {
            return;
        }
        Runnable toggle = () -> {
            note(BottleEvent.Kind.THERMOSTAT, time, y);
            exchange.heating = !exchange.heating;
        };
        if (exchange.heating) {
            list.add(new Crossing(s -> 1 - body().pressure(s) / heat.heaterOff(), toggle));
        } else {
            list.add(new Crossing(s -> body().pressure(s) / heaterOn - 1, toggle));
        }
    }

    private void ends(List<Crossing> list) {
        double smallest = SMALLEST_SHARE * task.charge().mass();
        list.add(new Crossing(
                s -> Math.min(s[Layout.MASS] / smallest - 1, body().pressure(s) / LOWEST_PRESSURE - 1),
                () -> end(BottleEvent.Kind.EMPTY)));
        if (mixed.uncovered && vapourFlow > 0) {
            list.add(new Crossing(
                    s -> body().flow(time, body().outlet(s)) / (LEAST_FLOW * vapourFlow) - 1,
                    () -> end(BottleEvent.Kind.EMPTY)));
        }
        list.add(new Crossing(
                s -> Math.min(
                        HIGHEST_PRESSURE / body().pressure(s) - 1, HIGHEST_TEMPERATURE / body().temperature(s) - 1),
                () -> end(BottleEvent.Kind.BEYOND_EQUATION)));
    }

    private void end(BottleEvent.Kind kind) {
        note(kind, time, y);
        ended = true;
    }

    /** Positive where there is room for vapour, liquid to speak of, and the critical point is far. */
    private double partable(double[] state) {
        VesselPoint point = mixed.at(state);
        double quality = point.quality();
        double cold = (ApartBody.NEAR_CRITICAL - WARM_MARGIN - point.temperature()) / 100;
        if (Double.isNaN(quality)) {
            return -ROOM_TO_PART - Math.abs(mixed.room(state));
        }
        double room = quality * point.density() / point.vapourDensity() - ROOM_TO_PART;
        return Math.min(cold, Math.min(room, 1 - quality - 2 * ApartBody.GONE));
    }

    private double joinable(double[] state) {
        double cold = (ApartBody.NEAR_CRITICAL - apart.temperature(state)) / 100;
        double boiling = 1 - apart.pressure(state) / (NEAR_CRITICAL_SHARE * NitrousOxide.CRITICAL_PRESSURE);
        return Math.min(Math.min(cold, boiling), apart.room(state) / ROOM_TO_JOIN - 1);
    }

    private void part() {
        VesselPoint point = mixed.at(y);
        apart.part(y, point.quality(), point.temperature());
        parted = true;
    }
}
