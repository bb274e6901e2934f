package org.shotledger.view;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** Rows as columns of figures, for charts. */
final class Rows {
    private Rows() {}

    static <T> double[] column(List<T> rows, ToDoubleFunction<T> of) {
        return rows.stream().mapToDouble(of).toArray();
    }
}
