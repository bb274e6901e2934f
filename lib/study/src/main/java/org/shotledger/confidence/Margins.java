package org.shotledger.confidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.limits.Limit;

/**
 * The relative margins of a plan as one list of numbers. A limit of operating points stands once for the engine without nitrous
 * and once for each part of the speeds with nitrous: the least over all of them has kinks that no quadratic form follows.
 */
final class Margins {
    /** Parts into which the speeds with nitrous are cut: our choice. */
    private static final int PARTS = 4;

    /** Where a margin is. */
    record Place(String key, String caseName) {}

    private Margins() {}

    /** The places of the margins, in the order of {@link #of}. */
    static List<Place> places(List<Outcome> outcomes) {
        List<Place> places = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            String name = outcome.at().name();
            for (int part = 0; part <= PARTS; part++) {
                PointLimits.keys().forEach(key -> places.add(new Place(key, name)));
            }
            ofTheDay(outcome).forEach(limit -> places.add(new Place(limit.key(), name)));
        }
        return places;
    }

    /** Positive infinity where a limit concerns no point. */
    static double[] of(List<Outcome> outcomes) {
        return outcomes.stream()
                .flatMapToDouble(outcome -> Arrays.stream(of(outcome)))
                .toArray();
    }

    private static double[] of(Outcome outcome) {
        int rules = PointLimits.count();
        List<Limit> day = ofTheDay(outcome);
        double[] least = new double[(PARTS + 1) * rules + day.size()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        List<OperatingPoint> points = new ArrayList<>(outcome.off());
        points.addAll(outcome.armed());
        points.addAll(outcome.changeover());
        for (OperatingPoint point : points) {
            double[] margins = PointLimits.margins(outcome.car(), point);
            int from = rules * part(outcome, point);
            for (int k = 0; k < rules; k++) {
                least[from + k] = Math.min(least[from + k], margins[k]);
            }
        }
        for (int k = 0; k < day.size(); k++) {
            least[(PARTS + 1) * rules + k] = day.get(k).relativeMargin();
        }
        return least;
    }

    private static int part(Outcome outcome, OperatingPoint point) {
        if (!point.mode().nitrousFlows()) {
            return 0;
        }
        double low = outcome.setup().arming().rpmLow();
        double share = (point.rpm() - low) / (outcome.setup().arming().rpmHigh() - low);
        return 1 + (int) Math.max(0, Math.min(PARTS - 1, share * PARTS));
    }

    private static List<Limit> ofTheDay(Outcome outcome) {
        List<String> points = PointLimits.keys();
        return outcome.limits().all().stream()
                .filter(limit -> !points.contains(limit.key()))
                .toList();
    }
}
