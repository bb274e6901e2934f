package org.shotledger.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.study.BottleSide.Closest;

/** Goes through the combinations of one mixture, spark and boost after the other; in each, rows in parallel. */
final class Sweep {
    /**
     * Nodes for the plan's own flow: our choice, by the differences from exact outcomes. Fuel has more because power turns round
     * within little of it, near lambda 1.
     */
    private static final int NITROUS_NODES = 3;

    private static final int FUEL_NODES = 8;
    /** Any number: the combinations that are checked are the same in every run. */
    private static final long SEED = 20240607;

    /**
     * One site in one case.
     *
     * @param site number of the site
     * @param at number of the case
     */
    record Spot(int site, int at) {}

    final Names names;
    final Spot[] spots;
    final Engine engine;
    final FuelSide fuel;
    final Closest closed;

    private Sweep(Names names, Spot[] spots, Engine engine, FuelSide fuel, Closest closed) {
        this.names = names;
        this.spots = spots;
        this.engine = engine;
        this.fuel = fuel;
        this.closed = closed;
    }

    /** Everything that the combinations give, the same on any number of threads. */
    static Tally of(Space space, int checks) {
        long[] drawn = new SplittableRandom(SEED)
                .longs(checks, 0, space.size())
                .distinct()
                .toArray();
        Names names = Names.of(space.plan());
        List<Site> sites = Site.of(space.plan());
        BottleSide bottle = BottleSide.of(space, names);
        Tally total = Tally.of(space, names, drawn);
        long engines = space.size() / bottle.rows().size() / circuits(space);
        for (int e = 0; e < engines; e++) {
            long first = e * (space.size() / engines);
            Sweep sweep = at(space, names, sites, bottle, space.setup(first));
            List<Tally> parts = IntStream.range(0, bottle.rows().size())
                    .parallel()
                    .mapToObj(row ->
                            sweep.row(space, bottle.rows().get(row), first + (long) row * circuits(space), drawn))
                    .toList();
            parts.forEach(total::add);
        }
        return total;
    }

    private static Sweep at(Space space, Names names, List<Site> sites, BottleSide bottle, Setup setup) {
        stopIfAsked();
        FuelSide fuel = FuelSide.of(space, names, sites, setup);
        Lattice nitrous = Lattice.over(
                like(space).nitrous().massFlow() / NITROUS_NODES,
                bottle.rows().stream()
                        .mapToDouble(row -> Arrays.stream(row.flow()).min().orElseThrow())
                        .min()
                        .orElseThrow(),
                bottle.rows().stream()
                        .mapToDouble(row -> Arrays.stream(row.flow()).max().orElseThrow())
                        .max()
                        .orElseThrow());
        Lattice extra = Lattice.over(
                like(space).nitrousFuel().massFlow() / FUEL_NODES,
                Arrays.stream(fuel.flow()).flatMapToDouble(Arrays::stream).min().orElseThrow(),
                Arrays.stream(fuel.flow()).flatMapToDouble(Arrays::stream).max().orElseThrow());
        Engine engine = Engine.of(space.plan(), names, sites, setup, nitrous, extra);
        return new Sweep(names, spots(space, sites), engine, fuel, ClosedSide.of(space.plan(), setup));
    }

    private static OperatingPoint like(Space space) {
        return space.plan().outcomes().stream()
                .flatMap(outcome -> outcome.withNitrous().stream())
                .findFirst()
                .orElseThrow();
    }

    private static Spot[] spots(Space space, List<Site> sites) {
        List<Spot> spots = new ArrayList<>();
        List<Case> cases = space.plan().job().cases();
        for (int at = 0; at < cases.size(); at++) {
            for (int site = 0; site < sites.size(); site++) {
                if (sites.get(site).at().equals(Site.weather(cases.get(at)))) {
                    spots.add(new Spot(site, at));
                }
            }
        }
        return spots.toArray(Spot[]::new);
    }

    private Tally row(Space space, BottleSide.Row bottle, long first, long[] drawn) {
        stopIfAsked();
        Row row = new Row(this, circuits(space));
        row.fill(bottle);
        Tally tally = Tally.of(space, names, drawn);
        tally.add(row, bottle.flow()[0], first);
        return tally;
    }

    private static int circuits(Space space) {
        return space.count(Axis.FUEL_JET) * space.count(Axis.FUEL_PRESSURE) * space.count(Axis.BOOST_REFERENCE);
    }

    static void stopIfAsked() {
        if (Thread.currentThread().isInterrupted()) {
            throw new CancellationException("The study was stopped before it was done; nothing of it is kept.");
        }
    }
}
