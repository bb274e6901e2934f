package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * Goes through the combinations of one mixture, spark and boost after the other; in each through some fuel circuits after the other, with
 * the rows (bottle temperature and nitrous jet) in parallel.
 */
final class Sweep {
    /**
     * Nodes for the plan's own flow: our choice, by the differences from exact outcomes. Fuel has more because power turns round
     * within little of it, near lambda 1.
     */
    private static final int NITROUS_NODES = 3;

    private static final int FUEL_NODES = 8;
    /** Circuits whose flows are held at once: some ten megabytes. */
    private static final int HELD = 1 << 17;
    /** Pieces that a sweep has at least, should the rows be fewer: our choice, some for each of many threads. */
    private static final int LEAST_PIECES = 16;
    /** Sparks whose tables are held at once: some ten megabytes. */
    private static final int SPARKS = 16;
    /** Any number: the combinations that are checked are the same in every run. */
    private static final long SEED = 20240607;

    /**
     * One site in one case.
     *
     * @param site number of the site
     * @param at number of the case
     */
    record Spot(int site, int at) {}

    private final Space space;
    final Names names;
    final List<Spot> spots;
    /** Numbers of the spots of the stated case. */
    final int[] stated;

    private final BottleSide bottle;
    private final long[] drawn;
    final Engine engine;
    final FuelSide fuel;
    final Closest closed;
    private final long first;

    /** Everything that the combinations give, the same on any number of threads. */
    static Tally of(Space space, int checks) {
        long[] drawn = new SplittableRandom(SEED)
                .longs(checks, 0, space.size())
                .distinct()
                .sorted()
                .toArray();
        Sides sides = Sides.of(space);
        Tally total = new Tally(space.plan(), sides.names);
        int sparks = space.count(Axis.RETARD);
        long step = sides.each() * space.count(Axis.BOOST) * space.count(Axis.BOOST_FACTOR);
        for (long mixture = 0; mixture < space.size(); mixture += step * sparks) {
            for (long boost = mixture; boost < mixture + step; boost += sides.each()) {
                for (int spark = 0; spark < sparks; spark += SPARKS) {
                    int count = Math.min(SPARKS, sparks - spark);
                    bySpark(sides, drawn, boost + spark * step, step, count).forEach(sweep -> sweep.add(total));
                }
            }
        }
        return total;
    }

    /** That of the first mixture, spark and boost, to look at by itself. */
    static Sweep first(Space space) {
        return bySpark(Sides.of(space), new long[0], 0, 0, 1).get(0);
    }

    /** What does not know mixture, spark and boost, or knows what was asked of it. */
    private record Sides(Space space, Names names, List<Site> sites, BottleSide bottle) {
        static Sides of(Space space) {
            Names names = Names.of(space.plan());
            return new Sides(space, names, Site.of(space.plan()), BottleSide.of(space, names));
        }

        /** Combinations of one mixture, spark and boost. */
        long each() {
            return Math.multiplyExact((long) bottle.rows().size(), Circuits.of(space));
        }
    }

    /** Some that differ in their spark: from the combination with a number on, a step apart. */
    private static List<Sweep> bySpark(Sides sides, long[] drawn, long first, long step, int count) {
        stopIfAsked();
        Space space = sides.space;
        Setup setup = space.setup(first);
        FuelSide fuel = FuelSide.of(space, sides.names, sides.sites, setup);
        DoubleSummaryStatistics flows = sides.bottle.rows().stream()
                .flatMapToDouble(row -> Arrays.stream(row.flow()))
                .summaryStatistics();
        DoubleSummaryStatistics extra = fuel.flows(space);
        OperatingPoint like = like(space);
        List<Engine> engines = Engine.of(
                space.plan(),
                sides.names,
                sides.sites,
                ClosedSide.alike(space.plan(), setup),
                LongStream.range(0, count)
                        .mapToObj(i -> space.setup(first + i * step).retard())
                        .toList(),
                Lattice.over(like.nitrous().massFlow() / NITROUS_NODES, flows.getMin(), flows.getMax()),
                Lattice.over(like.nitrousFuel().massFlow() / FUEL_NODES, extra.getMin(), extra.getMax()));
        Closest closed = ClosedSide.closest(space.plan(), sides.names, setup);
        return IntStream.range(0, count)
                .mapToObj(i -> new Sweep(sides, drawn, engines.get(i), fuel, closed, first + i * step))
                .toList();
    }

    private Sweep(Sides sides, long[] drawn, Engine engine, FuelSide fuel, Closest closed, long first) {
        this.space = sides.space;
        this.names = sides.names;
        this.spots = spots(space, sides.sites);
        this.stated = IntStream.range(0, spots.size())
                .filter(s -> spots.get(s).at() == 0)
                .toArray();
        this.bottle = sides.bottle;
        this.drawn = drawn;
        this.engine = engine;
        this.fuel = fuel;
        this.closed = closed;
        this.first = first;
    }

    private static OperatingPoint like(Space space) {
        return space.plan().outcomes().stream()
                .flatMap(outcome -> outcome.withNitrous().stream())
                .findFirst()
                .orElseThrow();
    }

    private static List<Spot> spots(Space space, List<Site> sites) {
        List<Spot> spots = new ArrayList<>();
        List<Case> cases = space.plan().job().cases();
        for (int at = 0; at < cases.size(); at++) {
            for (int site = 0; site < sites.size(); site++) {
                if (sites.get(site).at().equals(Site.weather(cases.get(at)))) {
                    spots.add(new Spot(site, at));
                }
            }
        }
        return List.copyOf(spots);
    }

    private void add(Tally total) {
        int all = Circuits.of(space);
        for (int from = 0; from < all; from += HELD) {
            Circuits some = circuits(from, Math.min(all, from + HELD));
            total.add(judged(some));
            total.samples.addAll(samples(some));
        }
    }

    /** What the tables have for those of the combinations drawn that have one of some circuits. */
    private List<Difference.Sample> samples(Circuits circuits) {
        List<Difference.Sample> samples = new ArrayList<>();
        Row row = new Row(this, circuits);
        long all = Circuits.of(space);
        long turnedTo = -1;
        for (long index : drawn) {
            long number = Math.floorDiv(index - first, all);
            if (number < 0 || number >= rows().size()) {
                continue;
            }
            int k = circuits.position((int) Math.floorMod(index - first, all));
            if (k < 0) {
                continue;
            }
            if (number != turnedTo) {
                row.begin(rows().get((int) number));
                turnedTo = number;
            }
            int tile = k / Circuits.TILE;
            int inTile = k % Circuits.TILE;
            row.judge(tile);
            samples.add(new Difference.Sample(index, row.margin[inTile], row.power[inTile], row.lambda(tile, inTile)));
        }
        return samples;
    }

    Circuits circuits(int from, int to) {
        return Circuits.of(space, names, fuel, engine.fuel(), from, to);
    }

    List<BottleSide.Row> rows() {
        return bottle.rows();
    }

    /** Some circuits with every row; few rows are cut in parts, always in the same ones, for all threads to have work. */
    Tally judged(Circuits circuits) {
        int parts = (LEAST_PIECES + rows().size() - 1) / rows().size();
        return IntStream.range(0, rows().size() * parts)
                .parallel()
                .collect(() -> new Judge(this, circuits, parts), Judge::add, Judge::add)
                .tally;
    }

    /** What goes through some of the rows, or parts of them. */
    private record Judge(Sweep sweep, Circuits circuits, int parts, Row row, Tally tally) {
        Judge(Sweep sweep, Circuits circuits, int parts) {
            this(sweep, circuits, parts, new Row(sweep, circuits), new Tally(sweep.space.plan(), sweep.names));
        }

        void add(int piece) {
            stopIfAsked();
            int number = piece / parts;
            int part = piece % parts;
            BottleSide.Row its = sweep.rows().get(number);
            row.begin(its);
            tally.begin(its.flow()[0]);
            int to = circuits.tiles() * (part + 1) / parts;
            for (int tile = circuits.tiles() * part / parts; tile < to; tile++) {
                row.judge(tile);
                tally.add(row, sweep.first + (long) number * Circuits.of(sweep.space), circuits, tile);
            }
            tally.end();
        }

        void add(Judge other) {
            tally.add(other.tally);
        }
    }

    static void stopIfAsked() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The study was stopped before it was done; nothing of it is kept.");
        }
    }
}
