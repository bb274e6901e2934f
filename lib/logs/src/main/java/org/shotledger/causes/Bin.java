package org.shotledger.causes;

/**
 * A short settled piece of a pull.
 *
 * @param from beginning, s
 * @param to end, s
 * @param rpm mean engine speed, rev/min
 * @param on whether the nitrous is on
 * @param seconds for how long it has been on by the middle, with what it was on before in this log, s
 */
record Bin(double from, double to, double rpm, boolean on, double seconds) {
    double middle() {
        return (from + to) / 2;
    }
}
