/**
 * How sure a plan is: distributions of what is not known exactly, their propagation by seeded low-discrepancy points after JCGM
 * 101:2008, the chance of reaching the target and of keeping each limit, and which input is worth measuring.
 *
 * <p>It may import every package of the core, and nothing that reads files or draws.
 */
package org.shotledger.confidence;
