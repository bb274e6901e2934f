package org.shotledger.controls;

import java.util.List;
import java.util.Map;

/** A box to tick. */
record BoxLook() implements Look<Boolean> {

    @Override
    public Map<String, Object> state() {
        return Look.named("Checkbox");
    }

    @Override
    public String style() {
        return "CheckboxStyleModel";
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
