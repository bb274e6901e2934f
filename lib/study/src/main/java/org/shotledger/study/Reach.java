package org.shotledger.study;

/**
 * What the combinations of one engine side reach, so that its tables need not cover more.
 *
 * @param gaugeHigh highest boost held, Pa
 * @param temperature bottle temperatures, K
 * @param nitrous nitrous flows, kg/s
 */
record Reach(double gaugeHigh, Scale temperature, Scale nitrous) {}
