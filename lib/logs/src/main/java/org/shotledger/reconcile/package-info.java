/**
 * A log laid over what the plan expected: differences with their place, what bands explain of them, and the share of the nitrous from
 * an on and an off pull.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code logs}.
 */
package org.shotledger.reconcile;
