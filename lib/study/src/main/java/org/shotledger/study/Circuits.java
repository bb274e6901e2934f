package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Some of the fuel circuits (jet, pressure, boost reference) of one boost, as flat arrays over the circuit. The longer of the axes jet
 * and pressure goes round first, so that neighbours pass much the same.
 *
 * @param number their numbers in the order of the space
 * @param place where the nitrous fuel flow of a circuit lies among the engine's nodes, by mouth and circuit
 * @param margin closest limit of the circuit itself
 * @param limit its number
 * @param range the lowest and highest place, by mouth and tile
 */
@SuppressWarnings("ArrayRecordComponent") // read only and never compared
record Circuits(int[] number, double[][] place, double[] margin, int[] limit, double[][] range) {
    /** Circuits of a tile: their arrays stay in the processor's caches. */
    static final int TILE = 1024;

    int count() {
        return number.length;
    }

    int tiles() {
        return (count() + TILE - 1) / TILE;
    }

    /** How many circuits a tile has. */
    int size(int tile) {
        return Math.min(TILE, count() - tile * TILE);
    }

    /** The lowest place of a tile's circuits. */
    double first(int mouth, int tile) {
        return range[mouth][2 * tile];
    }

    /** The highest. */
    double last(int mouth, int tile) {
        return range[mouth][2 * tile + 1];
    }

    /** How many circuits a space has. */
    static int of(Space space) {
        return Math.multiplyExact(
                space.count(Axis.FUEL_JET) * space.count(Axis.BOOST_REFERENCE), space.count(Axis.FUEL_PRESSURE));
    }

    /** Those from one position to another in this class's own order. */
    static Circuits of(Space space, Names names, FuelSide side, Lattice fuel, int from, int to) {
        int[] holes = new int[to - from];
        int[] pressures = new int[to - from];
        Circuits some = new Circuits(
                new int[to - from],
                new double[side.cell().length][to - from],
                new double[to - from],
                new int[to - from],
                new double[side.cell().length][]);
        for (int k = 0; k < some.count(); k++) {
            some.find(space, from + k, k, holes, pressures);
        }
        Weights weights = Weights.of(space, side.pressures());
        some.limits(names, side, weights, holes, pressures);
        IntStream.range(0, some.place.length).parallel().forEach(m -> some.flows(side, weights, m, holes, pressures));
        for (int m = 0; m < some.place.length; m++) {
            some.cell(side.cell()[m], names.of("fuel-cell"), some.place[m]);
            for (int k = 0; k < some.count(); k++) {
                some.place[m][k] = fuel.place(some.place[m][k]);
            }
            some.range[m] = some.range(some.place[m]);
        }
        return some;
    }

    private void find(Space space, int position, int k, int[] holes, int[] pressures) {
        int jets = space.count(Axis.FUEL_JET);
        int bases = space.count(Axis.FUEL_PRESSURE);
        int reference = position / (jets * bases);
        int rest = position % (jets * bases);
        int jet = bases >= jets ? rest / bases : rest % jets;
        int base = bases >= jets ? rest % bases : rest / jets;
        holes[k] = reference * jets + jet;
        pressures[k] = base;
        number[k] = (jet * bases + base) * space.count(Axis.BOOST_REFERENCE) + reference;
    }

    /** The position of a number. */
    static int position(Space space, int number) {
        int jets = space.count(Axis.FUEL_JET);
        int bases = space.count(Axis.FUEL_PRESSURE);
        int references = space.count(Axis.BOOST_REFERENCE);
        int jet = number / references / bases;
        int base = number / references % bases;
        return number % references * jets * bases + (bases >= jets ? jet * bases + base : base * jets + jet);
    }

    /** Four nodes and their weights for each fuel pressure. */
    private record Weights(int[] start, double[][] weight) {
        static Weights of(Space space, Lattice lattice) {
            List<Double> bases = space.axes().get(Axis.FUEL_PRESSURE);
            Weights all = new Weights(new int[bases.size()], new double[bases.size()][]);
            for (int p = 0; p < bases.size(); p++) {
                double place = lattice.place(bases.get(p) - FuelSide.LOWEST);
                all.start[p] = lattice.start(place);
                all.weight[p] = lattice.weights(place);
            }
            return all;
        }

        double at(double[] values, int offset, int pressure) {
            return Lattice.at(values, offset + start[pressure], weight[pressure]);
        }
    }

    private void limits(Names names, FuelSide side, Weights weights, int[] holes, int[] pressures) {
        Arrays.fill(limit, names.of("kit-pump"));
        for (int k = 0; k < count(); k++) {
            double pump = weights.at(side.pump()[holes[k]], 0, pressures[k]);
            margin[k] = Double.isNaN(pump) ? Double.POSITIVE_INFINITY : pump;
            lower(k, side.fixed()[holes[k]].margin(), side.fixed()[holes[k]].limit());
        }
    }

    private void flows(FuelSide side, Weights weights, int m, int[] holes, int[] pressures) {
        int offset = m * side.pressures().count();
        for (int k = 0; k < count(); k++) {
            place[m][k] = Math.sqrt(Math.max(0, weights.at(side.squared()[holes[k]], offset, pressures[k])));
        }
    }

    private void cell(double share, int which, double[] flow) {
        for (int k = 0; k < count(); k++) {
            lower(k, 1 - share * flow[k], which);
        }
    }

    private double[] range(double[] places) {
        double[] ends = new double[2 * tiles()];
        for (int tile = 0; tile < tiles(); tile++) {
            ends[2 * tile] = Double.POSITIVE_INFINITY;
            for (int k = tile * TILE; k < tile * TILE + size(tile); k++) {
                ends[2 * tile] = Math.min(ends[2 * tile], places[k]);
                ends[2 * tile + 1] = Math.max(ends[2 * tile + 1], places[k]);
            }
        }
        return ends;
    }

    private void lower(int k, double other, int which) {
        if (other < margin[k]) {
            margin[k] = other;
            limit[k] = which;
        }
    }
}
