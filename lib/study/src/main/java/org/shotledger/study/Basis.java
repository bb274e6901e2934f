package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;

/**
 * The monomials of a factor table in four coordinates, each from -1 to 1: plenum pressure, enthalpy of the bottle's liquid,
 * nitrous per pressure, richness. They are grouped by the last three, so that a pressure can be put in first and once.
 */
final class Basis {
    /** Powers of each group: enthalpy, nitrous, richness. */
    final int[][] groups;
    /** Where the terms of each group begin; a term's place in its group is its power of pressure. */
    final int[] start;
    /** Highest power of the richness. */
    final int richness;
    /** The first group of each power of the richness. */
    private final int[] first;

    private Basis(List<int[]> groups, List<Integer> lengths, int richness) {
        this.groups = groups.toArray(int[][]::new);
        this.start = new int[lengths.size() + 1];
        for (int g = 0; g < lengths.size(); g++) {
            start[g + 1] = start[g] + lengths.get(g);
        }
        this.richness = richness;
        this.first = new int[richness + 2];
        for (int[] group : this.groups) {
            for (int l = group[2] + 1; l < first.length; l++) {
                first[l]++;
            }
        }
    }

    /**
     * Every monomial up to a total degree; the enthalpy, which acts weakly, up to a total of three.
     *
     * @param degree highest total degree of pressure, nitrous and richness
     * @param richness highest power of the richness
     * @param enthalpy whether the enthalpy varies at all
     * @return the basis
     */
    static Basis of(int degree, int richness, boolean enthalpy) {
        List<int[]> groups = new ArrayList<>();
        List<Integer> lengths = new ArrayList<>();
        for (int l = 0; l <= richness; l++) {
            for (int w = 0; w + l <= degree; w++) {
                groups.add(new int[] {0, w, l});
                lengths.add(degree - w - l + 1);
                for (int h = 1; enthalpy && h + w + l <= 3 && h <= 2; h++) {
                    groups.add(new int[] {h, w, l});
                    lengths.add(4 - h - w - l);
                }
            }
        }
        return new Basis(groups, lengths, richness);
    }

    int size() {
        return start[start.length - 1];
    }

    /** The value of every monomial. */
    double[] at(double pressure, double enthalpy, double nitrous, double rich) {
        double[] row = new double[size()];
        for (int g = 0; g < groups.length; g++) {
            int[] e = groups[g];
            double value = power(enthalpy, e[0]) * power(nitrous, e[1]) * power(rich, e[2]);
            for (int t = start[g]; t < start[g + 1]; t++) {
                row[t] = value;
                value *= pressure;
            }
        }
        return row;
    }

    /** Enthalpy and nitrous of each group, the richness left out. */
    void factors(double enthalpy, double nitrous, double[] to) {
        double power = 1;
        for (int g = 0; g < groups.length; g++) {
            int[] e = groups[g];
            if (e[1] == 0) {
                power = 1;
            } else if (e[1] != groups[g - 1][1]) {
                power *= nitrous;
            }
            to[g] = e[0] == 0 ? power : e[0] == 1 ? power * enthalpy : power * enthalpy * enthalpy;
        }
    }

    /** Sums the groups of each power of the richness. */
    void gather(double[] values, double[] factors, double[] powers) {
        for (int l = 0; l <= richness; l++) {
            double sum = 0;
            for (int g = first[l]; g < first[l + 1]; g++) {
                sum += values[g] * factors[g];
            }
            powers[l] = sum;
        }
    }

    /** The same from the coefficients of the terms, the pressure put in on the way. */
    void gather(double[] column, double pressure, double[] factors, double[] powers) {
        for (int l = 0; l <= richness; l++) {
            double sum = 0;
            for (int g = first[l]; g < first[l + 1]; g++) {
                sum += group(g, column, pressure) * factors[g];
            }
            powers[l] = sum;
        }
    }

    /** One group with the pressure put in. */
    double group(int g, double[] column, double pressure) {
        double sum = 0;
        for (int t = start[g + 1] - 1; t >= start[g]; t--) {
            sum = sum * pressure + column[t];
        }
        return sum;
    }

    static double power(double x, int exponent) {
        double product = 1;
        for (int i = 0; i < exponent; i++) {
            product *= x;
        }
        return product;
    }
}
