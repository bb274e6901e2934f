/**
 * A pass in time: a car along a straight line with gears, grip, air, the lag of its turbocharger and nitrous that comes and goes.
 *
 * <p>One job: the equation of motion with its events. What the engine gives and what the bottle does come in through interfaces.
 *
 * <p>Allowed imports: the JDK, {@code units}, {@code drive}, {@code org.hipparchus}.
 */
package org.shotledger.pass;
