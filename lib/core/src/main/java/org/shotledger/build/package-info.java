/**
 * The build: everything the sheet says about one car, as immutable records of SI values, each with its origin.
 *
 * <p>It may import the domain rooms whose records it gathers, {@code units}, {@code curve} and the sheet reader; nothing
 * that calculates.
 */
package org.shotledger.build;
