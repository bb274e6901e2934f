/**
 * What moves mixture and power away from the plan and what catches it: the drift map, the most forgiving jets, the window in
 * which the nitrous may be on, and faults with what sees them and how fast.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code build}, {@code budget}, {@code delivery}.
 */
package org.shotledger.risk;
