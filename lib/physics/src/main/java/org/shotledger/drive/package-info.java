/**
 * From the flywheel to the road.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}.
 */
package org.shotledger.drive;
