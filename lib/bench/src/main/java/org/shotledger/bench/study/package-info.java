/**
 * Benchmarks of sweeps over many combinations and of drawing a plan's unknowns, with the tables a NumPy peer reads. Allowed imports:
 * JMH, physics and plan.
 */
package org.shotledger.bench.study;
