package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.shotledger.budget.Course;

/** One engine side of a space with everything a sweep over its boosts, jets and kit settings needs, worked out once. */
final class EngineSide {
    private static final double SAME = 1e-9;

    final long offset;
    final EngineTable table;
    final List<KitTable.Nitrous> nitrous;
    final List<FuelRow> fuel;
    final long[] boostOffsets;
    /** Plenum pressure held, by boost and speed, Pa. */
    final double[][] plenum;
    /** The tables with that pressure put in, by boost and speed. */
    final double[][][][] atPressure;
    /** Whether the map has an answer at every speed, by boost. */
    final boolean[] onMap;
    /** What the fuel settings answer for, by fuel row. */
    final List<KitMargins> kits;

    EngineSide(Space space, Courses courses, KitTable kit, List<String> keys, long offset) {
        this.offset = offset;
        Course course = courses.engine(space.at(offset));
        nitrous = kit.nitrous(offset);
        double[] gauges = space.axes().get(space.position(Vary.BOOST)).settings().stream()
                .mapToDouble(Setting::value)
                .toArray();
        Product boosts = new Product(space, Role.BOOST);
        boostOffsets =
                IntStream.range(0, gauges.length).mapToLong(boosts::offset).toArray();
        double top = Arrays.stream(gauges).max().orElseThrow();
        table = new EngineTable(
                course,
                new Reach(
                        top,
                        range(nitrous.stream()
                                .mapToDouble(KitTable.Nitrous::temperature)
                                .toArray()),
                        range(nitrous.stream()
                                .mapToDouble(KitTable.Nitrous::flow)
                                .toArray())));
        int speeds = table.speeds.length;
        plenum = new double[gauges.length][speeds];
        atPressure = new double[gauges.length][speeds][][];
        onMap = new boolean[gauges.length];
        for (int b = 0; b < gauges.length; b++) {
            onMap[b] = true;
            for (int r = 0; r < speeds; r++) {
                Scale covered = table.speeds[r].pressure;
                plenum[b][r] = course.plenumPressure(table.speeds[r].rpm, gauges[b]);
                onMap[b] &= plenum[b][r] <= covered.high() * (1 + SAME) && plenum[b][r] >= covered.low() * (1 - SAME);
                atPressure[b][r] = table.speeds[r].atPressure(plenum[b][r]);
            }
        }
        double ambient = course.conditions().air().pressure();
        fuel = FuelRow.of(kit.circuits(offset), ambient, ambient + top);
        Scale reached = new Scale(
                Arrays.stream(table.speeds)
                        .mapToDouble(t -> t.pressure.low())
                        .min()
                        .orElseThrow(),
                Arrays.stream(table.speeds)
                        .mapToDouble(t -> t.pressure.high())
                        .max()
                        .orElseThrow());
        kits = fuel.stream()
                .map(f -> f.kit(reached, key -> Tally.index(keys, key)))
                .toList();
    }

    private static Scale range(double[] values) {
        return new Scale(
                Arrays.stream(values).min().orElseThrow(),
                Arrays.stream(values).max().orElseThrow());
    }
}
