package org.shotledger.nitrous;

import java.util.Optional;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.LongOrifice;

/**
 * The kind of hole that meters the nitrous fuel: its discharge coefficient for a liquid that does not boil, by shape and
 * Reynolds number, with the band in which it lies nine times out of ten.
 *
 * <p>Square edge, 2 to 10 bores long: {@link LongOrifice}. Square holes 9.5 to 23 bores long measured with nitrous oxide liquid have
 * 0.64 to 0.73 (AIAA 2013-3636 fig. 15), up to 14 % below it: hence the lower end. Square edge shorter than half a bore: 0.61, the
 * free sharp orifice. Between, the jet may or may not lie on to the wall: geometric mean of both. Rounded: 0.86, between
 * 0.78 (AIAA 2013-3636) and 0.945 (smooth nozzle, NASA 1979). Nothing known: 0.74, the middle of the 0.62 to 0.88 that small round
 * holes were measured to have (W. F. Joachim, NACA Report 224, 1926, abstract).
 *
 * @param edge shape of the inlet
 * @param lengthToBore length over diameter; NaN when it is not known
 * @param stated coefficient stated in the sheet, above 0, at most 1; NaN to use that of the shape
 * @param measured what a flow test found, relative to the coefficient of shape or sheet; empty without a test
 * @param place where in its band the jet is taken to be: -1 the lower end, 0 the best estimate, 1 the upper end
 */
public record FuelJet(Edge edge, double lengthToBore, double stated, Optional<FlowBand> measured, double place) {
    private static final double SHARP = 0.61;
    private static final double ROUNDED = 0.86;
    private static final double PLAIN = 0.74;
    private static final double SHORTEST_FULL = 2;
    private static final double LONGEST_FULL = 10;
    private static final double SHARP_LENGTH = 0.5;
    private static final double LEAST_REYNOLDS = 10;
    private static final double MOST_REYNOLDS = 2e4;

    public FuelJet {
        if (!Double.isNaN(stated) && !(stated > 0 && stated <= 1)) {
            throw new IllegalArgumentException(
                    "The fuel jet's discharge coefficient is " + stated + "; allowed is above 0, at most 1.");
        }
        if (lengthToBore < 0 || lengthToBore > 100) {
            throw new IllegalArgumentException(
                    "The fuel jet's length over bore is " + lengthToBore + "; allowed is 0 to 100.");
        }
    }

    /**
     * A jet whose coefficient the sheet states.
     *
     * @param coefficient above 0, at most 1
     * @return edge and length not known, no test
     */
    public static FuelJet stated(double coefficient) {
        return new FuelJet(Edge.UNKNOWN, Double.NaN, coefficient, Optional.empty(), 0);
    }

    /**
     * A jet by its shape.
     *
     * @param edge shape of the inlet
     * @param lengthToBore length over diameter; NaN when it is not known
     * @return no coefficient stated, no test
     */
    public static FuelJet shaped(Edge edge, double lengthToBore) {
        return new FuelJet(edge, lengthToBore, Double.NaN, Optional.empty(), 0);
    }

    /**
     * The same jet after a flow test.
     *
     * @param factor measured over predicted flow, with its band
     * @return new jet
     */
    public FuelJet withMeasured(FlowBand factor) {
        return new FuelJet(edge, lengthToBore, stated, Optional.of(factor), place);
    }

    /**
     * The same jet taken elsewhere in its band.
     *
     * @param there -1 the lower end, 0 the best estimate, 1 the upper end
     * @return new jet
     */
    public FuelJet at(double there) {
        return new FuelJet(edge, lengthToBore, stated, measured, there);
    }

    /**
     * Discharge coefficient at this jet's place in its band.
     *
     * @param reynolds Reynolds number of ideal velocity and bore, above 0; matters to square edges 2 to 10 bores long only,
     *     where above 20 000 the coefficient no longer changes and below 10 that of 10 is taken
     * @return coefficient on the incompressible flow
     */
    public double coefficient(double reynolds) {
        return nominal(reynolds) * factors().at(place);
    }

    /**
     * The band on the coefficient.
     *
     * @return relative to the coefficient of shape or sheet: that of the flow test when there was one
     */
    public FlowBand factors() {
        return measured.orElseGet(this::untested);
    }

    /**
     * What of the jet lies outside what was measured.
     *
     * @return a sentence; empty when nothing does, or a flow test was made
     */
    public String outside() {
        boolean longer = edge == Edge.SQUARE && lengthToBore > LONGEST_FULL && Double.isNaN(stated);
        return longer && measured.isEmpty()
                ? "The fuel jet is longer than the 10 bores to which its coefficient was measured; friction makes it pass less."
                : "";
    }

    /**
     * Where the coefficient comes from.
     *
     * @return source in words
     */
    public String source() {
        String test = measured.isPresent() ? "; factor from a flow test" : "";
        if (!Double.isNaN(stated)) {
            return "stated in the sheet" + test;
        }
        String shape = switch (edge) {
            case ROUNDED -> "rounded holes of AIAA 2013-3636 and NASA (1979)";
            case SQUARE ->
                isSharp()
                        ? "free sharp orifice"
                        : "Lichtarowicz, Duggins and Markland, J. Mech. Eng. Sci. 7, 210-219 (1965)";
            case UNKNOWN -> "small round holes, Joachim, NACA Report 224 (1926)";
        };
        return shape + test;
    }

    private boolean isSharp() {
        return lengthToBore < SHARP_LENGTH;
    }

    private double nominal(double reynolds) {
        if (!Double.isNaN(stated)) {
            return stated;
        }
        return switch (edge) {
            case ROUNDED -> ROUNDED;
            case SQUARE -> square(reynolds);
            case UNKNOWN -> PLAIN;
        };
    }

    private double square(double reynolds) {
        if (Double.isNaN(lengthToBore)) {
            return PLAIN;
        }
        if (isSharp()) {
            return SHARP;
        }
        if (lengthToBore < SHORTEST_FULL) {
            return Math.sqrt(SHARP * LongOrifice.ultimateCoefficient(SHORTEST_FULL));
        }
        double length = Math.min(lengthToBore, LONGEST_FULL);
        return reynolds >= MOST_REYNOLDS
                ? LongOrifice.ultimateCoefficient(length)
                : LongOrifice.coefficient(Math.max(reynolds, LEAST_REYNOLDS), length);
    }

    private FlowBand untested() {
        return switch (edge) {
            case ROUNDED -> new FlowBand(0.88, 1, 1.12);
            case SQUARE -> squareBand();
            case UNKNOWN -> new FlowBand(0.81, 1, 1.22);
        };
    }

    private FlowBand squareBand() {
        if (Double.isNaN(lengthToBore)) {
            return new FlowBand(0.81, 1, 1.22);
        }
        if (isSharp()) {
            return new FlowBand(0.95, 1, 1.06);
        }
        return lengthToBore < SHORTEST_FULL ? new FlowBand(0.86, 1, 1.17) : new FlowBand(0.85, 1, 1.08);
    }
}
