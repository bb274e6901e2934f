package org.shotledger.confidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NormalQuantileTest {
    /** Against the cumulative distribution of Hipparchus, far into the lower tail, where it loses no digits. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-15, 1e-12, 1e-9, 1e-6, 1e-4, 0.001, 0.0249, 0.07, 0.0751, 0.2, 0.4, 0.5})
    void it_is_the_inverse_of_the_distribution(double probability) {
        double x = NormalQuantile.of(probability);
        assertEquals(probability, new NormalDistribution().cumulativeProbability(x), 1e-12 * probability);
        assertEquals(-x, NormalQuantile.of(1 - probability), probability < 1e-4 ? 1e-2 : 1e-9);
    }
}
