/** Benchmarks of the flow package: time per call. Allowed imports: JMH, {@code org.shotledger.fluid}, {@code .flow}. */
package org.shotledger.bench.flow;
