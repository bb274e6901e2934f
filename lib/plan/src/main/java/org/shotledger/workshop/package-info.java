/**
 * What a workshop writes down besides car, target and setup, as data: the track, readings of the sensors, parts with prices and progress.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}.
 */
package org.shotledger.workshop;
