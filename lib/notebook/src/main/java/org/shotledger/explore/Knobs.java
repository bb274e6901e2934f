package org.shotledger.explore;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.shotledger.controls.Control;
import org.shotledger.controls.Controls;
import org.shotledger.controls.Readout;
import org.shotledger.controls.Values;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.setup.BottleState;
import org.shotledger.units.Amount;
import org.shotledger.units.GaugePressure;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** The controls for a plan, and how they and positions turn into each other. Ranges and steps are our choice. */
final class Knobs {
    private final JetPair ready;
    private final Control<Amount> target;
    private final Control<Boolean> nitrous;
    private final Control<Amount> nitrousJet;
    private final Control<Amount> fuelJet;
    private final Control<GaugePressure> boost;
    private final Control<GaugePressure> fuelPressure;
    private final Control<Amount> bottle;
    private final Control<Double> retard;
    private final Optional<Control<Double>> ethanol;
    private final Control<Amount> air;
    private final Control<Amount> altitude;
    private final Control<BottleState> moment;

    Knobs(Plan plan, UnitSystem system) {
        double[] rungs = rungs(plan);
        ready = new JetPair(rungs[rungs.length / 2], rungs[rungs.length / 3]);
        Position start = Start.of(plan, ready);
        double power = plan.target().wheelPower();
        target = over("target power", Written.power(system), 0.6 * power, 1.3 * power)
                .from(new Amount(QuantityKind.POWER, power))
                .onRelease();
        nitrous = Controls.checkbox("nitrous", start.nitrous());
        nitrousJet = Controls.steps("nitrous jet", jets(rungs, start.nitrousJet(), system))
                .from(start.nitrousJet());
        fuelJet =
                Controls.steps("fuel jet", jets(rungs, start.fuelJet(), system)).from(start.fuelJet());
        boost = overGauge("highest boost", 0.2e5, 1.1 * plan.car().turbo().boostCeiling(), system)
                .from(start.boost());
        double base = start.fuelPressure().pascals();
        fuelPressure =
                overGauge("fuel pressure", 0.6 * base, 1.6 * base, system).from(start.fuelPressure());
        bottle = over("bottle", Written.temperature(system), 278.15, 309.15).from(start.bottle());
        retard = Controls.slider("spark retard", 0.0, 20.0, number("deg", 1, 1))
                .step(0.5)
                .from(start.retard());
        ethanol = plan.car()
                .fuels()
                .blend()
                .map(blend -> Controls.slider("ethanol", 0.0, 1 - blend.water(), number("%", 100, 0))
                        .step(1)
                        .from(start.ethanol()));
        air = over("air", Written.temperature(system), 263.15, 318.15).from(start.air());
        altitude = over("altitude", Written.altitude(system), 0, 3048).from(start.altitude());
        moment = Controls.menu("moment", moments(start.moment())).from(start.moment());
    }

    private static double[] rungs(Plan plan) {
        return plan.car().nitrous().ladder().bores();
    }

    /** The rungs of the ladder, and the jet in use where it is none of them. */
    private static Map<String, Amount> jets(double[] rungs, Amount used, UnitSystem system) {
        Map<String, Amount> choices = new LinkedHashMap<>();
        DoubleStream.concat(DoubleStream.of(rungs), DoubleStream.of(used.value()))
                .sorted()
                .distinct()
                .mapToObj(bore -> new Amount(QuantityKind.BORE, bore))
                .forEach(jet -> choices.put(jet.text(system), jet));
        return choices;
    }

    private static Map<String, BottleState> moments(BottleState stated) {
        Map<String, BottleState> choices = new LinkedHashMap<>();
        for (BottleState state : List.of(stated, BottleState.FULL, BottleState.LAST)) {
            choices.putIfAbsent(state.moment().words(), state);
        }
        return choices;
    }

    private static Control<Amount> over(String name, Written.Unit<Amount> unit, double low, double high) {
        return over(name, unit.readout(), new Amount(unit.kind(), low), new Amount(unit.kind(), high));
    }

    private static Control<GaugePressure> overGauge(String name, double low, double high, UnitSystem system) {
        return over(name, Sliders.gauges(system), Start.gauge(low), Start.gauge(high));
    }

    /** In steps of the last digit that is shown, so that what stands beside a slider is what is run. */
    private static <T> Control<T> over(String name, Readout<T> readout, T low, T high) {
        double step = Math.pow(10, -readout.digits());
        return Controls.slider(
                        name,
                        readout.value(Math.ceil(readout.shown(low) / step) * step),
                        readout.value(Math.floor(readout.shown(high) / step) * step),
                        readout)
                .step(step);
    }

    private static Readout<Double> number(String unit, double factor, int digits) {
        return new Readout<>() {
            @Override
            public double shown(Double value) {
                return factor * value;
            }

            @Override
            public Double value(double shown) {
                return shown / factor;
            }

            @Override
            public String unit() {
                return unit;
            }

            @Override
            public int digits() {
                return digits;
            }
        };
    }

    List<Control<?>> all() {
        List<Control<?>> all = new ArrayList<>(
                List.of(target, boost, nitrousJet, fuelJet, fuelPressure, retard, bottle, moment, air, altitude));
        ethanol.ifPresent(all::add);
        all.add(nitrous);
        return all;
    }

    Control<Amount> target() {
        return target;
    }

    Position read(Plan plan, Values values) {
        return new Position(
                plan,
                values.of(nitrous),
                values.of(nitrousJet),
                values.of(fuelJet),
                values.of(boost),
                values.of(fuelPressure),
                values.of(bottle),
                values.of(retard),
                ethanol.map(values::of).orElse(Double.NaN),
                values.of(air),
                values.of(altitude),
                values.of(moment));
    }

    /** Moves what is set, or everything, to where the plan has it. */
    void move(Plan plan, Values values, boolean day) {
        Position start = Start.of(plan, ready);
        values.set(nitrous, start.nitrous());
        values.set(nitrousJet, start.nitrousJet());
        values.set(fuelJet, start.fuelJet());
        values.set(boost, start.boost());
        values.set(fuelPressure, start.fuelPressure());
        values.set(bottle, start.bottle());
        values.set(retard, start.retard());
        if (day) {
            values.set(target, new Amount(QuantityKind.POWER, plan.target().wheelPower()));
            ethanol.ifPresent(content -> values.set(content, start.ethanol()));
            values.set(air, start.air());
            values.set(altitude, start.altitude());
            values.set(moment, start.moment());
        }
    }

    /** What stands elsewhere than the plan has it, in words. */
    List<String> moved(Plan plan, Values values) {
        Position start = Start.of(plan, ready);
        Position now = read(plan, values);
        List<String> words = new ArrayList<>();
        if (now.nitrous() != start.nitrous()) {
            words.add(now.nitrous() ? "with nitrous" : "without nitrous");
        }
        if (now.nitrous() && !now.jetsAre(start)) {
            words.add("jets " + nitrousJet.words(now.nitrousJet()) + " / " + fuelJet.words(now.fuelJet()));
        }
        add(words, boost, now.boost(), start.boost());
        add(words, fuelPressure, now.fuelPressure(), start.fuelPressure());
        add(words, bottle, now.bottle(), start.bottle());
        add(words, retard, now.retard(), start.retard());
        ethanol.ifPresent(content -> add(words, content, now.ethanol(), start.ethanol()));
        add(words, air, now.air(), start.air());
        add(words, altitude, now.altitude(), start.altitude());
        if (!now.moment().equals(start.moment())) {
            words.add(moment.words(now.moment()));
        }
        return words;
    }

    private static <T> void add(List<String> words, Control<T> control, T now, T start) {
        if (!now.equals(start)) {
            words.add(control.name() + " " + control.words(now));
        }
    }
}
