/**
 * How far to trust the models: every model beside figures from outside the project, predicted over published or measured, with the
 * band in which each should lie.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code curve}, {@code fluid}, {@code gas}, {@code flow}, {@code bottle}, {@code fuel},
 * {@code engine}, {@code boost}, {@code supply}, {@code drive}, {@code wiring}.
 */
package org.shotledger.trust;
