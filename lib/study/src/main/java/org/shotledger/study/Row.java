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
    /** The least that the curve of a spot and limit can be. */
    private final double[][] low;

    /** The curves that can be the closest for some circuit, by number of the limit. */
    private final Curves margins;
    /** Power at the spots of the stated case, negative, by number of the spot. */
    private final Curves powers;

    private Closest fixed = Closest.NONE;

    /** Of the tile at hand: least margin, number of its limit, power at the wheels in the stated case, W, and the spot that has it. */
    final double[] margin = new double[Circuits.TILE];

    final int[] limit = new int[Circuits.TILE];
    final double[] power = new double[Circuits.TILE];
    private final int[] strongest = new int[Circuits.TILE];

    Row(Sweep sweep, Circuits circuits) {
        this.sweep = sweep;
        this.circuits = circuits;
        this.fuel = sweep.engine.fuel();
        int spots = sweep.spots.size();
        this.table = new double[spots][Engine.CHANNELS * fuel.count()];
        this.low = new double[spots][Engine.MARGINS];
        this.margins = new Curves(spots * (UNANSWERED + 1), fuel);
        this.powers = new Curves(sweep.stated.length, fuel);
    }

    /** Turns to a bottle temperature and nitrous jet. */
    void begin(BottleSide.Row row) {
        fixed = row.closest().or(sweep.closed);
        for (int s = 0; s < table.length; s++) {
            Sweep.Spot spot = sweep.spots.get(s);
            sweep.engine.at(spot.site(), row.flow()[spot.at()], row.enthalpy()[spot.at()], table[s]);
        }
        double ceiling = bound();
        margins.clear();
        for (int s = 0; s < table.length; s++) {
            for (int channel = 0; channel < Engine.MARGINS; channel++) {
                if (low[s][channel] <= ceiling) {
                    margins.add(mouth(s), channel, table[s], channel * fuel.count(), Engine.FAR);
                }
            }
            if (unanswered(s)) {
                margins.addUnanswered(mouth(s), sweep.names.noAnswer(), table[s]);
            }
        }
        powers.clear();
        int from = Engine.POWER * fuel.count();
        for (int s : sweep.stated) {
            for (int i = from; i < from + fuel.count(); i++) {
                table[s][i] = -table[s][i];
            }
            powers.add(mouth(s), s, table[s], from, 0);
        }
    }

    private boolean unanswered(int s) {
        return Arrays.stream(table[s], 0, fuel.count()).anyMatch(Double::isNaN);
    }

    /** Finds the least that every curve can be; what no circuit has more margin than is the highest that the lowest can be. */
    private double bound() {
        double ceiling = fixed.margin();
        for (int s = 0; s < table.length; s++) {
            for (int channel = 0; channel < Engine.MARGINS; channel++) {
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
                low[s][channel] = least - slack;
                ceiling = whole && most + slack < ceiling ? most + slack : ceiling;
            }
        }
        return ceiling;
    }

    /** Judges the circuits of a tile. */
    void judge(int tile) {
        int from = tile * Circuits.TILE;
        int count = circuits.size(tile);
        System.arraycopy(circuits.margin(), from, margin, 0, count);
        System.arraycopy(circuits.limit(), from, limit, 0, count);
        double most = fixed.margin();
        for (int k = 0; k < count; k++) {
            if (margin[k] >= most) {
                margin[k] = most;
                limit[k] = fixed.limit();
            }
        }
        margins.lower(circuits, tile, fixed.margin(), margin, limit);
        Arrays.fill(power, 0, count, 0);
        powers.lower(circuits, tile, 0, power, strongest);
        for (int k = 0; k < count; k++) {
            power[k] = 0 - power[k];
        }
    }

    private int mouth(int spot) {
        return sweep.fuel.mouth()[sweep.spots.get(spot).site()];
    }

    /** Lambda of all streams where a circuit of the tile at hand gives that power; NaN where it has none. */
    double lambda(int tile, int k) {
        double place = circuits.place()[mouth(strongest[k])][tile * Circuits.TILE + k];
        return power[k] > 0 ? fuel.value(table[strongest[k]], Engine.LAMBDA * fuel.count(), place) : Double.NaN;
    }
}
