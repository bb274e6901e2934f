package org.shotledger.nitrous;

/**
 * The passages inside a nozzle behind its jets, in series with them: each takes its share of the pressure drop, and a passage
 * narrower than the jet sets the flow.
 *
 * @param nitrousBore diameter of the nitrous passage, m, positive
 * @param fuelBore diameter of the fuel passage, m, positive
 */
public record NozzlePassages(double nitrousBore, double fuelBore) {

    public NozzlePassages {
        check("nitrous", nitrousBore);
        check("fuel", fuelBore);
    }

    private static void check(String name, double bore) {
        if (!(bore > 0 && bore < 0.02)) {
            throw new IllegalArgumentException("The " + name + " passage of the nozzle has a diameter of " + bore
                    + " m; give one above 0 and below 0.02 m.");
        }
    }
}
