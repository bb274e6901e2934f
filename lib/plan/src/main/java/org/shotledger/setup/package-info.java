/**
 * What is asked (target), what a person sets before a pass (setup), and what the world may be (case), as data.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}.
 */
package org.shotledger.setup;
