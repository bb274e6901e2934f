/**
 * Fuel supply: injectors, pumps with their wiring, regulators, and what pressure and flow they leave at the rail and at a
 * fuel jet.
 *
 * <p>It may import {@code units} (checks of numbers), {@code curve} and {@code fuel}.
 */
package org.shotledger.supply;
