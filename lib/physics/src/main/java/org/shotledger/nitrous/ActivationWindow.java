package org.shotledger.nitrous;

/**
 * When the nitrous may be on.
 *
 * @param rpmLow lowest engine speed, rev/min, positive
 * @param rpmHigh highest engine speed, rev/min, above the lowest
 */
public record ActivationWindow(double rpmLow, double rpmHigh) {

    public ActivationWindow {
        if (!(rpmLow > 0 && rpmHigh > rpmLow && rpmHigh < 25000)) {
            throw new IllegalArgumentException("The activation window goes from " + rpmLow + " to " + rpmHigh
                    + " rpm; give a low end above 0 and a high end above it, below 25000 rpm.");
        }
    }

    /**
     * Tells whether the nitrous may be on.
     *
     * @param rpm engine speed, rev/min
     * @return true inside the window, ends included
     */
    public boolean contains(double rpm) {
        return rpm >= rpmLow && rpm <= rpmHigh;
    }
}
