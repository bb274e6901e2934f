package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;

/**
 * One step of a bottle's day: a purge, a pass, a soak or a reheat.
 *
 * @param name name in reports
 * @param draw what is taken
 * @param duration time, s
 * @param warmth surroundings and heater
 */
public record BottleStep(String name, Draw draw, double duration, Warmth warmth) {

    /**
     * A step that takes something out: a pass, or a purge shot through its own hole.
     *
     * @param name name in reports
     * @param draw what is taken
     * @param duration time, s
     * @param warmth surroundings
     * @return the step
     */
    public static BottleStep draw(String name, Draw draw, double duration, Warmth warmth) {
        return new BottleStep(name, draw, duration, warmth);
    }

    /**
     * A closed bottle for some time, heated or not.
     *
     * @param name name in reports
     * @param duration time, s
     * @param warmth surroundings and heater
     * @return the step
     */
    public static BottleStep rest(String name, double duration, Warmth warmth) {
        return new BottleStep(name, Draw.none(), duration, warmth);
    }

    /**
     * Runs steps one after another; between steps the contents come to rest at one temperature.
     *
     * @param charge bottle and contents at the start
     * @param steps the day in order
     * @return one history for each step that was begun; ends early once the siphon draws vapour or the bottle is empty
     */
    public static List<History> day(Charge charge, List<BottleStep> steps) {
        List<History> histories = new ArrayList<>();
        Charge now = charge;
        for (BottleStep step : steps) {
            Emptying task =
                    Emptying.of(now, step.draw()).withWarmth(step.warmth()).withDuration(step.duration());
            boolean closed = step.draw().massFlow(0, now.outlet()) == 0;
            History history = closed ? task.equilibrium() : task.twoNode();
            histories.add(history);
            now = history.left();
            if (history.find(BottleEvent.Kind.TIME_UP).isEmpty()) {
                break;
            }
        }
        return histories;
    }
}
