package org.shotledger.causes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The values of the evidence that the planned run predicts, in one row.
 *
 * @param what channel of each
 * @param bin piece of each
 * @param off logged less planned, as the fit sees it
 * @param base planned, as the fit sees it
 * @param scatter standard deviation of each from the scatter of its samples, as the fit sees it
 */
@SuppressWarnings("ArrayRecordComponent") // lives for one fit only
record Values(Observable[] what, int[] bin, double[] off, double[] base, double[] scatter) {

    static Values of(Evidence evidence, double[][] planned) {
        record Place(Observable what, int bin) {}
        List<Place> kept = new ArrayList<>();
        for (Observable o : Observable.values()) {
            for (int i = 0; i < evidence.bins().size(); i++) {
                double logged = o.seen(evidence.values()[o.row()][i]);
                if (!Double.isNaN(logged + o.seen(planned[o.row()][i]))) {
                    kept.add(new Place(o, i));
                }
            }
        }
        int n = kept.size();
        Observable[] what = new Observable[n];
        int[] bin = new int[n];
        double[] off = new double[n];
        double[] base = new double[n];
        double[] scatter = new double[n];
        for (int k = 0; k < n; k++) {
            what[k] = kept.get(k).what();
            bin[k] = kept.get(k).bin();
            int c = what[k].row();
            int i = bin[k];
            base[k] = what[k].seen(planned[c][i]);
            off[k] = what[k].seen(evidence.values()[c][i]) - base[k];
            scatter[k] = evidence.scatter()[c][i];
        }
        return new Values(what, bin, off, base, scatter);
    }

    int size() {
        return what.length;
    }

    /** What a prediction shifts each value by; NaN where it has no answer. */
    double[] shift(double[][] predicted) {
        double[] shift = new double[size()];
        Arrays.setAll(shift, k -> what[k].seen(predicted[what[k].row()][bin[k]]) - base[k]);
        return shift;
    }

    /** Places of the values of a channel. */
    int[] of(Observable channel) {
        return java.util.stream.IntStream.range(0, size())
                .filter(k -> what[k] == channel)
                .toArray();
    }
}
