package org.shotledger.car;

/**
 * What a dynamometer multiplied the power of a pull by, to say what it would be in the air of a standard.
 *
 * @param standard the standard's name, or that the sheet states the factor
 * @param factor corrected power over observed power
 * @param holds whether the standard allows a correction this large
 */
public record PullCorrection(String standard, double factor, boolean holds) {}
