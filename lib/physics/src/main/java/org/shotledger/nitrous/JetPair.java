package org.shotledger.nitrous;

/**
 * The two jets of one nozzle. Every nozzle of a kit carries the same pair.
 *
 * @param nitrousBore hole diameter of the nitrous-oxide jet, m, positive
 * @param fuelBore hole diameter of the fuel jet, m, positive
 */
public record JetPair(double nitrousBore, double fuelBore) {

    public JetPair {
        check("nitrous-oxide jet", nitrousBore);
        check("fuel jet", fuelBore);
    }

    private static void check(String name, double bore) {
        if (!(bore > 0 && bore < 0.02)) {
            throw new IllegalArgumentException(
                    "The " + name + " has a hole of " + bore + " m; give a diameter above 0 and below 0.02 m.");
        }
    }
}
