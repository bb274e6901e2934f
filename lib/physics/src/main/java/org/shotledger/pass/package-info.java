/**
 * A pass in time: a car along a straight line with gears, grip, air, the lag of its turbocharger and nitrous that comes and goes.
 *
 * <p>One job: the equation of motion with its events. What the engine gives and what the bottle does come in through interfaces.
 * It may import {@code units} (checks of numbers) and {@code drive}.
 */
package org.shotledger.pass;
