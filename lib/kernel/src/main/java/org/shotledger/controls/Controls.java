package org.shotledger.controls;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Makes controls, to be imported as statics. */
public final class Controls {
    private Controls() {}

    /**
     * Controls to be shown together.
     *
     * @param controls one at least, each with a name of its own
     * @return the panel; show it with {@code show}
     * @throws IllegalArgumentException when there is none, or two have one name
     */
    public static Panel controls(Control<?>... controls) {
        return Panel.of(Arrays.asList(controls));
    }

    /**
     * A slider over plain numbers; it starts in the middle and moves in hundredths of its way.
     *
     * @param name what it sets, unique in its panel
     * @param low lowest value, finite
     * @param high highest value, finite, above {@code low}
     * @return the slider
     * @throws IllegalArgumentException when the ends are not in order
     */
    public static Control<Double> slider(String name, double low, double high) {
        return slider(name, low, high, Readout.NUMBERS);
    }

    /**
     * A slider over values that are shown as numbers of some unit.
     *
     * @param <T> the values
     * @param name what it sets, unique in its panel
     * @param low lowest value
     * @param high highest value, above {@code low}
     * @param readout how a value becomes the number on the slider, and back
     * @return the slider; it starts in the middle
     * @throws IllegalArgumentException when the ends are not in order
     */
    public static <T> Control<T> slider(String name, T low, T high, Readout<T> readout) {
        double from = readout.shown(low);
        double to = readout.shown(high);
        if (!(from < to) || Double.isInfinite(from) || Double.isInfinite(to)) {
            throw new IllegalArgumentException("The slider '" + name + "' goes from " + readout.words(low) + " to "
                    + readout.words(high) + "; give two finite values, the lower one first.");
        }
        return Control.of(name, new SliderLook<>(from, to, readout), readout.value((from + to) / 2));
    }

    /**
     * A slider that stops at given values only.
     *
     * @param <T> the values
     * @param name what it sets, unique in its panel
     * @param choices value by the words that stand beside the slider, in the order along it; one at least
     * @return the slider; it starts at the first
     * @throws IllegalArgumentException when there is no choice
     */
    public static <T> Control<T> steps(String name, Map<String, T> choices) {
        return Control.of(name, new ChoiceLook<>(named(name, choices), true), first(choices));
    }

    /**
     * A menu.
     *
     * @param <T> the values
     * @param name what it sets, unique in its panel
     * @param choices value by the words in the menu, in their order; one at least
     * @return the menu; it starts at the first
     * @throws IllegalArgumentException when there is no choice
     */
    public static <T> Control<T> menu(String name, Map<String, T> choices) {
        return Control.of(name, new ChoiceLook<>(named(name, choices), false), first(choices));
    }

    /**
     * A menu of words.
     *
     * @param name what it sets, unique in its panel
     * @param choices the words, one at least
     * @return the menu; it starts at the first
     * @throws IllegalArgumentException when there is no choice
     */
    public static Control<String> menu(String name, String... choices) {
        Map<String, String> same = new LinkedHashMap<>();
        List.of(choices).forEach(choice -> same.put(choice, choice));
        return menu(name, same);
    }

    /**
     * A box to tick.
     *
     * @param name what it says, unique in its panel
     * @param start whether it is ticked at first
     * @return the box
     */
    public static Control<Boolean> checkbox(String name, boolean start) {
        return Control.of(name, new BoxLook(), start);
    }

    /**
     * A field for a plain number.
     *
     * @param name what it sets, unique in its panel
     * @param start the number at first
     * @return the field
     */
    public static Control<Double> number(String name, double start) {
        return Control.of(name, new FieldLook<>(Readout.NUMBERS), start);
    }

    private static <T> Map<String, T> named(String name, Map<String, T> choices) {
        if (choices.isEmpty()) {
            throw new IllegalArgumentException("The control '" + name + "' has no choices; give one at least.");
        }
        return new LinkedHashMap<>(choices);
    }

    private static <T> T first(Map<String, T> choices) {
        return choices.isEmpty() ? null : choices.values().iterator().next();
    }
}
