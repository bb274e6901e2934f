/**
 * What moves mixture and power away from the plan and what catches it: the drift map, the most robust jets, the conditions under
 * which the nitrous may be on, and faults with what detects them, how fast, and how soon they do damage.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code org.hipparchus}.
 */
package org.shotledger.risk;
