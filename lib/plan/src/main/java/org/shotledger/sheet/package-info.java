/**
 * Files made of located figures: a YAML reader that knows the line of each value, a CSV reader that streams, and
 * problems that say where.
 *
 * <p>It knows nothing of engines; {@code build} and {@code logs} read their own meaning through it. Apart from them so
 * that both use the same reader and the same words.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code org.apache.commons.csv}, {@code org.snakeyaml.engine}.
 */
package org.shotledger.sheet;
