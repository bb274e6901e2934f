/**
 * The engine: ambient air and its corrections, breathing, mixing of air, nitrous oxide and fuel before the valves, the
 * closed cycle in the cylinder with its limits, friction, and power.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code fluid}, {@code gas}, {@code fuel},
 * {@code org.hipparchus}.
 */
package org.shotledger.engine;
