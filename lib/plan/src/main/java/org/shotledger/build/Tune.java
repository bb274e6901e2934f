package org.shotledger.build;

import org.shotledger.nitrous.MixtureGoal;

/**
 * How the engine is run.
 *
 * @param lambda mixture of the main fuel without nitrous
 * @param goal mixture wanted with nitrous on
 * @param nitrousRetard spark taken out when the nitrous is on, crank degrees, not negative
 */
public record Tune(double lambda, MixtureGoal goal, double nitrousRetard) {}
