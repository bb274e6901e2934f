/**
 * The engine: ambient air and its corrections, breathing, mixing of air, nitrous oxide and fuel before the valves, the
 * closed cycle in the cylinder with its limits, friction, and power.
 *
 * <p>It may import {@code units} (checks of numbers), {@code curve}, {@code fluid}, {@code gas} and {@code fuel}.
 */
package org.shotledger.engine;
