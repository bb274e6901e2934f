package org.shotledger.risk;

import java.nio.file.Path;
import org.shotledger.plan.Plan;
import org.shotledger.build.Build;

/** The plan of the invented demo build, made once for all tests of this room. */
final class Heron {
    static final Budget BUDGET = Budget.plan(Build.load(Path.of("../../data/heron/build.yaml")));

    private Heron() {}
}
