/**
 * Fuels and what they burn with: composition, heating value and evaporation of species and blends, the oxygen balance of a
 * charge with air and nitrous oxide, and the heat it releases.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code gas}.
 */
package org.shotledger.fuel;
