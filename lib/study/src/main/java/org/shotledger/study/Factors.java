package org.shotledger.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** The factor tables of a space: one engine side at a time, each built when it is asked for. */
final class Factors {
    private final Space space;
    private final Courses courses;
    private final KitTable kit;
    private final Product engines;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final List<String> keys;

    Factors(Space space, Courses courses) {
        this.space = space;
        this.courses = courses;
        this.kit = new KitTable(space, courses);
        this.engines = new Product(space, Role.ENGINE);
        Probe.everyLimit(courses.engine(space.at(0))).forEach(limit -> names.put(limit.key(), limit.name()));
        names.put(Figures.MAP, "edge of the compressor map");
        this.keys = new ArrayList<>(names.keySet());
    }

    /** Keys of every limit a combination can break. */
    List<String> keys() {
        return keys;
    }

    /** What a limit is called. */
    String name(String key) {
        return names.get(key);
    }

    int engines() {
        return engines.size();
    }

    EngineSide engine(int number) {
        return new EngineSide(space, courses, kit, keys, engines.offset(number));
    }

    /** The outcome of some combinations from the tables, in the order of the indices. */
    List<Figures> outcomes(long[] indices, SweepTask task) {
        Figures[] found = new Figures[indices.length];
        for (int e = 0; e < engines.size(); e++) {
            EngineSide side = null;
            Sweeper sweeper = null;
            for (int i = 0; i < indices.length; i++) {
                if (engineOffset(indices[i]) == engines.offset(e)) {
                    if (side == null) {
                        side = engine(e);
                        sweeper = new Sweeper(side, keys, new Tally(keys.size(), task), task);
                    }
                    found[i] = outcome(indices[i], side, sweeper);
                }
            }
        }
        return List.of(found);
    }

    private long engineOffset(long index) {
        return offset(index, Role.ENGINE);
    }

    /** What the axes of some roles contribute to an index. */
    private long offset(long index, Role... roles) {
        long sum = 0;
        for (int i = 0; i < space.axes().size(); i++) {
            if (List.of(roles).contains(Role.of(space.axes().get(i).path()))) {
                long stride = space.stride(i);
                sum += index / stride % space.axes().get(i).settings().size() * stride;
            }
        }
        return sum;
    }

    private Figures outcome(long index, EngineSide side, Sweeper sweeper) {
        long nitrous = offset(index, Role.NITROUS_SIDE, Role.NITROUS_JET);
        long boost = offset(index, Role.BOOST);
        long fuel = offset(index, Role.FUEL_SIDE, Role.FUEL_JET);
        KitTable.Nitrous setting = side.nitrous.stream()
                .filter(n -> n.offset() == nitrous)
                .findFirst()
                .orElseThrow();
        int b = place(side.boostOffsets, boost);
        for (int f = 0; f < side.fuel.size(); f++) {
            int j = place(side.fuel.get(f).offsets, fuel);
            if (j >= 0) {
                return sweeper.one(index, setting, f, b, j);
            }
        }
        throw new IllegalStateException("No fuel row holds combination " + index + ".");
    }

    private static int place(long[] offsets, long wanted) {
        return IntStream.range(0, offsets.length)
                .filter(i -> offsets[i] == wanted)
                .findFirst()
                .orElse(-1);
    }
}
