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
    /** By spot: by channel and fuel node. */
    private final double[][] table;

    private final double[] cubics;
    private final Curves all;
    private final Curves ofRow;
    private final Curves ofTile;
    private final double[] low;
    private Closest fixed = Closest.NONE;

    /** Of the tile at hand: least margin, number of its limit, power at the wheels in the stated case, W. */
    final double[] margin = new double[Circuits.TILE];

    final int[] limit = new int[Circuits.TILE];
    final double[] power = new double[Circuits.TILE];

    /** Curves by the number {@code spot * (UNANSWERED + 1) + channel}. */
    private static final class Curves {
        final int[] curve;
        int count;

        Curves(int most) {
            curve = new int[most];
        }
    }

    Row(Sweep sweep, Circuits circuits) {
        this.sweep = sweep;
        this.circuits = circuits;
        int nodes = sweep.engine.fuel().count();
        table = new double[sweep.spots.size()][Engine.CHANNELS * nodes];
        cubics = new double[Lattice.ORDER * nodes];
        int most = table.length * (UNANSWERED + 1);
        all = new Curves(most);
        Arrays.setAll(all.curve, i -> i);
        all.count = most;
        ofRow = new Curves(most);
        ofTile = new Curves(most);
        low = new double[most];
    }

    /** Turns to a bottle temperature and nitrous jet. */
    void begin(BottleSide.Row row) {
        fixed = row.closest().or(sweep.closed);
        for (int s = 0; s < table.length; s++) {
            Sweep.Spot spot = sweep.spots.get(s);
            sweep.engine.at(spot.site(), row.flow()[spot.at()], row.enthalpy()[spot.at()], table[s]);
        }
        choose(all, ofRow, Circuits.ALL);
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
        choose(ofRow, ofTile, tile);
        for (int i = 0; i < ofTile.count; i++) {
            int s = ofTile.curve[i] / (UNANSWERED + 1);
            int channel = ofTile.curve[i] % (UNANSWERED + 1);
            if (channel == UNANSWERED) {
                unanswered(s, tile);
                lower(place(s), from, count, sweep.names.noAnswer());
            } else {
                cubics(s, channel, Engine.FAR, tile);
                lower(place(s), from, count, channel);
            }
        }
        Arrays.fill(power, 0, count, 0);
        for (int s : sweep.stated) {
            cubics(s, Engine.POWER, 0, tile);
            raise(place(s), from, count);
        }
    }

    /**
     * Of some curves those that can be the lowest somewhere in a tile: a curve is nowhere below its lowest node, or above its highest, by
     * more than what a cubic overshoots.
     */
    private void choose(Curves some, Curves chosen, int tile) {
        int nodes = sweep.engine.fuel().count();
        double ceiling = fixed.margin();
        for (int i = 0; i < some.count; i++) {
            int s = some.curve[i] / (UNANSWERED + 1);
            int channel = some.curve[i] % (UNANSWERED + 1);
            int from = sweep.engine.fuel().start((double) circuits.first(mouth(s), tile));
            int to = sweep.engine.fuel().start((double) circuits.last(mouth(s), tile)) + Lattice.ORDER;
            // every limit of a point that is not answered has no value
            int offset = channel == UNANSWERED ? 0 : channel * nodes;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            boolean whole = true;
            for (int j = offset + from; j < offset + to; j++) {
                double is = table[s][j];
                whole &= is == is; // not where it is no number
                least = is < least ? is : least;
                most = is > most ? is : most;
            }
            double slack = Lattice.OVERSHOOT * (most - least);
            if (channel == UNANSWERED) {
                low[i] = whole ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
            } else {
                low[i] = least - slack;
                ceiling = whole ? Math.min(ceiling, most + slack) : ceiling;
            }
        }
        chosen.count = 0;
        for (int i = 0; i < some.count; i++) {
            if (low[i] < ceiling) {
                chosen.curve[chosen.count++] = some.curve[i];
            }
        }
    }

    private int mouth(int spot) {
        return sweep.fuel.mouth()[sweep.spots.get(spot).site()];
    }

    private double[] place(int spot) {
        return circuits.place()[mouth(spot)];
    }

    /** The cubics of a channel where the tile is. */
    private void cubics(int spot, int channel, double absent, int tile) {
        Lattice fuel = sweep.engine.fuel();
        int first = circuits.first(mouth(spot), tile);
        int last = circuits.last(mouth(spot), tile);
        fuel.cubics(table[spot], channel * fuel.count(), first, last, absent, cubics);
    }

    /** The same for the curve that is far off where a spot is answered, and broken where it is not. */
    private void unanswered(int spot, int tile) {
        Arrays.fill(cubics, 0);
        for (int j = circuits.first(mouth(spot), tile); j <= circuits.last(mouth(spot), tile); j++) {
            boolean answered = Lattice.answered(table[spot], j);
            cubics[Lattice.ORDER * j] = answered ? Engine.FAR : Double.NEGATIVE_INFINITY;
        }
    }

    /** The inner loop: the least of what is known and one more curve. */
    private void lower(double[] place, int from, int count, int number) {
        double[] c = cubics;
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
    private void raise(double[] place, int from, int count) {
        double[] c = cubics;
        double[] most = power;
        for (int k = 0; k < count; k++) {
            double at = place[from + k];
            int node = (int) at;
            double t = at - node;
            int i = Lattice.ORDER * node;
            most[k] = Math.max(most[k], c[i] + t * (c[i + 1] + t * (c[i + 2] + t * c[i + 3])));
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
            double is = value(s, Engine.POWER, place(s)[k]);
            if (is > most) {
                most = is;
                lambda = value(s, Engine.LAMBDA, place(s)[k]);
            }
        }
        return lambda;
    }

    private double value(int spot, int channel, double place) {
        Lattice fuel = sweep.engine.fuel();
        int node = (int) place;
        fuel.cubics(table[spot], channel * fuel.count(), node, node, Double.NaN, cubics);
        double t = place - node;
        int i = Lattice.ORDER * node;
        return cubics[i] + t * (cubics[i + 1] + t * (cubics[i + 2] + t * cubics[i + 3]));
    }
}
