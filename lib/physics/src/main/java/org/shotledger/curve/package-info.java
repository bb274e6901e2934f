/**
 * Tables of one variable as curves: shape-preserving interpolation that never leaves its range in silence.
 *
 * <p>It imports nothing of the project.
 */
package org.shotledger.curve;
