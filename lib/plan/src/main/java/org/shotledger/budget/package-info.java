/**
 * The budget: evaluates one operating point, splits a power target between boost and nitrous oxide, holds every part
 * against its limit, and keeps a ledger in which each figure carries its reasoning.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code build}, {@code org.hipparchus}.
 */
package org.shotledger.budget;
