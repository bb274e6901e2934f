/**
 * Boost: compressor maps and operating points, charge cooling, losses of the tract, and the balance of the turbine, the
 * wastegate and the shaft.
 *
 * <p>It may import {@code units} (checks of numbers), {@code curve}, {@code gas}, {@code fuel} and {@code engine}.
 */
package org.shotledger.boost;
