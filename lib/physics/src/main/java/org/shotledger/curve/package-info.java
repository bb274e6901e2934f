/**
 * Tables of one variable as curves: shape-preserving interpolation that never leaves its range in silence, and searches for roots and edges.
 *
 * <p>Allowed imports: the JDK.
 */
package org.shotledger.curve;
