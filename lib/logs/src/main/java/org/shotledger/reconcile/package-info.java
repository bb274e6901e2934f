/**
 * A log laid over what the plan expected: differences with their place, what they may come from, the share of the nitrous from an on
 * and an off pull, and a fit of what the log can tell.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code logs}, {@code org.hipparchus}.
 */
package org.shotledger.reconcile;
