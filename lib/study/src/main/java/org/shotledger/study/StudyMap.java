package org.shotledger.study;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.shotledger.budget.Limit;

/**
 * Two axes of a space in every combination, everything else as in one candidate, worked out by the exact evaluation.
 *
 * @param space the space
 * @param xPath the axis drawn along the horizontal, boost or a jet
 * @param yPath the axis drawn along the vertical, boost or a jet
 * @param rows candidates by value of the vertical axis, then of the horizontal one; empty where a model has no answer
 */
public record StudyMap(Space space, String xPath, String yPath, List<List<Optional<Candidate>>> rows) {

    /** Copies the rows. */
    public StudyMap {
        rows = List.copyOf(rows);
    }

    /**
     * Evaluates the map.
     *
     * @param space the space
     * @param xPath the horizontal axis: {@link Vary#BOOST}, {@link Vary#NITROUS_JET} or {@link Vary#FUEL_JET}
     * @param yPath the vertical axis, another of them
     * @param through the candidate whose other settings are kept
     * @return the map
     * @throws StudyException when an axis is not one of these or has fewer than two values
     */
    public static StudyMap of(Space space, String xPath, String yPath, Candidate through) {
        for (String path : List.of(xPath, yPath)) {
            if (!Vary.OWN_PATHS.contains(path) || settings(space, path).size() < 2 || xPath.equals(yPath)) {
                throw new StudyException("A map cannot be drawn over \"" + xPath + "\" and \"" + yPath
                        + "\"; take two different ones of " + Vary.OWN_PATHS + ", each with two values or more.");
            }
        }
        ExactStudy exact = new ExactStudy(space);
        int x = space.position(xPath);
        int y = space.position(yPath);
        long base = through.outcome().index();
        long start = base - own(space, base, x) - own(space, base, y);
        List<List<Optional<Candidate>>> rows = IntStream.range(
                        0, settings(space, yPath).size())
                .parallel()
                .mapToObj(j -> IntStream.range(0, settings(space, xPath).size())
                        .mapToObj(i -> candidate(exact, start + i * space.stride(x) + j * space.stride(y)))
                        .toList())
                .toList();
        return new StudyMap(space, xPath, yPath, rows);
    }

    private static List<Setting> settings(Space space, String path) {
        return space.axes().get(space.position(path)).settings();
    }

    private static long own(Space space, long index, int axis) {
        long stride = space.stride(axis);
        return index / stride % space.axes().get(axis).settings().size() * stride;
    }

    private static Optional<Candidate> candidate(ExactStudy exact, long index) {
        try {
            return Optional.of(exact.candidate(index));
        } catch (StudyException beyondTheModels) {
            return Optional.empty();
        }
    }

    /**
     * Values along the horizontal axis.
     *
     * @return SI values in the order of the axis
     */
    public double[] xs() {
        return settings(space, xPath).stream().mapToDouble(Setting::value).toArray();
    }

    /**
     * Values along the vertical axis.
     *
     * @return SI values in the order of the axis
     */
    public double[] ys() {
        return settings(space, yPath).stream().mapToDouble(Setting::value).toArray();
    }

    /**
     * Where a candidate lies along the horizontal axis.
     *
     * @param candidate the candidate
     * @return SI value
     */
    public double x(Candidate candidate) {
        return candidate.combination().settings().get(space.position(xPath)).value();
    }

    /**
     * Where a candidate lies along the vertical axis.
     *
     * @param candidate the candidate
     * @return SI value
     */
    public double y(Candidate candidate) {
        return candidate.combination().settings().get(space.position(yPath)).value();
    }

    /**
     * A number at every place.
     *
     * @param number the number of a candidate
     * @return by vertical, then horizontal place
     */
    public double[][] each(Function<Optional<Candidate>, Double> number) {
        return rows.stream()
                .map(row -> row.stream().mapToDouble(number::apply).toArray())
                .toArray(double[][]::new);
    }

    /**
     * Names of the limits that are broken somewhere on the map.
     *
     * @return names in the order of the build sheet
     */
    public List<String> limitNames() {
        return rows.stream()
                .flatMap(List::stream)
                .flatMap(Optional::stream)
                .flatMap(c -> c.limits().all().stream())
                .filter(l -> l.relativeMargin() < 0)
                .map(Limit::name)
                .distinct()
                .toList();
    }

    /**
     * The margin of a candidate to a limit.
     *
     * @param candidate the candidate
     * @param limitName name of the limit
     * @return relative margin; NaN when it has no such limit
     */
    public double margin(Candidate candidate, String limitName) {
        return candidate.limits().all().stream()
                .filter(l -> l.name().equals(limitName))
                .mapToDouble(Limit::relativeMargin)
                .findFirst()
                .orElse(Double.NaN);
    }
}
