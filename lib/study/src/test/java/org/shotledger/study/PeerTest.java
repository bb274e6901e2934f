package org.shotledger.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * The study beside a compiled loop over the same tables, {@code lib/bench/peer/sweep.py}: same counts, best list and front, and what
 * either takes of the processor. {@code -Dpeer.python=PYTHON} names an interpreter with numba; {@code -Dpeer.pressures} the size.
 */
@EnabledIfSystemProperty(named = "peer.python", matches = ".+")
class PeerTest {
    /** The least of so many counts, with which the machine was least busy with other work. */
    private static final int ROUNDS = 100;

    @TempDir
    private Path folder;

    @Test
    void bothSayTheSame() throws Exception {
        Space space = Space.of(DemoSpace.PLAN)
                .ladder(Axis.NITROUS_JET, "36 thou", "42 thou")
                .ladder(Axis.FUEL_JET, "20 thou", "24 thou")
                .range(Axis.FUEL_PRESSURE, "3 bar gauge", "4 bar gauge", Integer.getInteger("peer.pressures", 2000));
        Sweep sweep = Sweep.first(space);
        Circuits circuits = sweep.circuits(0, Circuits.of(space));
        write(space, sweep, circuits);
        assertTrue(
                Arrays.stream(sweep.engine.values())
                        .flatMapToDouble(Arrays::stream)
                        .noneMatch(Double::isNaN),
                "the loop knows nothing of points without an answer");
        Tally tally = null;
        double seconds = Double.POSITIVE_INFINITY;
        ForkJoinPool one = new ForkJoinPool(1);
        for (int round = 0; round < ROUNDS; round++) {
            double begun = one.submit(PeerTest::cpu).get();
            tally = one.submit(() -> sweep.judged(circuits)).get();
            seconds = Math.min(seconds, one.submit(PeerTest::cpu).get() - begun);
        }
        one.shutdown();
        String peer = peer();
        System.out.printf(
                Locale.ROOT,
                "%,d combinations: study %.1f M, peer %.1f M a processor second%n",
                space.size(),
                space.size() / seconds / 1e6,
                space.size() / number(peer, "seconds") / 1e6);
        assertEquals(tally.kept, (long) number(peer, "kept"));
        assertEquals(tally.reached, (long) number(peer, "reached"));
        assertEquals(Arrays.toString(tally.refused), list(peer, "refused"));
        assertEquals(Arrays.toString(tally.powerAll()), list(peer, "all"));
        assertEquals(Arrays.toString(tally.powerKept), list(peer, "powerKept"));
        assertEquals(
                tally.best(Integer.MAX_VALUE).stream()
                        .map(Rank.Ranked::index)
                        .toList()
                        .toString(),
                list(peer, "best"));
        assertEquals(
                tally.front.members().map(Rank.Ranked::index).sorted().toList().toString(), list(peer, "front"));
    }

    private static double cpu() {
        return 1e-9 * ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private String peer() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        System.getProperty("peer.python"), "../bench/peer/sweep.py", folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String out = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor());
        return out;
    }

    private static double number(String json, String key) {
        return Double.parseDouble(json.replaceFirst("(?s).*\"" + key + "\": ([^,}\\[]*).*", "$1"));
    }

    private static String list(String json, String key) {
        return json.replaceFirst("(?s).*\"" + key + "\": (\\[[^]]*\\]).*", "$1");
    }

    private void write(Space space, Sweep sweep, Circuits circuits) throws IOException {
        List<BottleSide.Row> rows = sweep.rows();
        Engine engine = sweep.engine;
        int cases = rows.get(0).flow().length;
        double full = space.plan().target().wheelPower();
        Files.writeString(
                folder.resolve("sizes.json"),
                String.format(
                        Locale.ROOT,
                        "{\"sites\":%d,\"nitrousNodes\":%d,\"channels\":%d,\"fuelNodes\":%d,\"rows\":%d,\"cases\":%d,\"spots\":%d,"
                                + "\"mouths\":%d,\"circuits\":%d,\"margins\":%d,\"limits\":%d,\"needed\":%.17g,\"wholePower\":%.17g,"
                                + "\"wholeNitrous\":%.17g}",
                        engine.values().length,
                        engine.nitrous().count(),
                        Engine.CHANNELS,
                        engine.fuel().count(),
                        rows.size(),
                        cases,
                        sweep.spots.size(),
                        circuits.place().length,
                        circuits.count(),
                        Engine.MARGINS,
                        sweep.names.count(),
                        space.plan().target().neededPower(),
                        full,
                        space.plan()
                                .stated()
                                .strongest()
                                .orElseThrow()
                                .nitrous()
                                .massFlow()));
        put("values", Arrays.stream(engine.values()).flatMapToDouble(Arrays::stream));
        put("site", sweep.spots.stream().mapToDouble(Sweep.Spot::site));
        put("case", sweep.spots.stream().mapToDouble(Sweep.Spot::at));
        put("mouth", sweep.spots.stream().mapToDouble(spot -> sweep.fuel.mouth()[spot.site()]));
        put("flow", flows(rows));
        put("enthalpy", rows.stream().flatMapToDouble(row -> Arrays.stream(row.enthalpy())));
        put(
                "fixed",
                rows.stream().mapToDouble(row -> row.closest().or(sweep.closed).margin()));
        put(
                "whose",
                rows.stream().mapToDouble(row -> row.closest().or(sweep.closed).limit()));
        put(
                "node",
                flows(rows).map(flow -> engine.nitrous().start(engine.nitrous().place(flow))));
        put(
                "weight",
                flows(rows)
                        .flatMap(flow -> Arrays.stream(
                                engine.nitrous().weights(engine.nitrous().place(flow)))));
        double[] ends = engine.enthalpy();
        put(
                "warmth",
                rows.stream()
                        .flatMapToDouble(row -> Arrays.stream(row.enthalpy()))
                        .map(h -> (h - ends[0]) / (ends[1] - ends[0])));
        put("place", Arrays.stream(circuits.place()).flatMapToDouble(Arrays::stream));
        put("own", Arrays.stream(circuits.margin()));
        put("ownLimit", Arrays.stream(circuits.limit()).asDoubleStream());
        put("number", Arrays.stream(circuits.number()).asDoubleStream());
    }

    private static DoubleStream flows(List<BottleSide.Row> rows) {
        return rows.stream().flatMapToDouble(row -> Arrays.stream(row.flow()));
    }

    /** Doubles, highest byte first. */
    private void put(String name, DoubleStream values) throws IOException {
        double[] all = values.toArray();
        ByteBuffer bytes = ByteBuffer.allocate(Double.BYTES * all.length);
        bytes.asDoubleBuffer().put(all);
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(folder.resolve(name + ".bin")))) {
            out.write(bytes.array());
        }
    }
}
