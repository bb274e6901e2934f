package org.shotledger.gas;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.shotledger.units.Require;

/**
 * Chemical equilibrium of an ideal-gas mixture by the smallest Gibbs energy, with the atoms held by Lagrange multipliers:
 * the reduced iteration of S. Gordon and B. J. McBride, NASA RP-1311 (1994), section 2.3.
 *
 * <p>An instance holds the list of species it may form; it has no other state.
 */
public final class Equilibrium {
    /** The gas products of fuels with air and nitrous oxide, radicals included. */
    public static final Equilibrium DISSOCIATED = new Equilibrium(
            List.of("CO2", "CO", "H2O", "H2", "O2", "N2", "OH", "H", "O", "NO", "N", "NO2", "HO2", "N2O", "Ar").stream()
                    .map(Gases::of)
                    .toList());
    /** The same with what very rich flames leave: methane, acetylene, cyanides, ammonia. */
    public static final Equilibrium RICH = new Equilibrium(Gases.all().values().stream()
            .filter(g -> g.atoms(Element.C) < 3)
            .filter(g -> g.atoms(Element.C) * g.atoms(Element.H) * g.atoms(Element.O) == 0)
            .toList());
    /** Products that do not dissociate: CO2, CO, H2O, H2, O2, N2, Ar. */
    public static final Equilibrium MAJOR = new Equilibrium(List.of("CO2", "CO", "H2O", "H2", "O2", "N2", "Ar").stream()
            .map(Gases::of)
            .toList());

    private static final double STANDARD_PRESSURE = 1e5;
    private static final double TRACE = 1e-30;
    private static final int MOST_STEPS = 300;

    private final List<Gas> species;

    /**
     * Equilibrium among a list of gases.
     *
     * @param species what may form; together they must be able to hold every element that comes
     */
    public Equilibrium(List<Gas> species) {
        this.species = List.copyOf(species);
    }

    /**
     * The composition at a temperature and pressure.
     *
     * @param atoms mol of atoms of each element, 0 or more
     * @param temperature K, 300 to 6000
     * @param pressure Pa, above zero
     * @return amounts of all species; the atoms are those given, to 1e-11
     * @throws IllegalArgumentException when the species cannot hold an element
     * @throws ArithmeticException when the iteration does not settle
     */
    public GasMixture at(Map<Element, Double> atoms, double temperature, double pressure) {
        Require.within("temperature of the equilibrium", temperature, 300, 6000, "K");
        Require.positive("pressure of the equilibrium", pressure, "Pa");
        Element[] present = Arrays.stream(Element.values())
                .filter(e -> atoms.getOrDefault(e, 0.0) > 0)
                .toArray(Element[]::new);
        List<Gas> possible = species.stream().filter(g -> holdsOnly(g, present)).toList();
        for (Element e : present) {
            if (possible.stream().noneMatch(g -> g.atoms(e) > 0)) {
                throw new IllegalArgumentException(
                        "None of the species " + species + " holds the element " + e + "; add one that does.");
            }
        }
        double[] b = Arrays.stream(present).mapToDouble(atoms::get).toArray();
        return GasMixture.of(possible, solve(possible, present, b, temperature, pressure));
    }

    private static boolean holdsOnly(Gas gas, Element[] present) {
        for (Element e : Element.values()) {
            if (gas.atoms(e) > 0 && !Arrays.asList(present).contains(e)) {
                return false;
            }
        }
        return true;
    }

    private static double[] solve(List<Gas> gases, Element[] elements, double[] b, double t, double p) {
        int ns = gases.size();
        int ne = elements.length;
        double scale = Arrays.stream(b).sum();
        double[][] a = new double[ns][ne];
        double[] g = new double[ns];
        double[] lnN = new double[ns];
        for (int j = 0; j < ns; j++) {
            for (int i = 0; i < ne; i++) {
                a[j][i] = gases.get(j).atoms(elements[i]);
            }
            g[j] = gases.get(j).gibbs(t) + Math.log(p / STANDARD_PRESSURE);
        }
        double lnTotal = Math.log(0.5 * scale);
        Arrays.fill(lnN, lnTotal - Math.log(ns));
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] mu = new double[ns];
            double[] n = new double[ns];
            for (int j = 0; j < ns; j++) {
                n[j] = Math.exp(lnN[j]);
                mu[j] = g[j] + lnN[j] - lnTotal;
            }
            double[] x = LinearSystem.solve(matrix(a, n, mu, b, Math.exp(lnTotal)));
            double[] change = new double[ns];
            double damping = 1;
            for (int j = 0; j < ns; j++) {
                change[j] = x[ne] - mu[j];
                for (int i = 0; i < ne; i++) {
                    change[j] += a[j][i] * x[i];
                }
                damping = Math.min(damping, limit(change[j], lnN[j] - lnTotal));
            }
            damping = Math.min(damping, 2 / Math.max(2, 5 * Math.abs(x[ne])));
            double largest = Math.abs(x[ne]);
            for (int j = 0; j < ns; j++) {
                lnN[j] = Math.max(lnN[j] + damping * change[j], Math.log(TRACE * scale));
                largest = Math.max(largest, n[j] / scale * Math.abs(change[j]));
            }
            lnTotal += damping * x[ne];
            if (largest < 1e-14) {
                return Arrays.stream(lnN).map(Math::exp).toArray();
            }
        }
        throw new ArithmeticException("The chemical equilibrium at " + t + " K and " + p
                + " Pa did not settle; the mixture may hold more carbon than gases can carry.");
    }

    /** Keeps large species from jumping and small ones from growing beyond 1e-4 in one step (RP-1311, eq. 3.1 to 3.3). */
    private static double limit(double change, double lnFraction) {
        if (lnFraction > -18.5 && change > 0) {
            return 2 / Math.max(2, change);
        }
        if (lnFraction <= -18.5 && change > 0) {
            return Math.abs((-lnFraction - 9.2103404) / change);
        }
        return 1;
    }

    private static double[][] matrix(double[][] a, double[] n, double[] mu, double[] b, double total) {
        int ns = n.length;
        int ne = b.length;
        double[][] m = new double[ne + 1][ne + 2];
        double sum = 0;
        double sumMu = 0;
        for (int j = 0; j < ns; j++) {
            sum += n[j];
            sumMu += n[j] * mu[j];
            for (int k = 0; k < ne; k++) {
                double an = a[j][k] * n[j];
                for (int i = 0; i < ne; i++) {
                    m[k][i] += an * a[j][i];
                }
                m[k][ne] += an;
                m[ne][k] += an;
                m[k][ne + 1] += an * (mu[j] - 1);
            }
        }
        for (int k = 0; k < ne; k++) {
            m[k][ne + 1] += b[k];
        }
        m[ne][ne] = sum - total;
        m[ne][ne + 1] = total - sum + sumMu;
        return m;
    }
}
