/**
 * Tables of one variable as curves: shape-preserving interpolation that never leaves its range in silence.
 *
 * <p>Allowed imports: the JDK.
 */
package org.shotledger.curve;
