package org.shotledger.build;

/**
 * Where one figure of the sheet comes from.
 *
 * @param path place in the sheet, for example {@code "engine.bore"}
 * @param text the figure as written, for example {@code "84.5 mm"}
 * @param value its SI value
 * @param uncertainty standard uncertainty, SI; NaN when none is stated
 * @param from the builder's reason, may be empty
 * @param standing how the figure is known: {@code measured}, {@code published}, {@code common practice} or
 *     {@code assumed}
 * @param file name of the file
 * @param line line in it, from 1
 */
public record Origin(
        String path,
        String text,
        double value,
        double uncertainty,
        String from,
        String standing,
        String file,
        int line) {}
