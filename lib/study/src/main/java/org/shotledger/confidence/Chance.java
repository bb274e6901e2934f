package org.shotledger.confidence;

import java.util.Arrays;
import java.util.Locale;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A probability with the interval that holds it 95 times out of 100, as far as the number of draws is concerned.
 *
 * @param probability estimate, 0 to 1
 * @param low lower end
 * @param high upper end
 */
public record Chance(double probability, double low, double high) {
    /** Number of independent replicates the interval is told from. */
    static final int REPLICATES = 16;

    /** Distributions are not known further into their tails: our choice. */
    private static final double HIGHEST_TOLD = 0.999;

    private static final double TWO_SIDED_95 = 0.975;
    private static final double NORMAL = new NormalDistribution().inverseCumulativeProbability(TWO_SIDED_95);
    private static final double STUDENT =
            new TDistribution(REPLICATES - 1.0).inverseCumulativeProbability(TWO_SIDED_95);

    /** From independent replicates of shifted points; where they all agree, Wilson's interval of all draws. */
    static Chance of(double[] byReplicate, long drawsEach) {
        double mean = Arrays.stream(byReplicate).average().orElseThrow();
        double sum =
                Arrays.stream(byReplicate).map(p -> (p - mean) * (p - mean)).sum();
        if (sum == 0) {
            return wilson(Math.round(mean * byReplicate.length * drawsEach), byReplicate.length * drawsEach);
        }
        double half = STUDENT * Math.sqrt(sum / (byReplicate.length - 1) / byReplicate.length);
        return new Chance(mean, Math.max(0, mean - half), Math.min(1, mean + half));
    }

    /**
     * From independent draws: E. B. Wilson, J. American Statistical Association 22 (1927) 209.
     *
     * @param hits draws in which it happened
     * @param draws all draws, at least one
     * @return the chance
     */
    public static Chance wilson(long hits, long draws) {
        double n = draws;
        double p = hits / n;
        double z2 = NORMAL * NORMAL;
        double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = NORMAL / (1 + z2 / n) * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        return new Chance(p, Math.max(0, middle - half), Math.min(1, middle + half));
    }

    /**
     * The chance as a reader sees it; certainty is never claimed.
     *
     * @return for example {@code "59 %"} or {@code ">99.9 % within the stated bands"}
     */
    public String text() {
        if (probability > HIGHEST_TOLD) {
            return ">99.9 % within the stated bands";
        }
        return probability < 1 - HIGHEST_TOLD
                ? "<0.1 % within the stated bands"
                : String.format(
                        Locale.ROOT, probability < 0.1 || probability > 0.9 ? "%.1f %%" : "%.0f %%", 100 * probability);
    }
}
