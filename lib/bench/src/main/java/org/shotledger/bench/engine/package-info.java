/**
 * Benchmarks of the engine side: a cylinder, the compressor map, a whole operating point. Allowed imports: JMH and the core.
 */
package org.shotledger.bench.engine;
