/**
 * What is built: everything for which a spanner is needed, as immutable records of SI values with the origin of each figure.
 *
 * <p>May use the physics, and {@code sheet} and {@code limits} for origins and how well a figure is known.
 */
package org.shotledger.car;
