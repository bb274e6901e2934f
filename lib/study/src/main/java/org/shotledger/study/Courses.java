package org.shotledger.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.budget.Calibration;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Course;
import org.shotledger.budget.EngineModel;
import org.shotledger.budget.Evaluator;
import org.shotledger.build.Build;
import org.shotledger.engine.Cylinder;

/**
 * The courses of a space: one for each setting of the fields, with the boost search done once for all kits and bottles of the
 * same engine side.
 */
final class Courses {
    private static final int KEPT = 64;

    private final Space space;
    private final Evaluator calibrated;
    private final Map<List<String>, Course> engines = kept();
    private final Map<List<String>, Course> whole = kept();

    Courses(Space space) {
        this.space = space;
        this.calibrated = Calibration.of(space.build());
    }

    private static <K, V> Map<K, V> kept() {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > KEPT;
            }
        };
    }

    /** The course of a combination. */
    synchronized Course of(Combination combination) {
        return whole.computeIfAbsent(key(combination, false), any -> {
            Build build = combination.build(space.build());
            return engine(combination)
                    .withKitOf(build)
                    .withBottleTemperature(build.bottle().startTemperature());
        });
    }

    /** The course of its engine side, with kit and bottle as in the space's own build. */
    synchronized Course engine(Combination combination) {
        return engines.computeIfAbsent(key(combination, true), any -> {
            Build build = space.build();
            for (int i = 0; i < combination.axes().size(); i++) {
                String path = combination.axes().get(i).path();
                if (Role.of(path) == Role.ENGINE) {
                    build = build.with(path, combination.settings().get(i).text());
                }
            }
            Conditions at = Conditions.of(build, space.wish().conditions());
            return Course.of(evaluator(build), at, space.wish());
        });
    }

    private static List<String> key(Combination combination, boolean engineOnly) {
        return java.util.stream.IntStream.range(0, combination.axes().size())
                .filter(i -> keyed(Role.of(combination.axes().get(i).path()), engineOnly))
                .mapToObj(i -> combination.settings().get(i).text())
                .toList();
    }

    private static boolean keyed(Role role, boolean engineOnly) {
        return engineOnly
                ? role == Role.ENGINE
                : role != Role.BOOST && role != Role.NITROUS_JET && role != Role.FUEL_JET;
    }

    /** The base pull's calibration belongs to the engine as it was pulled; cylinder and friction follow the changed build. */
    private Evaluator evaluator(Build build) {
        EngineModel m = calibrated.model();
        return new Evaluator(
                build,
                new EngineModel(
                        m.combustion(),
                        m.efficiency(),
                        build.friction(),
                        Cylinder.of(build.engine()),
                        m.timing(),
                        m.nitrousEffectiveness()));
    }
}
