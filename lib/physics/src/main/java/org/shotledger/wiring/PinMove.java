package org.shotledger.wiring;

import java.util.Optional;

/**
 * One choice of a search for one signal.
 *
 * @param slot where, or -1 for nowhere
 * @param option the other way taken, if any
 * @param shared whether it joins signals that are there
 * @param placed whether the signal is provided for
 * @param price of the option
 */
record PinMove(int slot, Optional<PinOption> option, boolean shared, boolean placed, double price) {
    static final PinMove NOWHERE = new PinMove(-1, Optional.empty(), false, false, 0);
}
