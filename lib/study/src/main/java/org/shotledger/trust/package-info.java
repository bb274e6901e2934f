/**
 * How far to trust the models: every model beside figures from outside the project, predicted over published or measured, with the
 * band in which each should lie.
 *
 * <p>Allowed imports: the JDK, {@code lib/physics}, {@code sheet}.
 */
package org.shotledger.trust;
