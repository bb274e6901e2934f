package org.shotledger.nitrous;

/**
 * Nitrous and fuel solenoid pulsed at one frequency, by the dead-time model of {@link Solenoid#deliveredFraction}.
 *
 * <p>The two valves seldom have the same delays. At one common duty they then deliver different shares, and the shorter the
 * pulse the more so; a controller that gives each its own duty can make the shares equal again.
 *
 * @param nitrous nitrous solenoid
 * @param fuel fuel solenoid
 * @param frequency pulse frequency, Hz, positive
 */
public record Pulsing(Solenoid nitrous, Solenoid fuel, double frequency) {

    public Pulsing {
        if (!(frequency > 0 && frequency <= 200)) {
            throw new IllegalArgumentException(
                    "The pulse frequency is " + frequency + " Hz; allowed is above 0, at most 200 Hz.");
        }
    }

    /**
     * What a pulse does.
     *
     * @param nitrousDuty duty of the nitrous solenoid, 0 to 1
     * @param fuelDuty duty of the fuel solenoid, 0 to 1
     * @param nitrousShare share of its full flow that the nitrous solenoid delivers, 0 to 1
     * @param fuelShare the same of the fuel solenoid
     */
    public record Pulse(double nitrousDuty, double fuelDuty, double nitrousShare, double fuelShare) {}

    /**
     * Both solenoids on one output.
     *
     * @param duty the common duty, 0 to 1
     * @return what each delivers
     */
    public Pulse together(double duty) {
        return new Pulse(
                duty, duty, nitrous.deliveredFraction(duty, frequency), fuel.deliveredFraction(duty, frequency));
    }

    /**
     * Each solenoid with the duty at which both deliver the same share.
     *
     * @param share wanted share, 0, {@link #leastShare} to {@link #mostShare}, or 1
     * @return the duties
     * @throws IllegalArgumentException when one of them cannot deliver that share
     */
    public Pulse matched(double share) {
        return new Pulse(nitrous.dutyFor(share, frequency), fuel.dutyFor(share, frequency), share, share);
    }

    /**
     * The smallest share both can deliver.
     *
     * @return share of the full flow
     */
    public double leastShare() {
        return Math.max(nitrous.leastShare(frequency), fuel.leastShare(frequency));
    }

    /**
     * The largest share both can deliver short of standing open.
     *
     * @return share of the full flow; below {@link #leastShare} when the delays leave no room for a pulse
     */
    public double mostShare() {
        return Math.min(nitrous.mostShare(frequency), fuel.mostShare(frequency));
    }

    /**
     * The same valves with delays off by a spread, the nitrous against the fuel: the worst a common wear, voltage or
     * temperature may do.
     *
     * @param spread change of each delay, s; positive lets the nitrous deliver more and the fuel less
     * @return the changed pair, delays kept from falling below zero
     */
    public Pulsing leaner(double spread) {
        return new Pulsing(shifted(nitrous, spread), shifted(fuel, -spread), frequency);
    }

    private static Solenoid shifted(Solenoid valve, double longer) {
        return new Solenoid(
                valve.bore(),
                valve.dischargeCoefficient(),
                Math.max(0, valve.openingDelay() - longer / 2),
                Math.max(0, valve.closingDelay() + longer / 2));
    }
}
