package org.shotledger.study;

/**
 * One engine speed at which boost is taken back until one load, torque or peak pressure, keeps its reserve: everything as
 * polynomials in the flow of nitrous fuel, over a piece of it on which nothing bends sharply. It does not depend on the boost that
 * was set, so one serves all of them. The polynomials pass through Chebyshev nodes; an output is worked out when it is asked for.
 */
final class TaperBranch {
    static final int NODES = 6;
    private static final double[][] INVERSE = LoadMargin.inverse(NODES);

    /** The fuel flows of the piece, kg/s at the reference pressure. */
    final Scale fuel;

    private final SpeedTable table;
    private final double[] plenum;
    /** Stretched richness at the nodes, and with a part of the fuel missing. */
    private final double[] rich;

    private final double[] less;
    private final double[][] factors;
    private final double[][] powers;

    /**
     * Lays the piece.
     *
     * @param fuel its fuel flows
     * @param table the speed
     * @param plenum pressure to which boost is taken back, at the nodes
     * @param rich stretched richness there
     * @param less the same with a part of the fuel missing
     * @param nitrous the nitrous setting
     */
    TaperBranch(Scale fuel, SpeedTable table, double[] plenum, double[] rich, double[] less, KitTable.Nitrous nitrous) {
        this.fuel = fuel;
        this.table = table;
        this.plenum = plenum;
        this.rich = rich;
        this.less = less;
        this.factors = new double[NODES][table.basis.groups.length];
        this.powers = new double[table.outputs + 2][];
        for (int i = 0; i < NODES; i++) {
            table.factors(plenum[i], nitrous.enthalpy(), nitrous.flow(), factors[i]);
        }
    }

    /** The fuel flow at a node of a piece. */
    static double flow(Scale fuel, int node) {
        return fuel.from(LoadMargin.node(node, NODES));
    }

    /** Whether a fuel flow lies on the piece. */
    boolean covers(double fuelFlow) {
        return fuelFlow >= fuel.low() && fuelFlow <= fuel.high();
    }

    /**
     * An output as powers of stretched fuel.
     *
     * @param k one of the table, or after them lambda with a part of the fuel missing, or after that the plenum pressure
     */
    double[] powers(int k) {
        if (powers[k] == null) {
            double[] values = values(k);
            double[] found = new double[NODES];
            for (int l = 0; l < NODES; l++) {
                for (int i = 0; i < NODES; i++) {
                    found[l] += INVERSE[l][i] * values[i];
                }
            }
            powers[k] = found;
        }
        return powers[k];
    }

    private double[] values(int k) {
        if (k == table.outputs + 1) {
            return plenum;
        }
        boolean lacking = k == table.outputs;
        double[] values = new double[NODES];
        double[] row = new double[table.basis.richness + 1];
        for (int i = 0; i < NODES; i++) {
            table.powers(lacking ? Probe.LAMBDA : k, plenum[i], factors[i], row);
            values[i] = Polynomials.at(row, lacking ? less[i] : rich[i]);
        }
        return values;
    }
}
