package org.shotledger.nitrous;

/**
 * A solenoid valve: the hole it opens and how long it takes.
 *
 * @param bore diameter of the valve's own hole, m, positive
 * @param dischargeCoefficient discharge coefficient of that hole, 0 to 1
 * @param openingDelay time from switching on to open, s, not negative
 * @param closingDelay time from switching off to closed, s, not negative
 */
public record Solenoid(double bore, double dischargeCoefficient, double openingDelay, double closingDelay) {

    public Solenoid {
        require(bore > 0 && bore < 0.05, "hole diameter", bore, "above 0 and below 0.05 m");
        require(
                dischargeCoefficient > 0 && dischargeCoefficient <= 1,
                "discharge coefficient",
                dischargeCoefficient,
                "above 0, at most 1");
        require(openingDelay >= 0 && openingDelay < 1, "opening delay", openingDelay, "0 to 1 s");
        require(closingDelay >= 0 && closingDelay < 1, "closing delay", closingDelay, "0 to 1 s");
    }

    /**
     * The part of the time the valve passes flow when it is pulsed, by the dead-time model: it opens late and closes
     * late (SAE 800508, from memory).
     *
     * @param duty switched-on part of each period, 0 to 1
     * @param frequency pulse frequency, Hz, positive
     * @return delivered fraction, 0 to 1: 0 when the pulse is shorter than the opening delay, 1 when the pause is shorter
     *     than the closing delay
     */
    public double deliveredFraction(double duty, double frequency) {
        require(duty >= 0 && duty <= 1, "duty", duty, "0 to 1");
        require(frequency > 0, "pulse frequency", frequency, "above 0 Hz");
        double on = duty / frequency;
        double off = (1 - duty) / frequency;
        if (on <= openingDelay) {
            return 0;
        }
        if (off <= closingDelay) {
            return 1;
        }
        return Math.min((on - openingDelay + closingDelay) * frequency, 1);
    }

    /**
     * The duty at which a share of the full flow is delivered; the inverse of {@link #deliveredFraction}.
     *
     * @param share delivered share of the time, 0 to 1; between 0 and {@link #leastShare} and between {@link #mostShare} and
     *     1 no duty gives it
     * @param frequency pulse frequency, Hz, positive
     * @return the duty, 0 to 1
     * @throws IllegalArgumentException when no duty gives that share; the message names what can be had
     */
    public double dutyFor(double share, double frequency) {
        require(share >= 0 && share <= 1, "delivered share", share, "0 to 1");
        require(frequency > 0, "pulse frequency", frequency, "above 0 Hz");
        if (share == 0 || share == 1) {
            return share;
        }
        require(
                share >= leastShare(frequency) && share <= mostShare(frequency),
                "delivered share at " + frequency + " Hz",
                share,
                "0, " + leastShare(frequency) + " to " + mostShare(frequency) + ", or 1; choose a slower pulse");
        return share + (openingDelay - closingDelay) * frequency;
    }

    /**
     * The smallest share a pulse can deliver: the valve has just opened when its current ends, and closes late.
     *
     * @param frequency pulse frequency, Hz, positive
     * @return delivered share of the time
     */
    public double leastShare(double frequency) {
        return closingDelay * frequency;
    }

    /**
     * The largest share short of standing open: the valve has just closed when its current begins, and opens late.
     *
     * @param frequency pulse frequency, Hz, positive
     * @return delivered share of the time; below {@link #leastShare} when the delays leave no room for a pulse
     */
    public double mostShare(double frequency) {
        return 1 - openingDelay * frequency;
    }

    /**
     * Area of the hole that counts for flow.
     *
     * @return discharge coefficient times area, m2
     */
    public double effectiveArea() {
        return dischargeCoefficient * Math.PI / 4 * bore * bore;
    }

    private static void require(boolean good, String name, double value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException(
                    "The solenoid's " + name + " is " + value + "; allowed is " + allowed + ".");
        }
    }
}
