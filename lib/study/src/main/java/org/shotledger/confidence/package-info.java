/**
 * How sure a plan is: distributions of what is not known exactly, their propagation by seeded low-discrepancy points after JCGM
 * 101:2008, the chance of reaching the target and of keeping each limit, and which input is worth measuring.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}, {@code car}, {@code setup}, {@code limits},
 * {@code evaluate}, {@code job}, {@code plan}, {@code org.hipparchus}.
 */
package org.shotledger.confidence;
