package org.shotledger.confidence;

import java.util.Comparator;
import java.util.List;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Calibration;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Course;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Evaluator;
import org.shotledger.budget.Wish;
import org.shotledger.build.Build;
import org.shotledger.flow.FeedFlow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.study.Candidate;

/**
 * What was decided and stays decided, whatever turns out to be true: boost over engine speed, jets, and the wish.
 *
 * @param name what it is called
 * @param build the build it was made for
 * @param wish the wish
 * @param points the planned operating points over the band
 * @param jets its jets
 */
public record Plan(String name, Build build, Wish wish, List<Evaluation> points, JetPair jets) {
    private static final double BAR = 1e5;

    /** Copies the list. */
    public Plan {
        points = List.copyOf(points);
    }

    /**
     * The plan of a budget.
     *
     * @param budget the budget
     * @return its boost and its jets
     */
    public static Plan of(Budget budget) {
        double held = budget.split().points().stream()
                .mapToDouble(p -> p.gaugePressure())
                .max()
                .orElseThrow();
        return of(
                "the budget's own",
                budget.build(),
                budget.wish(),
                held,
                budget.jets().chosen().pair());
    }

    /**
     * A combination of a study as a plan.
     *
     * @param candidate the combination
     * @param base the build of its space
     * @param wish the wish of its space
     * @return its boost and its jets
     */
    public static Plan of(Candidate candidate, Build base, Wish wish) {
        return of(
                candidate.combination().name(),
                candidate.combination().build(base),
                wish,
                candidate.combination().gaugePressure(),
                candidate.combination().jets());
    }

    private static Plan of(String name, Build build, Wish wish, double gaugePressure, JetPair jets) {
        Course course = Course.of(Calibration.of(build), Conditions.of(build, wish.conditions()), wish);
        return new Plan(name, build, wish, course.points(gaugePressure, jets), jets);
    }

    /**
     * What the plan does when the unknowns have certain values: the build is as they say, its model is calibrated anew on its
     * base pull, and boost and jets are as planned with their own errors.
     *
     * @param unknowns the unknowns
     * @param values their values
     * @return the operating points at the planned speeds
     * @throws IllegalArgumentException when a model has no answer
     */
    public List<Evaluation> at(List<Unknown> unknowns, double[] values) {
        Build real = build;
        double boost = 0;
        double nitrous = 1;
        double fuel = 1;
        for (int i = 0; i < values.length; i++) {
            switch (unknowns.get(i).path()) {
                case Unknown.BOOST -> boost = BAR * values[i];
                case Unknown.NITROUS_JET -> nitrous = values[i];
                case Unknown.FUEL_JET -> fuel = values[i];
                default -> {
                    if (values[i] != unknowns.get(i).distribution().quantile(0.5)) {
                        real = real.with(unknowns.get(i).path(), unknowns.get(i).text(values[i]));
                    }
                }
            }
        }
        Evaluator evaluator = Calibration.of(real);
        Conditions at = Conditions.of(real, wish.conditions());
        JetPair bored = new JetPair(nitrous * jets.nitrousBore(), fuel * jets.fuelBore());
        double error = boost;
        double ambient = at.air().pressure();
        double most = points.stream()
                .max(Comparator.comparingDouble(Evaluation::gaugePressure))
                .orElseThrow()
                .gaugePressure();
        FeedFlow feed = evaluator.feed(at, Demand.boost(ambient + most + error).with(bored));
        return points.stream()
                .map(p -> evaluator.at(
                        at,
                        p.rpm(),
                        Demand.boost(ambient + p.gaugePressure() + error).with(bored),
                        feed))
                .toList();
    }
}
