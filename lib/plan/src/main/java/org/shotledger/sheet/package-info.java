/**
 * Files made of located figures: a YAML reader that knows the line of each value, a CSV reader that streams, problems
 * that say where, files that are replaced whole.
 *
 * <p>It knows nothing of engines; {@code build} and {@code logs} read their own meaning through it. Apart from them so
 * that both use the same reader and the same words. It may import {@code units}.
 */
package org.shotledger.sheet;
