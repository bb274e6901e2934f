/**
 * From the flywheel to the road.
 *
 * <p>It may import {@code units} (checks of numbers) and {@code curve}.
 */
package org.shotledger.drive;
