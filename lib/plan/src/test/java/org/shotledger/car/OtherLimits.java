package org.shotledger.car;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;

/** A car with some of its builder's limits changed and all others left. */
public final class OtherLimits {
    private OtherLimits() {}

    /**
     * Changes limits.
     *
     * @param car the car
     * @param changes SI, by the name of the component of {@link BuilderLimits}; a name that is none fails
     */
    public static Car of(Car car, Map<String, Double> changes) {
        RecordComponent[] all = BuilderLimits.class.getRecordComponents();
        if (!Arrays.stream(all).map(RecordComponent::getName).toList().containsAll(changes.keySet())) {
            throw new IllegalArgumentException("Limits " + changes.keySet() + ": not all of these are limits.");
        }
        try {
            Object[] values = new Object[all.length];
            Class<?>[] types = new Class<?>[all.length];
            for (int i = 0; i < all.length; i++) {
                Object old = all[i].getAccessor().invoke(car.limits());
                values[i] = changes.containsKey(all[i].getName()) ? changes.get(all[i].getName()) : old;
                types[i] = all[i].getType();
            }
            return car.with(BuilderLimits.class.getDeclaredConstructor(types).newInstance(values));
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(e.getMessage(), e);
        }
    }
}
