package org.shotledger.bottle;

import java.util.ArrayList;
import java.util.List;

/**
 * The passes one bottle gives, one after the other, with a rest between.
 *
 * <p>A charge above the band at its start gives none: {@link FillingCheck} refuses it. Below that, more charge never gives fewer
 * whole passes when each begins at the same temperature.
 *
 * @param passes in order; the last is the one cut short, unless as many as asked for were whole
 */
public record Passes(List<Pass> passes) {
    public Passes {
        passes = List.copyOf(passes);
    }

    /**
     * Runs passes until one is cut short.
     *
     * @param charge bottle and contents at the first start
     * @param task what a pass takes and what follows it
     * @param most passes after which to stop, 1 or more
     * @return the passes
     */
    public static Passes of(Charge charge, PassTask task, int most) {
        List<Pass> passes = new ArrayList<>();
        Charge now = charge;
        while (passes.size() < most) {
            Pass pass = task.run(now);
            passes.add(pass);
            if (!pass.whole()) {
                break;
            }
            if (passes.size() < most) {
                now = task.rest().after(pass.history().left());
            }
        }
        return new Passes(passes);
    }

    /**
     * Whole passes.
     *
     * @return number of passes that lasted their whole time
     */
    public int whole() {
        return (int) passes.stream().filter(Pass::whole).count();
    }

    /**
     * What a scale tells about the passes that are left, to be taken along.
     *
     * @param bottle the bottle
     * @param temperature temperature at each start, K
     * @param task what a pass takes
     * @param fullest charge of the first row, kg; the rows go down to nothing
     * @param step charge from row to row, kg, above 0
     * @param most largest number of passes to count
     * @return rows from the fullest charge down
     */
    public static List<ScaleRow> byScale(
            Bottle bottle, double temperature, PassTask task, double fullest, double step, int most) {
        if (!(step > 0 && fullest / step < 1e4)) {
            throw new IllegalArgumentException("Scale table: the step is " + step + " kg from " + fullest
                    + " kg; allowed is a step above 0 that makes fewer than 10000 rows.");
        }
        List<ScaleRow> rows = new ArrayList<>();
        for (int i = 0; fullest - i * step > 0; i++) {
            double mass = fullest - i * step;
            Passes passes = of(bottle.charged(mass, temperature), task, most);
            Pass last = passes.passes().get(passes.passes().size() - 1);
            rows.add(new ScaleRow(mass, passes.whole(), last.whole() ? 0 : last.seconds(), last.end()));
        }
        return rows;
    }

    /**
     * One row of the scale table.
     *
     * @param charge nitrous oxide by scale: weight less the empty bottle's, kg
     * @param passes whole passes left
     * @param spareSeconds seconds of the pass after those, s
     * @param end why that one ends
     */
    public record ScaleRow(double charge, int passes, double spareSeconds, PassEnd end) {}
}
