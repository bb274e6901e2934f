package org.shotledger.flow;

import java.util.ArrayList;
import java.util.List;

/**
 * A measured hole foretold by the class law with constants fitted to every other source.
 *
 * @param hole what was measured
 * @param as the class as which it was foretold: its own, or that of a hole whose edge nobody knows
 * @param predicted predicted share of equilibrium flow
 */
public record LeftOutHole(MeasuredHole hole, HoleClass as, double predicted) {

    /**
     * All measured holes, each source left out once.
     *
     * @return each hole as its own class and, where its edge is known, as an unknown one too
     */
    public static List<LeftOutHole> all() {
        List<MeasuredHole> holes = MeasuredHole.all();
        List<LeftOutHole> all = new ArrayList<>();
        for (String source : holes.stream().map(MeasuredHole::source).distinct().toList()) {
            ClassFit fit = SourceFit.of(
                    holes.stream().filter(hole -> !hole.source().equals(source)).toList());
            for (MeasuredHole hole : holes) {
                if (hole.source().equals(source)) {
                    all.add(of(hole, fit, hole.edge()));
                    if (hole.edge() != Edge.UNKNOWN) {
                        all.add(of(hole, fit, Edge.UNKNOWN));
                    }
                }
            }
        }
        return all;
    }

    private static LeftOutHole of(MeasuredHole hole, ClassFit fit, Edge as) {
        return new LeftOutHole(hole, new HoleClass(as, hole.inlet()), SourceFit.share(fit, hole, as == Edge.UNKNOWN));
    }

    /**
     * Where the prediction failed.
     *
     * @return measured over predicted flow
     */
    public double ratio() {
        return hole.share() / predicted;
    }
}
