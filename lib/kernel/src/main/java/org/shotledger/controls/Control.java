package org.shotledger.controls;

/**
 * One control: what it is called, what it looks like, where it starts. It holds no state; that belongs to the panel once it is shown.
 *
 * @param <T> the values it gives
 */
public final class Control<T> {
    private final String name;
    private final Look<T> look;
    private final T start;
    private final boolean whileMoving;

    private Control(String name, Look<T> look, T start, boolean whileMoving) {
        this.name = name;
        this.look = look;
        this.start = start;
        this.whileMoving = whileMoving;
    }

    static <T> Control<T> of(String name, Look<T> look, T start) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("A control has no name; give one, it stands beside it.");
        }
        return new Control<>(name, look, start, true);
    }

    /**
     * The same with another start. The start is kept as it is given, also where the control moves in steps that miss it.
     *
     * @param value what it gives until it is moved
     * @return the changed control
     */
    public Control<T> from(T value) {
        return new Control<>(name, look, value, whileMoving);
    }

    /**
     * The same slider with another step.
     *
     * @param step in the unit shown, above 0
     * @return the changed control
     * @throws IllegalArgumentException when it is no slider over numbers, or the step is not above 0
     */
    public Control<T> step(double step) {
        if (!(look instanceof SliderLook<T> slider) || !(step > 0)) {
            throw new IllegalArgumentException("The control '" + name + "' cannot move in steps of " + step
                    + "; give a step above 0 to a slider over numbers.");
        }
        return new Control<>(
                name, new SliderLook<>(slider.low(), slider.high(), step, slider.readout()), start, whileMoving);
    }

    /**
     * The same, but heard only when it is let go: for what takes longer than a hand moves.
     *
     * @return the changed control
     */
    public Control<T> onRelease() {
        return new Control<>(name, look, start, false);
    }

    /**
     * What it sets.
     *
     * @return its name
     */
    public String name() {
        return name;
    }

    /**
     * What it gives until it is moved.
     *
     * @return the start value
     */
    public T start() {
        return start;
    }

    /**
     * A value of it in words.
     *
     * @param value one it can give
     * @return for example {@code "17.5 psi gauge"}
     */
    public String words(T value) {
        return look.words(value);
    }

    /** Name and unit. */
    String label() {
        return look.unit().isEmpty() ? name : name + ", " + look.unit();
    }

    Look<T> look() {
        return look;
    }

    boolean whileMoving() {
        return whileMoving;
    }

    @Override
    public String toString() {
        return name + ", from " + words(start);
    }
}
