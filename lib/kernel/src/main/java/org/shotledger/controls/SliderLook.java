package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A slider between two numbers. */
record SliderLook<T>(double low, double high, double step, Readout<T> readout) implements Look<T> {
    private static final double STEPS = 100;

    SliderLook(double low, double high, Readout<T> readout) {
        this(low, high, (high - low) / STEPS, readout);
    }

    @Override
    public Map<String, Object> state() {
        Map<String, Object> state = new LinkedHashMap<>(Look.named("FloatSlider"));
        state.put("min", low);
        state.put("max", high);
        state.put("step", step);
        state.put("readout_format", "." + readout.digits() + "f");
        return state;
    }

    /** Where a slider stands between its steps, a page moves it to the nearest and says so; it is told that place from the first. */
    @Override
    public Object toPage(T value) {
        return onStep((readout.shown(value) - low) / step);
    }

    private double onStep(double steps) {
        return rounded(Math.min(Math.max(low + step * Math.rint(steps), low), high));
    }

    @Override
    public T fromPage(Object sent, T held) {
        return sent instanceof Number number && number.doubleValue() >= low && number.doubleValue() <= high
                ? readout.value(rounded(number.doubleValue()))
                : held;
    }

    /** A page adds up its steps: 17.400000000000002 was meant to be 17.4. */
    private static double rounded(double number) {
        return Math.round(number * 1e9) / 1e9;
    }

    @Override
    public String words(T value) {
        return readout.words(value);
    }

    @Override
    public List<T> some(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> readout.value(onStep((high - low) / step * (count == 1 ? 0.5 : i / (count - 1.0)))))
                .toList();
    }

    @Override
    public String unit() {
        return readout.unit();
    }
}
