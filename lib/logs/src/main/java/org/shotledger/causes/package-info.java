/**
 * What a log's differences from a setup come from: every hypothesis predicts every channel through the same operating points, the
 * stated bands are priors, and the shares, sizes and sentences follow from the fit.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code lib/plan}, {@code logs}, {@code reconcile}, {@code org.hipparchus}.
 */
package org.shotledger.causes;
