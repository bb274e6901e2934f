package org.shotledger.study;

import java.util.Comparator;
import java.util.List;
import org.shotledger.budget.Course;
import org.shotledger.budget.Evaluation;
import org.shotledger.budget.Limit;
import org.shotledger.budget.Limits;
import org.shotledger.build.BuilderLimits;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;

/** Evaluates combinations with the budget's own code, about a millisecond each; the measure of the factor tables. */
public final class ExactStudy {
    private final Space space;
    private final Courses courses;

    /**
     * Prepares a space.
     *
     * @param space the space
     */
    public ExactStudy(Space space) {
        this(space, new Courses(space));
    }

    ExactStudy(Space space, Courses courses) {
        this.space = space;
        this.courses = courses;
    }

    /**
     * One combination.
     *
     * @param index its place in the space
     * @return what it does; without figures where a model has no answer, which with boost allowed by itself means that so much
     *     nitrous oxide leaves no charge in balance
     */
    public Figures outcome(long index) {
        Combination combination = space.at(index);
        Course course = courses.of(combination);
        try {
            List<Evaluation> points = course.points(combination.gaugePressure(), combination.jets());
            return points.size() < course.speeds().length
                    ? Figures.far(index, Figures.MAP)
                    : outcome(index, course, points);
        } catch (IllegalArgumentException refused) {
            return Figures.far(index, Figures.COLD);
        }
    }

    /**
     * One combination with everything that is known of it.
     *
     * @param index its place in the space
     * @return the candidate
     * @throws StudyException when a model has no answer for it
     */
    public Candidate candidate(long index) {
        Combination combination = space.at(index);
        Course course = courses.of(combination);
        try {
            List<Evaluation> points = course.points(combination.gaugePressure(), combination.jets());
            Evaluation peak = strongest(points);
            return new Candidate(
                    combination,
                    outcome(index, course, points),
                    peak,
                    course.closest(points),
                    space.wish().passSeconds());
        } catch (IllegalArgumentException refused) {
            throw new StudyException("Combination " + index + " (" + combination.words() + ") is beyond the models: "
                    + refused.getMessage());
        }
    }

    private static Figures outcome(long index, Course course, List<Evaluation> points) {
        Evaluation peak = strongest(points);
        Limits limits = course.closest(points);
        limits.all().forEach(Probe::requireBound);
        Limit first = limits.first().orElseThrow();
        BuilderLimits allowed = course.evaluator().build().limits();
        return new Figures(
                index,
                peak.wheelPower(),
                peak.lambda(),
                peak.nitrous().massFlow(),
                points.stream()
                        .mapToDouble(p -> p.cylinder().peakPressure())
                        .max()
                        .orElseThrow(),
                first.relativeMargin(),
                far(points, allowed, first.key()),
                points.stream()
                        .mapToDouble(p -> forgiveness(course, p, allowed))
                        .min()
                        .orElseThrow());
    }

    private static Evaluation strongest(List<Evaluation> points) {
        return points.stream()
                .max(Comparator.comparingDouble(Evaluation::wheelPower))
                .orElseThrow();
    }

    /** The key of a limit so far passed that it counts alone, else the key of the closest. */
    private static String far(List<Evaluation> points, BuilderLimits allowed, String closest) {
        if (points.stream().anyMatch(p -> p.nitrousFuel().pumpLimited())) {
            return Figures.PUMP;
        }
        if (points.stream().anyMatch(p -> p.lambda() > Figures.FAR_LEAN * allowed.lambdaHigh())) {
            return Figures.LEAN;
        }
        if (points.stream().anyMatch(p -> p.lambda() < Figures.FAR_RICH * allowed.lambdaLow())) {
            return Figures.RICH;
        }
        boolean cold = points.stream().anyMatch(p -> p.charge().temperature() < Figures.FAR_COLD);
        return cold ? Figures.COLD : closest;
    }

    private static double forgiveness(Course course, Evaluation point, BuilderLimits allowed) {
        FuelFlow whole = point.nitrousFuel();
        FuelFlow less = new FuelFlow(
                whole.massFlow() * (1 - Figures.FUEL_LOST),
                whole.railPressure(),
                whole.jetPressure(),
                whole.pumpCapacity(),
                whole.pumpLimited());
        double lambda = course.evaluator()
                .at(point.conditions(), point.rpm(), point.demand(), point.nitrous(), less)
                .lambda();
        return 1 - lambda / allowed.lambdaHigh();
    }
}
