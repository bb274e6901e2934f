package org.shotledger.wiring;

import java.util.function.ToDoubleFunction;

/**
 * Something that may be wrong with a sensor, and what would then be shown.
 *
 * @param what in words
 * @param shown value shown in a state of the car, SI
 */
record Hypothesis(String what, ToDoubleFunction<CheckValue> shown) {}
