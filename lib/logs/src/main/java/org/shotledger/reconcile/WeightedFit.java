package org.shotledger.reconcile;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DiagonalMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;

/**
 * Parameters of a model by weighted least squares (Levenberg-Marquardt of Hipparchus, derivatives by central differences).
 *
 * @param parameters the fitted parameters
 * @param covariance their covariance for the standard deviations stated, the inverse of {@code J^T W J}
 * @param chiSquare sum of the squared residuals, each over its standard deviation
 * @param freedom number of values less number of parameters
 */
@SuppressWarnings("ArrayRecordComponent") // a result to be read, never compared
public record WeightedFit(double[] parameters, double[][] covariance, double chiSquare, int freedom) {
    private static final double NUDGE = Math.cbrt(Math.ulp(1.0));
    private static final int MOST_EVALUATIONS = 1000;

    /**
     * Fits.
     *
     * @param model parameters to predicted values
     * @param measured measured values, finite
     * @param deviation standard deviation of each, above zero
     * @param start first guess of the parameters; its size, or 1 for a zero, scales the differences
     * @return the fit
     * @throws IllegalArgumentException when there are not more values than parameters, or the search does not settle or leaves a
     *     parameter undetermined
     */
    public static WeightedFit of(UnaryOperator<double[]> model, double[] measured, double[] deviation, double[] start) {
        if (measured.length <= start.length || deviation.length != measured.length) {
            throw new IllegalArgumentException("A fit of " + start.length + " parameters has " + measured.length
                    + " values and " + deviation.length
                    + " standard deviations; give more values than parameters, each with its deviation.");
        }
        double[] weights = Arrays.stream(deviation).map(s -> 1 / (s * s)).toArray();
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .model(point -> value(model, point, start))
                .target(measured)
                .weight(new DiagonalMatrix(weights))
                .start(start)
                .maxEvaluations(MOST_EVALUATIONS)
                .maxIterations(MOST_EVALUATIONS)
                .build();
        try {
            LeastSquaresOptimizer.Optimum found = new LevenbergMarquardtOptimizer().optimize(problem);
            double chi = found.getResiduals().dotProduct(found.getResiduals());
            return new WeightedFit(
                    found.getPoint().toArray(),
                    found.getCovariances(1e-12).getData(),
                    chi,
                    measured.length - start.length);
        } catch (MathIllegalStateException | org.hipparchus.exception.MathIllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "The fit does not settle on its " + start.length + " parameters (" + e.getMessage()
                            + "); start nearer, or fit fewer of them.",
                    e);
        }
    }

    private static Pair<RealVector, RealMatrix> value(UnaryOperator<double[]> model, RealVector at, double[] start) {
        double[] p = at.toArray();
        double[] centre = model.apply(p.clone());
        RealMatrix jacobian = new Array2DRowRealMatrix(centre.length, p.length);
        for (int j = 0; j < p.length; j++) {
            double size = Math.max(Math.abs(p[j]), start[j] == 0 ? 1 : Math.abs(start[j]));
            double h = NUDGE * size;
            double[] up = p.clone();
            double[] down = p.clone();
            up[j] += h;
            down[j] -= h;
            double[] above = model.apply(up);
            double[] below = model.apply(down);
            for (int i = 0; i < centre.length; i++) {
                jacobian.setEntry(i, j, (above[i] - below[i]) / (up[j] - down[j]));
            }
        }
        return new Pair<>(new ArrayRealVector(centre), jacobian);
    }

    /**
     * Standard uncertainty of a parameter when the standard deviations given are those of the values.
     *
     * @param parameter its number from 0
     * @return the standard uncertainty
     */
    public double uncertainty(int parameter) {
        return Math.sqrt(covariance[parameter][parameter]);
    }

    /**
     * Standard uncertainty of a parameter when the standard deviations given tell only the ratio of the weights: scaled by what the
     * residuals show.
     *
     * @param parameter its number from 0
     * @return the standard uncertainty
     */
    public double scaledUncertainty(int parameter) {
        return uncertainty(parameter) * Math.sqrt(chiSquare / freedom);
    }

    /**
     * Correlation of two parameters.
     *
     * @param a number of the one
     * @param b number of the other
     * @return -1 to 1
     */
    public double correlation(int a, int b) {
        return covariance[a][b] / uncertainty(a) / uncertainty(b);
    }
}
