package org.shotledger.spread;

import org.shotledger.curve.Bracket;

/**
 * One stream through n equal branches: the relative flow of one branch when it and the others are off nominal.
 *
 * <p>A branch takes its share of the area; the pressure before the branches answers to the whole area, because hose and
 * solenoid are shared: {@code m_i = a_i / a_mean * a_mean^e = a_i a_mean^(e-1)} with e the exponent of the whole flow over the
 * whole area, 1 for jets that see a constant pressure. Scatter of how a spray divides is stated for a cylinder's share itself,
 * so there e is 1.
 *
 * @param branches number of branches, at least 1
 * @param exponent relative growth of the whole flow over relative growth of the whole area, 0 to 1
 * @param scatter of each branch's own factor
 * @param holes true when the scatter is of a diameter, so that the factor goes with its square
 */
record Stream(int branches, double exponent, Scatter scatter, boolean holes) {
    /** Deviation to which one is found. */
    private static final double CLOSE = 1e-13;

    /** The factor of one branch at a deviation. */
    double factor(double deviation) {
        return holes ? (1 + deviation) * (1 + deviation) : 1 + deviation;
    }

    /** The relative flow of one branch with all others at one deviation. */
    double flow(double own, double others) {
        double mean = (factor(own) + (branches - 1) * factor(others)) / branches;
        return factor(own) * Math.pow(mean, exponent - 1);
    }

    /** The relative flow of each branch. */
    double[] flows(double[] deviations) {
        double mean = 0;
        for (double d : deviations) {
            mean += factor(d) / branches;
        }
        double pressure = Math.pow(mean, exponent - 1);
        double[] flows = new double[branches];
        for (int i = 0; i < branches; i++) {
            flows[i] = factor(deviations[i]) * pressure;
        }
        return flows;
    }

    /** Probability that one branch passes at most a relative flow, the others nominal. */
    double probability(double flow) {
        if (flow >= flow(scatter.reach(), 0)) {
            return 1;
        }
        return flow < flow(-scatter.reach(), 0) ? 0 : scatter.probability(deviation(flow));
    }

    /** The own deviation at which one branch passes a relative flow, the others nominal; flow rises with deviation. */
    double deviation(double flow) {
        double low = -scatter.reach();
        double high = scatter.reach();
        if (flow(low, 0) >= flow) {
            return low;
        }
        if (flow(high, 0) <= flow) {
            return high;
        }
        return Bracket.root(d -> flow(d, 0) - flow, low, high, CLOSE);
    }
}
