package org.shotledger.controls;

import java.util.List;
import java.util.Map;

/** A field for a number. */
record FieldLook<T>(Readout<T> readout) implements Look<T> {

    @Override
    public Map<String, Object> state() {
        return Look.named("FloatText");
    }

    @Override
    public Object toPage(T value) {
        return readout.shown(value);
    }

    @Override
    public T fromPage(Object sent, T held) {
        return sent instanceof Number number && Double.isFinite(number.doubleValue())
                ? readout.value(number.doubleValue())
                : held;
    }

    @Override
    public String words(T value) {
        return readout.words(value);
    }

    @Override
    public List<T> some(int count) {
        return List.of();
    }

    @Override
    public String unit() {
        return readout.unit();
    }
}
