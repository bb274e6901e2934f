package org.shotledger.logs;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Numbers that arrive one by one, kept in pieces so that a long log never stands in memory twice. */
final class Column {
    private static final int PIECE = 1 << 14;

    private List<double[]> pieces = new ArrayList<>();
    private double[] last = new double[64];
    private int used;

    void add(double value) {
        if (used == last.length) {
            if (last.length < PIECE) {
                last = Arrays.copyOf(last, 4 * last.length);
            } else {
                pieces.add(last);
                last = new double[PIECE];
                used = 0;
            }
        }
        last[used++] = value;
    }

    /** All numbers in one array; this column is empty afterwards. */
    double[] take() {
        double[] all = new double[pieces.size() * PIECE + used];
        int at = 0;
        for (double[] piece : pieces) {
            System.arraycopy(piece, 0, all, at, PIECE);
            at += PIECE;
        }
        System.arraycopy(last, 0, all, at, used);
        pieces = new ArrayList<>();
        last = new double[0];
        used = 0;
        return all;
    }
}
