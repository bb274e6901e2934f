package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A menu, or a slider that stops at its choices only. */
record ChoiceLook<T>(Map<String, T> choices, boolean slides) implements Look<T> {

    @Override
    public Map<String, Object> state() {
        Map<String, Object> state = new LinkedHashMap<>(Look.named(slides ? "SelectionSlider" : "Dropdown"));
        state.put("_options_labels", List.copyOf(choices.keySet()));
        return state;
    }

    @Override
    public String key() {
        return "index";
    }

    /** The page counts its choices and never says their words. */
    @Override
    public Object toPage(T value) {
        return List.copyOf(choices.values()).indexOf(value);
    }

    @Override
    public T fromPage(Object sent, T held) {
        return sent instanceof Number index && index.intValue() >= 0 && index.intValue() < choices.size()
                ? List.copyOf(choices.values()).get(index.intValue())
                : held;
    }

    @Override
    public String words(T value) {
        return choices.entrySet().stream()
                .filter(choice -> choice.getValue().equals(value))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(String.valueOf(value));
    }

    @Override
    public List<T> some(int count) {
        List<T> all = List.copyOf(choices.values());
        int shown = Math.min(count, all.size());
        return IntStream.range(0, shown)
                .mapToObj(i -> all.get(shown == 1 ? 0 : (int) Math.round(i * (all.size() - 1.0) / (shown - 1))))
                .toList();
    }
}
