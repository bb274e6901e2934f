package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Some of the fuel circuits (jet, pressure, boost reference) of one boost, as flat arrays over the circuit, in the order of the fuel that
 * they pass: so those of a tile lie close together on every curve.
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

    /** Where the circuit with a number stands; -1 where it is none of these. */
    int position(int itsNumber) {
        int k = count() - 1;
        while (k >= 0 && number[k] != itsNumber) {
            k--;
        }
        return k;
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

    /** Those from one number to another. */
    static Circuits of(Space space, Names names, FuelSide side, Lattice fuel, int from, int to) {
        Flows flows = Flows.of(space, side);
        int[] number = flows.ordered(from, to);
        int mouths = side.cell().length;
        Circuits some = new Circuits(
                number, new double[mouths][], new double[to - from], new int[to - from], new double[mouths][]);
        some.limits(names, flows);
        IntStream.range(0, mouths)
                .parallel()
                .forEach(m -> some.place[m] =
                        IntStream.of(number).mapToDouble(n -> flows.at(m, n)).toArray());
        for (int m = 0; m < mouths; m++) {
            some.cell(side.cell()[m], names.of("fuel-cell"), some.place[m]);
            for (int k = 0; k < some.count(); k++) {
                some.place[m][k] = fuel.place(some.place[m][k]);
            }
            some.range[m] = some.range(some.place[m]);
        }
        return some;
    }

    /** What circuits pass by their numbers: by fuel pressure the first of four nodes, and their weights. */
    private record Flows(FuelSide side, int jets, int references, int[] node, double[][] weight) {
        static Flows of(Space space, FuelSide side) {
            List<Double> bases = space.axes().get(Axis.FUEL_PRESSURE);
            Lattice lattice = side.pressures();
            double[] places = bases.stream()
                    .mapToDouble(base -> lattice.place(base - FuelSide.LOWEST))
                    .toArray();
            return new Flows(
                    side,
                    space.count(Axis.FUEL_JET),
                    space.count(Axis.BOOST_REFERENCE),
                    Arrays.stream(places).mapToInt(lattice::start).toArray(),
                    Arrays.stream(places).mapToObj(lattice::weights).toArray(double[][]::new));
        }

        /** Fuel jet and boost reference of a circuit. */
        int hole(int number) {
            return number % references * jets + number / references / node.length;
        }

        private double read(double[] values, int offset, int number) {
            int pressure = number / references % node.length;
            return Lattice.at(values, offset + node[pressure], weight[pressure]);
        }

        /** What a circuit passes to a mouth, kg/s. */
        double at(int mouth, int number) {
            int offset = mouth * side.pressures().count();
            return Math.sqrt(Math.max(0, read(side.squared()[hole(number)], offset, number)));
        }

        /** Least margin of the pump. */
        double pump(int number) {
            return read(side.pump()[hole(number)], 0, number);
        }

        /**
         * Numbers from one to another, tiles in the order of what passes to the first mouth; within a tile those of a jet together, which
         * have the same limits of their own.
         */
        int[] ordered(int from, int to) {
            // the bits of positive figures are in their order; the last ones, which tell little, make room for the
            // circuit
            long room = 2 * Long.highestOneBit(to - from) - 1;
            long[] keys = IntStream.range(from, to)
                    .mapToLong(n -> (Double.doubleToLongBits(at(0, n)) & ~room) | (n - from))
                    .sorted()
                    .toArray();
            int[] numbers = Arrays.stream(keys)
                    .mapToInt(key -> from + (int) (key & room))
                    .toArray();
            for (int tile = 0; tile < numbers.length; tile += TILE) {
                Arrays.sort(numbers, tile, Math.min(tile + TILE, numbers.length));
            }
            return numbers;
        }
    }

    private void limits(Names names, Flows flows) {
        Arrays.fill(limit, names.of("kit-pump"));
        for (int k = 0; k < count(); k++) {
            double pump = flows.pump(number[k]);
            Closest fixed = flows.side.fixed()[flows.hole(number[k])];
            margin[k] = Double.isNaN(pump) ? Double.POSITIVE_INFINITY : pump;
            lower(k, fixed.margin(), fixed.limit());
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
