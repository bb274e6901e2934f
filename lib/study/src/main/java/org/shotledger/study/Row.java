package org.shotledger.study;

import java.util.Arrays;

/**
 * Combinations that differ in the fuel circuit alone: one engine setting, bottle temperature and nitrous jet.
 *
 * <p>The tables of every case and site ("spot") are brought to this nitrous flow, which leaves the nitrous fuel as the only variable: each
 * limit at each spot is one curve over it, made of cubics. The circuits are gone through in tiles that pass much the same fuel. For a
 * tile most curves lie wholly above another one; only the few that do not are looked at circuit by circuit.
 */
final class Row {
    /** Number of the curve of a spot that tells where the models have no answer. */
    private static final int UNANSWERED = Engine.MARGINS;

    private final Sweep sweep;
    private final Circuits circuits;
    private final Lattice fuel;
    /** By spot: by channel and fuel node. */
    private final double[][] table;

    /** The curves that can be the closest for some circuit: mouth of the spot, number of the limit, cubics. */
    private final Curves margins;
    /** Power at the sites of the stated case. */
    private final Curves powers;

    private Closest fixed = Closest.NONE;

    /** Of the tile at hand: least margin, number of its limit, power at the wheels in the stated case, W. */
    final double[] margin = new double[Circuits.TILE];

    final int[] limit = new int[Circuits.TILE];
    final double[] power = new double[Circuits.TILE];

    Row(Sweep sweep, Circuits circuits) {
        this.sweep = sweep;
        this.circuits = circuits;
        this.fuel = sweep.engine.fuel();
        this.table = new double[sweep.spots.size()][Engine.CHANNELS * fuel.count()];
        this.margins = new Curves(table.length * (UNANSWERED + 1), fuel);
        this.powers = new Curves(sweep.stated.length, fuel);
    }

    /** Turns to a bottle temperature and nitrous jet. */
    void begin(BottleSide.Row row) {
        fixed = row.closest().or(sweep.closed);
        for (int s = 0; s < table.length; s++) {
            Sweep.Spot spot = sweep.spots.get(s);
            sweep.engine.at(spot.site(), row.flow()[spot.at()], row.enthalpy()[spot.at()], table[s]);
        }
        double ceiling = ceiling();
        margins.clear();
        for (int s = 0; s < table.length; s++) {
            for (int channel = 0; channel < Engine.MARGINS; channel++) {
                if (extreme(s, channel, -1) <= ceiling) {
                    margins.add(mouth(s), channel, table[s], channel * fuel.count(), Engine.FAR);
                }
            }
            if (Double.isNaN(extreme(s, 0, 1))) {
                margins.addUnanswered(mouth(s), sweep.names.noAnswer(), table[s]);
            }
        }
        powers.clear();
        for (int s : sweep.stated) {
            powers.add(mouth(s), Engine.POWER, table[s], Engine.POWER * fuel.count(), 0);
        }
    }

    /** What no circuit has more margin than: the highest that the lowest curve can be. */
    private double ceiling() {
        double ceiling = fixed.margin();
        for (int s = 0; s < table.length; s++) {
            for (int channel = 0; channel < Engine.MARGINS; channel++) {
                double most = extreme(s, channel, 1);
                ceiling = most < ceiling ? most : ceiling;
            }
        }
        return ceiling;
    }

    /** The most (sign 1; NaN where one is not answered) or the least (sign -1, of those that are) that a curve can be. */
    private double extreme(int s, int channel, int sign) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        boolean whole = true;
        for (int i = channel * fuel.count(); i < (channel + 1) * fuel.count(); i++) {
            double is = table[s][i];
            least = is < least ? is : least;
            most = is > most ? is : most;
            whole &= !Double.isNaN(is);
        }
        double slack = Lattice.OVERSHOOT * (most - least);
        return sign < 0 ? least - slack : whole ? most + slack : Double.NaN;
    }

    /** Judges the circuits of a tile. */
    void judge(int tile) {
        int from = tile * Circuits.TILE;
        int count = circuits.size(tile);
        for (int k = 0; k < count; k++) {
            boolean own = circuits.margin()[from + k] < fixed.margin();
            margin[k] = own ? circuits.margin()[from + k] : fixed.margin();
            limit[k] = own ? circuits.limit()[from + k] : fixed.limit();
        }
        margins.look(circuits, tile);
        double ceiling = Math.min(fixed.margin(), margins.leastHigh());
        for (int i = 0; i < margins.count; i++) {
            // the closest itself lies on the ceiling where all circuits of the tile pass the same fuel
            if (margins.low[i] <= ceiling) {
                lower(margins.cubics[i], circuits.place()[margins.mouth[i]], from, count, margins.number[i]);
            }
        }
        powers.look(circuits, tile);
        Arrays.fill(power, 0, count, 0);
        double floor = powers.mostLow();
        for (int i = 0; i < powers.count; i++) {
            if (powers.high[i] >= floor) {
                raise(powers.cubics[i], circuits.place()[powers.mouth[i]], from, count);
            }
        }
    }

    private int mouth(int spot) {
        return sweep.fuel.mouth()[sweep.spots.get(spot).site()];
    }

    /** The inner loop: the least of what is known and one more curve. */
    private void lower(double[] c, double[] place, int from, int count, int number) {
        double[] least = margin;
        int[] whose = limit;
        for (int k = 0; k < count; k++) {
            double at = place[from + k];
            int node = (int) at;
            double t = at - node;
            int i = Lattice.ORDER * node;
            double is = c[i] + t * (c[i + 1] + t * (c[i + 2] + t * c[i + 3]));
            if (is < least[k]) {
                least[k] = is;
                whose[k] = number;
            }
        }
    }

    /** The same for the largest power. */
    private void raise(double[] c, double[] place, int from, int count) {
        double[] most = power;
        for (int k = 0; k < count; k++) {
            double at = place[from + k];
            int node = (int) at;
            double t = at - node;
            int i = Lattice.ORDER * node;
            double is = c[i] + t * (c[i + 1] + t * (c[i + 2] + t * c[i + 3]));
            if (is > most[k]) {
                most[k] = is;
            }
        }
    }

    /**
     * Mixture of all streams at the strongest site of the stated case.
     *
     * @param k position of the circuit
     * @return lambda; NaN where there is none
     */
    double lambda(int k) {
        double most = 0;
        double lambda = Double.NaN;
        for (int s : sweep.stated) {
            double place = circuits.place()[mouth(s)][k];
            double is = fuel.value(table[s], Engine.POWER * fuel.count(), place);
            if (is > most) {
                most = is;
                lambda = fuel.value(table[s], Engine.LAMBDA * fuel.count(), place);
            }
        }
        return lambda;
    }
}
