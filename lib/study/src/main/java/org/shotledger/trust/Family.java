package org.shotledger.trust;

import java.util.Comparator;
import java.util.List;

/**
 * All figures of one kind.
 *
 * @param name what is compared
 * @param independence how far the figures are foreign to the model, one sentence
 * @param band what the band is, in words
 * @param figures the figures, source by source
 */
public record Family(String name, String independence, String band, List<Comparison> figures) {

    /** Sorts the figures by source. */
    public Family {
        figures = figures.stream()
                .sorted(Comparator.comparing(Comparison::source))
                .toList();
    }

    /**
     * How many sources there are.
     *
     * @return number of different sources
     */
    public int sources() {
        return (int) figures.stream().map(Comparison::source).distinct().count();
    }

    /**
     * Predicted over outside in the middle.
     *
     * @return geometric mean of the ratios
     */
    public double mean() {
        return Math.exp(figures.stream()
                .mapToDouble(figure -> Math.log(figure.ratio()))
                .average()
                .orElse(Double.NaN));
    }

    /**
     * Scatter about the figures.
     *
     * @return root mean square of the ratios less 1
     */
    public double error() {
        return Math.sqrt(figures.stream()
                .mapToDouble(figure -> (figure.ratio() - 1) * (figure.ratio() - 1))
                .average()
                .orElse(Double.NaN));
    }

    /**
     * The figure that is met worst.
     *
     * @return the one whose ratio is furthest from 1, in the logarithm
     */
    public Comparison worst() {
        return figures.stream()
                .max(Comparator.comparingDouble(figure -> Math.abs(Math.log(figure.ratio()))))
                .orElseThrow();
    }

    /**
     * How many lie where they should.
     *
     * @return share inside the band
     */
    public double inside() {
        return figures.stream().filter(Comparison::inside).count() / (double) figures.size();
    }
}
