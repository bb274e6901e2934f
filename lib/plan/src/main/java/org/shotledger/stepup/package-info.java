/**
 * The step-up plan: a ladder of shots from small to target, each with its jets, what to expect, and the figures at which to go on
 * or to stop.
 *
 * <p>It may import {@code units}, {@code engine}, {@code fluid}, {@code flow}, {@code nitrous}, {@code build} and {@code budget}.
 */
package org.shotledger.stepup;
