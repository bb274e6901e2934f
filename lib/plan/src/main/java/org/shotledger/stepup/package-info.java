/**
 * The step-up plan: a ladder of shots from small to target, each with its jets, what to expect, and the figures at which to go on
 * or to stop.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code engine}, {@code fluid}, {@code flow}, {@code nitrous}, {@code build},
 * {@code budget}.
 */
package org.shotledger.stepup;
