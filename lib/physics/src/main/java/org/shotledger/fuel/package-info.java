/**
 * Fuels and what they burn with: composition, heating value and evaporation of species and blends, the oxygen books of a
 * charge with air and nitrous oxide, and the heat it releases.
 *
 * <p>It may import {@code units} (checks of numbers) and {@code gas}, and nothing else of the project.
 */
package org.shotledger.fuel;
