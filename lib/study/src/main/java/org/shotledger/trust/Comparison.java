package org.shotledger.trust;

import org.shotledger.flow.FlowBand;

/**
 * One figure from outside the project beside what a model says.
 *
 * @param source who measured, tabulated or worked it out
 * @param what the figure in words
 * @param outside the figure, in the unit of its source
 * @param predicted what the model says, in the same unit
 * @param band where predicted over outside should lie: the model's own band, or the error that the source deserves
 */
public record Comparison(String source, String what, double outside, double predicted, FlowBand band) {

    /**
     * A figure with a tolerance either way.
     *
     * @param source who measured, tabulated or worked it out
     * @param what the figure in words
     * @param outside the figure
     * @param predicted what the model says
     * @param relative tolerance, above 0 and below 1
     * @return the comparison
     */
    static Comparison within(String source, String what, double outside, double predicted, double relative) {
        double share = Math.min(relative, 0.999);
        return new Comparison(source, what, outside, predicted, new FlowBand(1 - share, 1, 1 + share));
    }

    /**
     * The model's answer.
     *
     * @return predicted over outside
     */
    public double ratio() {
        return predicted / outside;
    }

    /**
     * Tells whether the figure lies where it should.
     *
     * @return true inside the band, rounding of the last digit apart
     */
    public boolean inside() {
        double slack = 1e-9;
        return ratio() >= band.low() - slack && ratio() <= band.high() + slack;
    }
}
