/**
 * Ideal gases: NASA polynomials of the species of combustion, their mixtures, and chemical equilibrium.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}.
 */
package org.shotledger.gas;
