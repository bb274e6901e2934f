package org.shotledger.study;

/**
 * One value an axis takes.
 *
 * @param text the value as it would be written in the build sheet, for example {@code "32 degC"}
 * @param value its SI value for boost and jets; NaN for a field of the sheet, which reads the text itself
 */
public record Setting(String text, double value) {}
