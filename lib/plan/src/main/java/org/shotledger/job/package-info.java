/**
 * The build: everything the sheet says about one car, as immutable records of SI values, each with its origin; reading,
 * checking, changing, comparing and writing it.
 *
 * <p>It may import the domain rooms whose records it gathers, {@code units}, {@code sheet} and {@code curve}; nothing
 * that calculates a budget.
 */
package org.shotledger.job;
