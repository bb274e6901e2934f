/**
 * Benchmarks of the engine side: a cylinder, the compressor map, a whole operating point. Allowed imports: JMH, physics and plan.
 */
package org.shotledger.bench.engine;
