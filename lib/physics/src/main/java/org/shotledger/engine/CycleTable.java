package org.shotledger.engine;

import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;
import org.shotledger.units.Require;

/**
 * The work of the {@link FuelAirCycle} of one pair of fuels and one compression ratio, laid out in advance: cubic in lambda between nodes
 * that stand closer near stoichiometric, a polynomial in the nitrous share of the oxygen, and at each node quadratic in charge
 * temperature, logarithm of pressure and share of the second fuel, linear in water. A lookup allocates nothing.
 *
 * <p>Known error against the direct cycle: within 0.4 % at lambda 0.6 to 1.2, up to 60 % of the oxygen from nitrous oxide, 240 to
 * 400 K, 0.8 to 4 bar; 1 % over the whole range (tested). Made in
 * 0.09 s of processor time by a virtual machine that has just started; a lookup takes 0.4 microseconds.
 *
 * <p>An instance may be shared between threads.
 */
public final class CycleTable {
    private static final double[] LAMBDA = {
        0.45, 0.50, 0.56, 0.62, 0.68, 0.74, 0.80, 0.85, 0.90, 0.94, 0.97, 0.99, 1.01, 1.03, 1.06, 1.10, 1.16, 1.24,
        1.36, 1.55, 1.85, 2.3, 3.0
    };
    private static final double[] NITROUS = {0, 0.12, 0.35, 0.6, 0.8};
    /** Every second of them carries the changes with temperature, pressure, water and fuel. */
    private static final double[] COARSE = {NITROUS[0], NITROUS[2], NITROUS[4]};

    private static final int STRIDE = 2;
    private static final double COLDEST = 180;
    private static final double HOTTEST = 480;
    private static final double LEAST_PRESSURE = 2e4;
    private static final double MOST_PRESSURE = 8e5;
    private static final double MOST_WATER = 0.1;
    private static final double TEMPERATURE = 310;
    private static final double TEMPERATURE_STEP = 90;
    private static final double PRESSURE = 1.6e5;
    private static final double PRESSURE_STEP = Math.log(3.0);
    private static final double WATER_STEP = 0.03;

    private static final int TERMS = 7;

    private final Fuel main;
    private final Fuel second;
    private final double compressionRatio;
    /** By lambda and nitrous share. */
    private final double[] centres = new double[LAMBDA.length * NITROUS.length];
    /** By lambda, coarse nitrous share and term. */
    private final double[] terms = new double[LAMBDA.length * COARSE.length * TERMS];

    private CycleTable(Fuel main, Fuel second, double compressionRatio) {
        this.main = main;
        this.second = second;
        this.compressionRatio = compressionRatio;
    }

    /**
     * Lays out the cycles of a pair of fuels.
     *
     * @param main the main fuel
     * @param second the fuel of the nitrous circuit, which may be the same
     * @param compressionRatio 5 to 20
     * @return the table
     * @throws IllegalArgumentException for a fuel that would soot at lambda 0.45
     */
    public static CycleTable of(Fuel main, Fuel second, double compressionRatio) {
        Require.within("compression ratio", compressionRatio, 5, 20, "");
        CycleTable table = new CycleTable(
                Require.given("main fuel", main), Require.given("nitrous fuel", second), compressionRatio);
        for (int i = 0; i < LAMBDA.length; i++) {
            for (int j = 0; j < NITROUS.length; j++) {
                table.lay(i, j);
            }
        }
        return table;
    }

    private void lay(int i, int j) {
        double centre = work(i, j, 0, 0, 0, 0);
        centres[i * NITROUS.length + j] = centre;
        if (j % STRIDE == 0) {
            layChanges(i, j, centre);
        }
    }

    private void layChanges(int i, int j, double centre) {
        double cold = work(i, j, -1, 0, 0, 0);
        double hot = work(i, j, 1, 0, 0, 0);
        double thin = work(i, j, 0, -1, 0, 0);
        double dense = work(i, j, 0, 1, 0, 0);
        double wet = work(i, j, 0, 0, 1, 0);
        boolean one = main.equals(second);
        double half = one ? centre : work(i, j, 0, 0, 0, 0.5);
        double other = one ? centre : work(i, j, 0, 0, 0, 1);
        int at = (i * COARSE.length + j / STRIDE) * TERMS;
        terms[at] = (hot - cold) / 2;
        terms[at + 1] = (hot + cold) / 2 - centre;
        terms[at + 2] = (dense - thin) / 2;
        terms[at + 3] = (dense + thin) / 2 - centre;
        terms[at + 4] = wet - centre;
        terms[at + 5] = 4 * half - other - 3 * centre;
        terms[at + 6] = 2 * (other + centre) - 4 * half;
    }

    /** Work of one cycle at steps of temperature, pressure and water and a share of the second fuel, J/kg of oxygen. */
    private double work(int i, int j, double warmer, double denser, double wetter, double share) {
        double fromAir = Oxidisers.OXYGEN_IN_DRY_AIR;
        double oxygen = fromAir / (1 - NITROUS[j]);
        double nitrous = (oxygen - fromAir) / Oxidisers.OXYGEN_IN_NITROUS_OXIDE;
        double demand = oxygen / LAMBDA[i];
        Mixture mixture = new Mixture(
                1,
                wetter * WATER_STEP,
                nitrous,
                main,
                demand * (1 - share) / main.oxygenDemand(),
                second,
                demand * share / second.oxygenDemand());
        double pressure = PRESSURE * Math.exp(denser * PRESSURE_STEP);
        double temperature = TEMPERATURE + warmer * TEMPERATURE_STEP;
        return FuelAirCycle.of(mixture, temperature, pressure, compressionRatio).workPerOxygen();
    }

    /**
     * Where to look: the state of a charge as the table counts it.
     *
     * @param lambda of all oxygen over the demand of all fuel, 0.45 to 3
     * @param nitrousShare share of the oxygen that nitrous oxide brings, 0 to 0.8
     * @param secondShare share of the oxygen demand that is the second fuel's, 0 to 1
     * @param temperature of the charge when compression begins, K, 180 to 480
     * @param pressure when compression begins, Pa, 20 kPa to 800 kPa
     * @param water kg of water vapour for each kg of dry air, 0 to 0.1
     */
    public record Point(
            double lambda, double nitrousShare, double secondShare, double temperature, double pressure, double water) {
        public Point {
            Require.within("lambda of the fuel-air cycle", lambda, LAMBDA[0], LAMBDA[LAMBDA.length - 1], "");
            Require.within("share of oxygen from nitrous oxide", nitrousShare, 0, NITROUS[NITROUS.length - 1], "");
            Require.within("share of the second fuel", secondShare, 0, 1, "");
            Require.within("temperature when compression begins", temperature, COLDEST, HOTTEST, "K");
            Require.within("pressure when compression begins", pressure, LEAST_PRESSURE, MOST_PRESSURE, "Pa");
            Require.within("water in the air", water, 0, MOST_WATER, "");
        }

        /**
         * The point of a mixture.
         *
         * @param mixture what is burned
         * @param temperature of the charge when compression begins, K
         * @param pressure when compression begins, Pa
         * @return the point
         */
        public static Point of(Mixture mixture, double temperature, double pressure) {
            double demand = mixture.oxygenDemanded();
            return new Point(
                    mixture.lambda(),
                    mixture.nitrous() * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / mixture.oxygenSupplied(),
                    mixture.nitrousFuelFlow() * mixture.nitrousFuel().oxygenDemand() / demand,
                    temperature,
                    pressure,
                    mixture.dryAir() > 0 ? mixture.waterVapour() / mixture.dryAir() : 0);
        }

        /**
         * The same charge without nitrous oxide at the same lambda.
         *
         * @return the point of its air alone
         */
        public Point ofAirAlone() {
            return new Point(lambda, 0, secondShare, temperature, pressure, water);
        }
    }

    /**
     * Work of the ideal cycle.
     *
     * @param at the charge
     * @return J for each kg of oxygen that air and nitrous oxide bring
     */
    public double workPerOxygen(Point at) {
        double lambda = at.lambda;
        int i = 1;
        while (i < LAMBDA.length - 3 && lambda > LAMBDA[i + 1]) {
            i++;
        }
        double[] x = LAMBDA;
        double sum = 0;
        for (int j = 0; j < NITROUS.length; j++) {
            int k = i * NITROUS.length + j;
            int next = NITROUS.length;
            sum += weight(NITROUS, j, at.nitrousShare)
                    * cubic(lambda, x, i - 1, centres[k - next], centres[k], centres[k + next], centres[k + 2 * next]);
        }
        double t = (at.temperature - TEMPERATURE) / TEMPERATURE_STEP;
        double p = Math.log(at.pressure / PRESSURE) / PRESSURE_STEP;
        double w = at.water / WATER_STEP;
        double s = at.secondShare;
        for (int j = 0; j < COARSE.length; j++) {
            double f0 = change(i - 1, j, t, p, w, s);
            double f1 = change(i, j, t, p, w, s);
            double f2 = change(i + 1, j, t, p, w, s);
            double f3 = change(i + 2, j, t, p, w, s);
            sum += weight(COARSE, j, at.nitrousShare) * cubic(lambda, x, i - 1, f0, f1, f2, f3);
        }
        return sum;
    }

    /**
     * Power of the ideal cycle.
     *
     * @param mixture flows
     * @param temperature of the charge when compression begins, K
     * @param pressure when compression begins, Pa
     * @return W
     */
    public double power(Mixture mixture, double temperature, double pressure) {
        return workPerOxygen(Point.of(mixture, temperature, pressure)) * mixture.oxygenSupplied();
    }

    /**
     * Power of the ideal cycle with the air of a mixture alone at the mixture's lambda, what {@link NitrousFactor} counts from.
     *
     * @param mixture flows
     * @param temperature of the charge when compression begins, K
     * @param pressure when compression begins, Pa
     * @return W
     */
    public double airPower(Mixture mixture, double temperature, double pressure) {
        double oxygen = mixture.dryAir() * Oxidisers.OXYGEN_IN_DRY_AIR;
        return workPerOxygen(Point.of(mixture, temperature, pressure).ofAirAlone()) * oxygen;
    }

    /** Lagrange's weight of a node. */
    private static double weight(double[] nodes, int j, double z) {
        double weight = 1;
        for (int m = 0; m < nodes.length; m++) {
            if (m != j) {
                weight *= (z - nodes[m]) / (nodes[j] - nodes[m]);
            }
        }
        return weight;
    }

    private double change(int i, int j, double t, double p, double w, double s) {
        double[] c = terms;
        int k = (i * COARSE.length + j) * TERMS;
        return t * (c[k] + t * c[k + 1]) + p * (c[k + 2] + p * c[k + 3]) + w * c[k + 4] + s * (c[k + 5] + s * c[k + 6]);
    }

    /** Newton's polynomial through four nodes. */
    private static double cubic(double x, double[] nodes, int from, double f0, double f1, double f2, double f3) {
        double x0 = nodes[from];
        double x1 = nodes[from + 1];
        double x2 = nodes[from + 2];
        double x3 = nodes[from + 3];
        double d01 = (f1 - f0) / (x1 - x0);
        double d12 = (f2 - f1) / (x2 - x1);
        double d23 = (f3 - f2) / (x3 - x2);
        double d012 = (d12 - d01) / (x2 - x0);
        double d123 = (d23 - d12) / (x3 - x1);
        double d0123 = (d123 - d012) / (x3 - x0);
        return f0 + (x - x0) * (d01 + (x - x1) * (d012 + (x - x2) * d0123));
    }
}
