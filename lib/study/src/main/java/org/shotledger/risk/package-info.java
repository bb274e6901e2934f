/**
 * What moves mixture and power away from the plan and what catches it: the drift map, the most forgiving jets, the window in
 * which the nitrous may be on, and faults with what sees them and how fast.
 *
 * <p>It may import {@code budget}, {@code delivery} and every package that {@code budget} may import, and nothing that reads files or draws.
 */
package org.shotledger.risk;
