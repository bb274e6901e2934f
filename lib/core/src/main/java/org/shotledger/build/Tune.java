package org.shotledger.build;

/**
 * How the engine is run.
 *
 * @param lambda mixture of the main fuel without nitrous
 * @param nitrousLambda mixture wanted of all streams together with nitrous on
 * @param nitrousRetard spark taken out when the nitrous is on, crank degrees, not negative
 */
public record Tune(double lambda, double nitrousLambda, double nitrousRetard) {}
