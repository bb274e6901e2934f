/**
 * Benchmarks of studies over many combinations. Allowed imports: JMH, physics, plan and study.
 */
package org.shotledger.bench.study;
