package org.shotledger.flow;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/** Fits the constants of the class law to measured holes, each source with the same weight. */
final class SourceFit {
    private SourceFit() {}

    /** The sources of drilled holes whose geometric mean is the plain coefficient, with the points that show it. */
    private static boolean plain(MeasuredHole hole) {
        return switch (hole.source()) {
            case "Aerospace 9-828 (2022)" -> hole.quality() == 0;
            case "AIAA 2013-3636" -> hole.inlet() == Inlet.SUBCOOLED;
            case "refrigerant short tubes 2004" -> hole.inlet() == Inlet.TWO_PHASE;
            default -> false;
        };
    }

    static ClassFit of(List<MeasuredHole> holes) {
        List<MeasuredHole> known = holes.stream()
                .filter(h -> h.edge() != Edge.UNKNOWN && h.quality() == 0)
                .toList();
        double[] own = least(
                known, new double[] {0.7, 0.38, 16, 0.86}, q -> new ClassFit(q[0], q[1], q[2], q[3], 0.8, 0.4), false);
        double plain = Math.exp(holes.stream()
                .filter(SourceFit::plain)
                .collect(Collectors.groupingBy(
                        MeasuredHole::source, Collectors.averagingDouble(h -> Math.log(h.share()))))
                .values()
                .stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow());
        List<MeasuredHole> liquid = holes.stream().filter(h -> h.quality() == 0).toList();
        double[] keep =
                least(liquid, new double[] {0.4}, q -> new ClassFit(own[0], own[1], own[2], own[3], plain, q[0]), true);
        return new ClassFit(own[0], own[1], own[2], own[3], plain, keep[0]);
    }

    static double share(ClassFit fit, MeasuredHole h, boolean unknown) {
        return fit.share(
                unknown ? Edge.UNKNOWN : h.edge(),
                unknown ? Double.NaN : h.lengthToBore(),
                h.reducedTemperature(),
                h.aboveBoiling(),
                h.quality());
    }

    private static double[] least(
            List<MeasuredHole> holes, double[] start, Function<double[], ClassFit> make, boolean unknown) {
        Map<String, Long> counts = holes.stream()
                .collect(Collectors.groupingBy(MeasuredHole::source, TreeMap::new, Collectors.counting()));
        Function<double[], double[]> errors = log -> {
            double[] q = new double[log.length];
            for (int i = 0; i < q.length; i++) {
                q[i] = Math.exp(log[i]);
            }
            ClassFit fit = make.apply(q);
            return holes.stream()
                    .mapToDouble(h -> Math.log(share(fit, h, unknown) / h.share()) / Math.sqrt(counts.get(h.source())))
                    .toArray();
        };
        double[] first = new double[start.length];
        for (int i = 0; i < first.length; i++) {
            first[i] = Math.log(start[i]);
        }
        var problem = new LeastSquaresBuilder()
                .start(first)
                .target(new double[holes.size()])
                .maxEvaluations(1000)
                .maxIterations(1000)
                .model(point -> {
                    double[] at = point.toArray();
                    double[] value = errors.apply(at);
                    double[][] slopes = new double[value.length][at.length];
                    for (int j = 0; j < at.length; j++) {
                        double[] moved = at.clone();
                        moved[j] += 1e-5;
                        double[] there = errors.apply(moved);
                        for (int i = 0; i < value.length; i++) {
                            slopes[i][j] = (there[i] - value[i]) / 1e-5;
                        }
                    }
                    return new Pair<>(new ArrayRealVector(value, false), new Array2DRowRealMatrix(slopes, false));
                })
                .build();
        double[] found =
                new LevenbergMarquardtOptimizer().optimize(problem).getPoint().toArray();
        for (int i = 0; i < found.length; i++) {
            found[i] = Math.exp(found[i]);
        }
        return found;
    }
}
