/**
 * A limit, a set of limits and a verdict, as data.
 *
 * <p>Allowed imports: the JDK, {@code units}.
 */
package org.shotledger.limits;
