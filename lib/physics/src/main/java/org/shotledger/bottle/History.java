package org.shotledger.bottle;

import java.util.List;
import java.util.Optional;

/**
 * What a bottle did in time.
 *
 * @param model name of the model
 * @param expectedError the model's known relative error in pressure
 * @param moments rows in order of time, the first at the start, the last at the end
 * @param events events in order of time
 * @param left bottle and contents at the end, come to rest (one temperature)
 * @param balance mass and energy balance
 */
public record History(
        String model,
        double expectedError,
        List<Sample> moments,
        List<BottleEvent> events,
        Charge left,
        Balance balance) {
    /**
     * Copies the lists.
     */
    public History {
        moments = List.copyOf(moments);
        events = List.copyOf(events);
    }

    /**
     * The first row.
     *
     * @return state at the start
     */
    public Sample first() {
        return moments.get(0);
    }

    /**
     * The last row.
     *
     * @return state at the end
     */
    public Sample last() {
        return moments.get(moments.size() - 1);
    }

    /**
     * The first event of a kind.
     *
     * @param kind kind of event
     * @return the event, or empty when it did not happen
     */
    public Optional<BottleEvent> find(BottleEvent.Kind kind) {
        return events.stream().filter(event -> event.kind() == kind).findFirst();
    }

    /**
     * Row at a time, linear between rows.
     *
     * @param time time, s; clamped to the history
     * @return interpolated row
     */
    public Sample at(double time) {
        int i = 1;
        while (i < moments.size() - 1 && moments.get(i).time() < time) {
            i++;
        }
        if (moments.size() == 1) {
            return first();
        }
        Sample a = moments.get(i - 1);
        Sample b = moments.get(i);
        double span = b.time() - a.time();
        double share = span > 0 ? Math.min(Math.max((time - a.time()) / span, 0), 1) : 1;
        return new Sample(
                mix(a.time(), b.time(), share),
                mix(a.temperature(), b.temperature(), share),
                mix(a.pressure(), b.pressure(), share),
                mix(a.liquidMass(), b.liquidMass(), share),
                mix(a.vapourMass(), b.vapourMass(), share),
                mix(a.massFlow(), b.massFlow(), share),
                mix(a.wallTemperature(), b.wallTemperature(), share));
    }

    private static double mix(double a, double b, double share) {
        return a + share * (b - a);
    }

    /**
     * Nitrous oxide that left the bottle.
     *
     * @return mass, kg
     */
    public double massUsed() {
        return first().mass() - last().mass();
    }
}
