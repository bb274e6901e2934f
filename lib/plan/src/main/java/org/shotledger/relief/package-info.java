/**
 * What would have to change to reach a target: the limit that stops it, and the cheapest change of the build that moves it.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code sheet}, {@code build}, {@code budget}.
 */
package org.shotledger.relief;
