package org.shotledger.bench.study;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import org.shotledger.bench.engine.Heron;
import org.shotledger.build.Build;
import org.shotledger.study.FactorDump;
import org.shotledger.study.Space;
import org.shotledger.study.Sweep;
import org.shotledger.study.SweepResult;
import org.shotledger.study.Vary;

/** The six-axis space of the sweep's figures; as a program it writes the peer's tables and says what our side counts. */
public final class SweepCase {
    private SweepCase() {}

    /**
     * The space.
     *
     * @param boosts number of boost settings, 2 or more; the size grows in proportion
     * @return a space of one engine side
     */
    public static Space space(int boosts) {
        Build build = Heron.build();
        return Space.of(
                build,
                Vary.range("bottle.start-temperature", "26 degC", "34 degC", 17),
                Vary.ladder(Vary.NITROUS_JET, build.wetKit().ladder(), "30 thou", "46 thou"),
                Vary.range(Vary.BOOST, "1.00 bar gauge", "1.58 bar gauge", boosts),
                Vary.ladder(Vary.FUEL_JET, build.wetKit().ladder(), "16 thou", "27 thou"),
                Vary.range("wet-kit.fuel.regulator.base-pressure", "3.0 bar", "4.0 bar", 41),
                Vary.of("wet-kit.nozzles", "6"));
    }

    /**
     * Counts, and writes the tables.
     *
     * @param arguments file for the tables, and the number of boosts, 41 when left out
     */
    public static void main(String[] arguments) {
        int boosts = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 41;
        Space space = space(boosts);
        for (int round = 0; round < 3; round++) {
            OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
            long cpu = system.getProcessCpuTime();
            long clock = System.nanoTime();
            SweepResult swept = Sweep.run(space);
            double used = (system.getProcessCpuTime() - cpu) * 1e-9;
            double passed = (System.nanoTime() - clock) * 1e-9;
            System.out.printf(
                    java.util.Locale.ROOT,
                    "%d combinations, %d keep every limit; %.2f s by the clock, %.2f s of processor with tables and exact list%n",
                    swept.evaluated(),
                    swept.accepted(),
                    passed,
                    used);
        }
        FactorDump.write(space, Path.of(arguments[0]));
    }
}
