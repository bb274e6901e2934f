package org.shotledger.controls;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A box to tick. */
record BoxLook() implements Look<Boolean> {

    @Override
    public Map<String, Object> state() {
        Map<String, Object> state = new LinkedHashMap<>(Look.named("Checkbox"));
        state.put("indent", false);
        return state;
    }

    @Override
    public boolean isNamedAbove() {
        return false;
    }

    @Override
    public Object toPage(Boolean value) {
        return value;
    }

    @Override
    public Boolean fromPage(Object sent, Boolean held) {
        return sent instanceof Boolean ticked ? ticked : held;
    }

    @Override
    public String words(Boolean value) {
        return value ? "yes" : "no";
    }

    @Override
    public List<Boolean> some(int count) {
        return List.of(false, true);
    }
}
