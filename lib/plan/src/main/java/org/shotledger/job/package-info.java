/**
 * The build: everything the sheet says about one car, as immutable records of SI values, each with its origin; reading,
 * checking, changing, comparing and writing it.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code files}, {@code sheet}.
 */
package org.shotledger.job;
