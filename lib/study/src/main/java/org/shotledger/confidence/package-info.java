/**
 * How sure a plan is: distributions of what is not known exactly, their propagation by seeded low-discrepancy points after JCGM
 * 101:2008, the chance of reaching the target and of keeping each limit, and which input is worth measuring.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code study}, {@code org.hipparchus}.
 */
package org.shotledger.confidence;
