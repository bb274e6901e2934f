package org.shotledger.study;

import java.nio.file.Path;
import org.shotledger.build.Build;

/** The invented demo build and spaces on it. */
final class Heron {
    static final Build BUILD = Build.load(Path.of("../../data/heron/build.yaml"));

    private Heron() {}

    /** Six axes, about eight hundred thousand combinations, from far too lean and cold to harmless. */
    static Space wide() {
        return Space.of(
                BUILD,
                Vary.range("tune.nitrous-retard", "4 deg", "8 deg", 2),
                Vary.range("bottle.start-temperature", "24 degC", "34 degC", 6),
                Vary.range(Vary.BOOST, "0.9 bar gauge", "1.6 bar gauge", 15),
                Vary.ladder(Vary.NITROUS_JET, BUILD.wetKit().ladder(), "24 thou", "50 thou"),
                Vary.ladder(Vary.FUEL_JET, BUILD.wetKit().ladder(), "14 thou", "31 thou"),
                Vary.range("wet-kit.fuel.regulator.base-pressure", "3.0 bar", "4.0 bar", 6));
    }

    /** More fuel settings than one stretch holds, from boost that is taken back at some speeds to boost that is not. */
    static Space stretched() {
        return Space.of(
                BUILD,
                Vary.range(Vary.BOOST, "1.1 bar gauge", "1.58 bar gauge", 5),
                Vary.of(Vary.NITROUS_JET, "34 thou", "44 thou"),
                Vary.ladder(Vary.FUEL_JET, BUILD.wetKit().ladder(), "16 thou", "27 thou"),
                Vary.range("wet-kit.fuel.regulator.base-pressure", "3.0 bar", "4.0 bar", 12));
    }

    static Space small(String... regulators) {
        return Space.of(
                BUILD,
                Vary.of("wet-kit.fuel.regulator.boost-reference", regulators),
                Vary.of(Vary.BOOST, "1.2 bar gauge", "1.45 bar gauge"),
                Vary.ladder(Vary.NITROUS_JET, BUILD.wetKit().ladder(), "38 thou", "44 thou"),
                Vary.ladder(Vary.FUEL_JET, BUILD.wetKit().ladder(), "20 thou", "24 thou"));
    }
}
