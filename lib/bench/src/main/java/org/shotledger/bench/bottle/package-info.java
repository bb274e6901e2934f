/** Benchmarks of the bottle package: time per pass. Allowed imports: JMH, {@code org.shotledger.bottle}. */
package org.shotledger.bench.bottle;
