/**
 * Ideal gases: NASA polynomials of the species of combustion, their mixtures, and chemical equilibrium.
 *
 * <p>It may import {@code units} (checks of numbers) and nothing else of the project.
 */
package org.shotledger.gas;
