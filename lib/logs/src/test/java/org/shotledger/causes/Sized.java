package org.shotledger.causes;

import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.shotledger.evaluate.Outcome;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Factor;
import org.shotledger.supply.Regulator;

/**
 * A fault of a size that is known as the fit states it.
 *
 * @param cause the fault
 * @param size its size
 * @param planted the run with it
 */
record Sized(Cause cause, double size, Planted planted) {
    private static final List<Cause> DRAWN = List.of(
            Cause.FUEL_JETS,
            Cause.NITROUS_JETS,
            Cause.LAMBDA_SENSOR,
            Cause.ENGINE_WORK,
            Cause.BOTTLE,
            Cause.BOOST,
            Cause.NITROUS_FUEL_PRESSURE,
            Cause.MAIN_FUEL,
            Cause.SUPPLY_VOLTAGE,
            Cause.BOTTLE_GAUGE);

    /** The seed chooses the cause in turn, and its size: 3 to 8 % of what the cause acts on. */
    static Sized draw(Planted sound, int seed) {
        Cause cause = DRAWN.get(seed % DRAWN.size());
        Random r = new Random(77 + seed);
        double share = (r.nextBoolean() ? 1 : -1) * (0.03 + 0.05 * r.nextDouble());
        double size = switch (cause) {
            case BOTTLE -> -100 * Math.abs(share);
            case BOOST -> -2e5 * Math.abs(share);
            case SUPPLY_VOLTAGE -> -40 * Math.abs(share);
            case NITROUS_FUEL_PRESSURE -> 4e5 * share;
            case BOTTLE_GAUGE -> 1e7 * share;
            default -> share;
        };
        return new Sized(cause, size, with(sound, cause, size));
    }

    /** The same where everything else lies somewhere in its band, as it does on a real car. */
    Sized amongBands(Outcome outcome, int seed) {
        Random r = new Random(9000 + seed);
        Set<Cause> seen = EnumSet.of(cause);
        Planted p = planted;
        for (Hypothesis h : Hypotheses.of(outcome, 0)) {
            if (h.band() > 0 && seen.add(h.cause())) {
                p = with(p, h.cause(), h.band() * r.nextGaussian());
            }
        }
        return new Sized(cause, size, p);
    }

    private static Planted with(Planted p, Cause cause, double x) {
        return switch (cause) {
            case FUEL_JETS -> p.times(Factor.FUEL_JET_FLOW, 1 + x);
            case NITROUS_JETS -> p.times(Factor.NITROUS_FLOW, 1 + x);
            case NITROUS_WORK -> p.times(Factor.NITROUS_WORK, 1 + x);
            case MAIN_FUEL -> p.times(Factor.MAIN_FUEL, 1 + x);
            case BREATHING -> p.times(Factor.BREATHING, 1 + x);
            case ENGINE_WORK -> p.times(Factor.ENGINE_WORK, 1 + x);
            case LAMBDA_SENSOR -> p.lambda(1 + x);
            case POWER_READING -> p.power(1 + x);
            case BOTTLE_GAUGE -> p.bottleGauge(x);
            case BOTTLE ->
                p.setup(s -> s.withBottle(
                        new BottleFill(s.bottle().charge(), s.bottle().startTemperature() + x)));
            case BOOST -> p.setup(s -> s.withBoost(s.boost().map(g -> g + x)));
            case NITROUS_FUEL_PRESSURE -> p.setup(s -> s.withNitrousRegulator(higher(s.nitrousRegulator(), x)));
            case MAIN_FUEL_PRESSURE -> p.setup(s -> s.withMainRegulator(higher(s.mainRegulator(), x)));
            case SUPPLY_VOLTAGE -> p.world(c -> c.withVoltage(c.voltage() + x));
            case FUEL_CONTENT ->
                p.world(c -> c.withFuel(p.car().fuels().blend().orElseThrow().ethanol() + x));
            default -> p;
        };
    }

    private static Regulator higher(Regulator r, double pressure) {
        return new Regulator(r.name(), r.basePressure() + pressure, r.boostReference());
    }
}
