package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Course;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limit;
import org.shotledger.budget.LimitSheet;
import org.shotledger.budget.Limits;
import org.shotledger.build.Build;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.JetPair;

/** The exact evaluation with given flows of the wet kit, as a list of numbers: what fills a table. */
final class Probe {
    /** Places of power and lambda in the list; margins follow. */
    static final int POWER = 0;

    static final int LAMBDA = 1;
    static final int MARGINS = 2;
    /** The limit that the engine speed alone decides. */
    static final String SPEED_ALONE = "piston-speed";
    /** Any pair: the flows are given, so the jets only say that the nitrous is on. */
    private static final List<String> ELSEWHERE = List.of(Figures.LEAN, Figures.RICH, SPEED_ALONE);

    private static final JetPair ON = new JetPair(1e-3, 1e-3);

    private final Course course;
    private final Build build;
    private final List<String> keys;
    private final int[] places;
    private final double speedMargin;
    private final double farCold;

    Probe(Course course, double rpm, double plenumPressure) {
        this.course = course;
        this.build = course.evaluator().build();
        Limits limits = LimitSheet.of(
                build, evaluate(rpm, plenumPressure, build.bottle().startTemperature(), 1e-6, 1e-6));
        List<Limit> all = limits.all();
        all.forEach(Probe::requireBound);
        speedMargin = limits.find(SPEED_ALONE).map(Limit::relativeMargin).orElse(Double.POSITIVE_INFINITY);
        farCold = Figures.FAR_COLD / limits.find(Figures.COLD).orElseThrow().bound() - 1;
        List<String> kit = LimitSheet.ofKit(build, 5e6, 5e6, new FuelFlow(0, 5e5, 5e5, 1, false), ON).all().stream()
                .map(Limit::key)
                .toList();
        List<String> kept = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            String key = all.get(i).key();
            if (!kit.contains(key) && !ELSEWHERE.contains(key)) {
                kept.add(key);
                at.add(i);
            }
        }
        keys = List.copyOf(kept);
        places = at.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Margin of the limit that the speed alone decides. */
    double speedMargin() {
        return speedMargin;
    }

    /** Margin of the charge's temperature below which a combination gets no figures. */
    double farCold() {
        return farCold;
    }

    static void requireBound(Limit limit) {
        if (!Double.isFinite(limit.bound())) {
            throw new StudyException("The limit \"" + limit.key() + "\" (" + limit.name() + ") is " + limit.bound()
                    + "; a limit must be a finite number, correct it in the build's limits.");
        }
    }

    /** Every limit of a course with the nitrous on, at a modest point of it. */
    static List<Limit> everyLimit(Course course) {
        double plenum = modest(course);
        Probe probe = new Probe(course, course.speeds()[0], plenum);
        Evaluation point = probe.evaluate(
                course.speeds()[0], plenum, course.conditions().bottleLiquid().temperature(), 1e-6, 1e-6);
        return LimitSheet.of(probe.build, point).all();
    }

    /** A plenum pressure at which any map has an answer at full load: half of the ceiling. */
    static double modest(Course course) {
        return course.conditions().air().pressure()
                + 0.5 * course.evaluator().build().turbo().boostCeiling();
    }

    /** Keys of the limits whose margins stand in the list; those of mixture and kit are worked out elsewhere. */
    List<String> keys() {
        return keys;
    }

    Evaluation evaluate(double rpm, double plenum, double bottle, double nitrous, double fuel) {
        Conditions at = course.conditions().withBottleTemperature(bottle);
        FeedFlow feed = new FeedFlow(nitrous, "given", "given", List.of(), List.of(), at.bottleLiquid(), 0, 0);
        FuelFlow extra = new FuelFlow(fuel, plenum, plenum, Double.MAX_VALUE, false);
        return course.evaluator().at(at, rpm, Demand.boost(plenum).with(ON), feed, extra);
    }

    double[] numbers(Evaluation point) {
        List<Limit> limits = LimitSheet.of(build, point).all();
        double[] numbers = new double[MARGINS + places.length];
        numbers[POWER] = point.wheelPower();
        numbers[LAMBDA] = point.lambda();
        for (int k = 0; k < places.length; k++) {
            numbers[MARGINS + k] = limits.get(places[k]).relativeMargin();
        }
        return numbers;
    }
}
