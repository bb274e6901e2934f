/**
 * What is built: everything for which a spanner is needed, as immutable records of SI values with the origin of each figure.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}, {@code limits}.
 */
package org.shotledger.car;
