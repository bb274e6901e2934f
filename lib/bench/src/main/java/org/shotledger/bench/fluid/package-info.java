/** Benchmarks of the fluid package: time and allocation per state. Allowed imports: JMH, {@code org.shotledger.fluid}. */
package org.shotledger.bench.fluid;
