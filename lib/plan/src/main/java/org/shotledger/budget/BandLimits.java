package org.shotledger.budget;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shotledger.build.Build;
import org.shotledger.nitrous.JetPair;

/** The limits over a band of engine speed, each at the speed where it is closest. */
final class BandLimits {
    /** Relative step of the nitrous and fuel jet for the slope of a limit against power. */
    private static final double STEP = 0.01;

    private BandLimits() {}

    static Limits of(Build build, List<Evaluation> points) {
        Map<String, Limit> closest = new LinkedHashMap<>();
        for (Evaluation point : points) {
            for (Limit limit : LimitSheet.of(build, point).all()) {
                closest.merge(limit.key(), limit, (a, b) -> b.relativeMargin() < a.relativeMargin() ? b : a);
            }
        }
        return new Limits(new ArrayList<>(closest.values()));
    }

    /** The same with the wheel power left to each limit, from slightly larger jets at the same boost. */
    static Limits withPower(Build build, Band band, JetPair jets) {
        List<Evaluation> points = band.with(jets);
        List<Evaluation> more = band.with(new JetPair(jets.nitrousBore() * (1 + STEP), jets.fuelBore() * (1 + STEP)));
        double gained =
                Band.strongest(more).wheelPower() - Band.strongest(points).wheelPower();
        Limits stepped = of(build, more);
        return new Limits(of(build, points).all().stream()
                .map(limit -> withPower(limit, stepped.find(limit.key()).orElse(limit), gained))
                .toList());
    }

    private static Limit withPower(Limit limit, Limit stepped, double gained) {
        double lost = limit.margin() - stepped.margin();
        boolean bites = lost > 1e-9 * Math.abs(limit.bound()) && gained > 0;
        double power = bites ? limit.margin() / lost * gained : Double.NaN;
        return new Limit(
                limit.key(),
                limit.name(),
                limit.kind(),
                limit.value(),
                limit.bound(),
                limit.side(),
                limit.caution(),
                limit.consequence(),
                limit.standing(),
                power);
    }
}
