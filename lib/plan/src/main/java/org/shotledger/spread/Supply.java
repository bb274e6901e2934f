package org.shotledger.spread;

/**
 * How nitrous and fuel come to the cylinders, with what scatters on the way.
 *
 * @param words what a reader sees
 * @param runner true when each cylinder has its own nozzle, so that the scatter is that of its jets' holes; false when
 *     cylinders share nozzles, so that the scatter is that of how the spray divides
 * @param nitrous scatter of hole diameter or of share, nitrous
 * @param fuel the same of the fuel
 */
public record Supply(String words, boolean runner, Scatter nitrous, Scatter fuel) {
    /** Tolerance of a drilled jet's diameter, m: common practice, no source (half a thousandth of an inch). */
    public static final double USUAL_BORE_TOLERANCE = 12.7e-6;
    /** Tolerance of the flow of jets sorted on a flow bench, as a fraction: common practice, no source. */
    public static final double USUAL_FLOW_MATCH = 0.005;
    /** How unevenly one plenum nozzle divides its nitrous oxide among cylinders: assumed, no source; measure it. */
    public static final double USUAL_NITROUS_DIVISION = 0.06;
    /** The same of its fuel, part of which runs along the walls: assumed, no source; measure it. */
    public static final double USUAL_FUEL_DIVISION = 0.12;

    /**
     * A nozzle for each cylinder, jets as drilled.
     *
     * @param nitrousBore nitrous jet, m
     * @param fuelBore fuel jet, m
     * @param tolerance of the diameter, m, either side
     * @return every diameter within it equally likely
     */
    public static Supply runners(double nitrousBore, double fuelBore, double tolerance) {
        return new Supply(
                "a nozzle in each runner, jets as drilled",
                true,
                Scatter.uniform(tolerance / nitrousBore),
                Scatter.uniform(tolerance / fuelBore));
    }

    /**
     * A nozzle for each cylinder, jets sorted on a flow bench.
     *
     * @param match tolerance of the flow, as a fraction
     * @return diameters that give the flow within it, equally likely
     */
    public static Supply matchedRunners(double match) {
        return new Supply(
                "a nozzle in each runner, jets matched on a flow bench",
                true,
                Scatter.uniform(match / 2),
                Scatter.uniform(match / 2));
    }

    /**
     * One or more nozzles before the runners. Sprays of several nozzles are taken as dividing independently, so that the
     * unevenness falls with the square root of their number (assumed).
     *
     * @param nozzles number of nozzles, at least 1
     * @param nitrousDivision two standard deviations of a cylinder's share of nitrous with one nozzle, as a fraction
     * @param fuelDivision the same of the fuel
     * @return normally distributed shares
     */
    public static Supply shared(int nozzles, double nitrousDivision, double fuelDivision) {
        double less = Math.sqrt(nozzles);
        return new Supply(
                nozzles == 1 ? "one nozzle before the runners" : nozzles + " nozzles before the runners",
                false,
                Scatter.normal(nitrousDivision / less),
                Scatter.normal(fuelDivision / less));
    }
}
