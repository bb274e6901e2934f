/**
 * Boost: compressor maps and operating points, charge cooling, losses of the tract, and the balance of the turbine, the
 * wastegate and the shaft.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code gas}, {@code engine}, {@code fuel},
 * {@code org.hipparchus}.
 */
package org.shotledger.boost;
