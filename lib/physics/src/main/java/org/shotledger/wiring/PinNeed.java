package org.shotledger.wiring;

import static org.shotledger.units.QuantityKind.CURRENT;
import static org.shotledger.units.UnitSystem.SI;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.shotledger.units.Require;

/**
 * What a signal asks of a pin.
 *
 * @param kinds kinds of pin that serve, at least one
 * @param pullUpLow least pull-up that serves, ohm; zero where none is asked
 * @param pullUpHigh greatest pull-up that serves, ohm
 * @param low voltage of a digital signal when it is low, V
 * @param high voltage of a digital signal when it is high, V; the threshold must lie between both with a tenth of the swing to spare
 * @param frequency edge rate, pulse rate or frames per second, Hz
 * @param current to be switched, A
 */
public record PinNeed(
        Set<PinKind> kinds,
        double pullUpLow,
        double pullUpHigh,
        double low,
        double high,
        double frequency,
        double current) {
    /** Share of the swing kept free on both sides of a threshold: our choice, as lines pick up noise from ignition. */
    private static final double SPARE = 0.1;

    public PinNeed {
        kinds = Set.copyOf(kinds);
        if (kinds.isEmpty()) {
            throw new IllegalArgumentException("A signal asks for no kind of pin; name at least one.");
        }
        Require.notNegative("least pull-up asked for", pullUpLow, "ohm");
        Require.within("greatest pull-up asked for", pullUpHigh, pullUpLow, 1e9, "ohm");
        Require.within("high level of a signal", high, low, 60, "V");
        Require.within("frequency asked for", frequency, 0, 1e6, "Hz");
        Require.within("current asked for", current, 0, 500, "A");
    }

    /**
     * A voltage.
     *
     * @return the need
     */
    public static PinNeed voltage() {
        return of(PinKind.ANALOGUE, 0, 0);
    }

    /**
     * A resistance to ground.
     *
     * @param pullUpLow least pull-up with which the error stays small enough, ohm
     * @param pullUpHigh greatest, ohm
     * @return the need
     */
    public static PinNeed resistance(double pullUpLow, double pullUpHigh) {
        return new PinNeed(Set.of(PinKind.ANALOGUE_PULL_UP), pullUpLow, pullUpHigh, 0, 0, 0, 0);
    }

    /**
     * A thermocouple.
     *
     * @return the need
     */
    public static PinNeed thermocouple() {
        return of(PinKind.THERMOCOUPLE, 0, 0);
    }

    /**
     * A train of edges.
     *
     * @param frequency greatest rate, Hz
     * @param low voltage when low, V
     * @param high voltage when high, V
     * @return the need
     */
    public static PinNeed edges(double frequency, double low, double high) {
        return new PinNeed(Set.of(PinKind.FREQUENCY), 0, 0, low, high, frequency, 0);
    }

    /**
     * Something to be driven from one kind of output.
     *
     * @param kind the output
     * @param current A
     * @param frequency pulse rate, Hz; zero for on and off
     * @return the need
     */
    public static PinNeed of(PinKind kind, double current, double frequency) {
        return new PinNeed(Set.of(kind), 0, 0, 0, 0, frequency, current);
    }

    /**
     * Why a pin does not serve.
     *
     * @param pin the pin
     * @return one phrase with value and need; empty when the pin serves
     */
    public Optional<String> refusal(Pin pin) {
        if (Collections.disjoint(kinds, pin.kinds())) {
            return Optional.of(
                    "it is no " + kinds.stream().sorted().map(PinKind::words).collect(Collectors.joining(" or ")));
        }
        if (pullUpHigh > 0 && (pin.pullUp() < pullUpLow || pin.pullUp() > pullUpHigh)) {
            return Optional.of(
                    "its pull-up is " + pin.pullUp() + " ohm, asked are " + pullUpLow + " to " + pullUpHigh + " ohm");
        }
        double spare = SPARE * (high - low);
        if (high > low && !(pin.threshold() >= low + spare && pin.threshold() <= high - spare)) {
            return Optional.of(
                    "it changes at " + pin.threshold() + " V, the signal swings from " + low + " to " + high + " V");
        }
        if (frequency > pin.frequency()) {
            return Optional.of("it manages " + pin.frequency() + " Hz, asked are " + frequency + " Hz");
        }
        if (current > pin.current()) {
            return Optional.of(
                    "it switches " + CURRENT.text(pin.current(), SI) + ", asked are " + CURRENT.text(current, SI));
        }
        return Optional.empty();
    }

    /** Whether an output is asked for. */
    boolean output() {
        return kinds.stream().allMatch(PinKind::output);
    }

    /** The same with another current, for loads that share a pin. */
    PinNeed withCurrent(double value) {
        return new PinNeed(kinds, pullUpLow, pullUpHigh, low, high, frequency, value);
    }
}
