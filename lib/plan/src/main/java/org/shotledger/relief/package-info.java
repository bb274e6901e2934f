/**
 * What would have to change to reach a target: the limit that stops it, and the cheapest change of the build that moves it.
 *
 * <p>It may import {@code units}, {@code sheet}, {@code build} and {@code budget}.
 */
package org.shotledger.relief;
