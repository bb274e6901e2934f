/**
 * Units at the edge: reading a figure with its unit, naming the kind of a quantity, and choosing how it is shown.
 *
 * <p>Inside the library every number is an SI double; this package is the only one that knows another unit.
 *
 * <p>Allowed imports: the JDK, {@code javax.measure}, {@code tech.units}.
 */
package org.shotledger.units;
