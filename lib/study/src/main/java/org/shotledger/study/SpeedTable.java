package org.shotledger.study;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.SobolSequenceGenerator;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.budget.Course;
import org.shotledger.budget.Demand;
import org.shotledger.budget.Evaluation;
import org.shotledger.build.BuilderLimits;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Mixture;
import org.shotledger.fuel.Oxidisers;

/**
 * One engine speed of one engine side: power, mixture and every margin as polynomials in plenum pressure, enthalpy of the
 * bottle's liquid, nitrous per pressure and richness, fitted by least squares to the exact evaluation at low-discrepancy points
 * that crowd towards the edges. It holds no equation of its own; {@link #powerError} and {@link #lambdaError} say how far it
 * lies from the exact evaluation at random points it was not fitted to.
 */
final class SpeedTable {
    static final int DEGREE = 6;
    static final int RICHNESS = 4;
    private static final int SAMPLES_PER_TERM = 4;
    private static final int CHECKS = 40;
    /** The tables reach this factor beyond the mixtures that still get figures, since richness is only nearly 1/lambda. */
    private static final double ROOM = 1.08;

    private static final double PRESSURE_STEP = 0.98;
    private static final double COLDEST_FITTED = 187;
    /** A margin above this is far from biting and need not be told precisely. */
    private static final double EASY = 0.3;

    final double rpm;
    final Scale pressure;
    final Scale enthalpy;
    final Scale nitrous;
    final Scale richness;
    final Basis basis;
    final int outputs;
    /** Coefficients by term and output. */
    final double[][] coefficients;
    /** The same by output and term. */
    private final double[][] columns;
    /** Oxygen brought and oxygen wanted by the engine alone per Pa of plenum pressure, and wanted by a kg of nitrous fuel. */
    private final double oxygen;

    private final double demand;
    private final double fuelDemand;
    private final Scale temperature;
    double powerError;
    double lambdaError;

    SpeedTable(Course course, Probe probe, double rpm, Reach reach) {
        this.rpm = rpm;
        double top = course.plenumPressure(rpm, reach.gaugeHigh());
        double ambient = course.conditions().air().pressure();
        while (!answers(course, probe, rpm, top, reach)) {
            top *= 0.998;
            if (top < ambient) {
                throw new StudyException(
                        "No boost at " + rpm + " rpm can be tabulated; the compressor map has no answer there.");
            }
        }
        double bottom = top;
        while (bottom > ambient) {
            double next = Math.max(ambient, bottom * PRESSURE_STEP);
            if (!answers(course, probe, rpm, next, reach)) {
                break;
            }
            bottom = next;
        }
        pressure = new Scale(bottom, top);
        temperature = reach.temperature();
        enthalpy = new Scale(
                enthalpy(reach.temperature().low()),
                enthalpy(reach.temperature().high()));
        double most = Math.min(reach.nitrous().high() / bottom, coldest(course, probe, rpm, top));
        nitrous = new Scale(Math.min(reach.nitrous().low() / top, most), most);
        Mixture alone = course.evaluator()
                .at(course.conditions(), rpm, Demand.boost(top))
                .charge()
                .mixture();
        oxygen = alone.oxygenSupplied() / top;
        demand = alone.oxygenDemanded() / top;
        fuelDemand = course.evaluator().build().fuels().nitrous().oxygenDemand();
        BuilderLimits limits = course.evaluator().build().limits();
        richness = new Scale(
                1 / (ROOM * Figures.FAR_LEAN * limits.lambdaHigh()), ROOM / (Figures.FAR_RICH * limits.lambdaLow()));
        basis = Basis.of(DEGREE, RICHNESS, enthalpy.high() > enthalpy.low());
        outputs = Probe.MARGINS + probe.keys().size();
        coefficients = fit(probe);
        columns = new Array2DRowRealMatrix(coefficients, false).transpose().getData();
    }

    private static double enthalpy(double temperature) {
        return NitrousOxide.saturatedLiquid(temperature).enthalpy();
    }

    private static boolean answers(Course course, Probe probe, double rpm, double plenum, Reach reach) {
        try {
            course.evaluator().at(course.conditions(), rpm, Demand.boost(plenum));
            double little = reach.nitrous().low();
            probe.evaluate(rpm, plenum, reach.temperature().low(), little, little / 6);
            return true;
        } catch (OutsideMapException outside) {
            return false;
        } catch (IllegalArgumentException refused) {
            return true;
        }
    }

    /** Nitrous per pressure beyond which the charge is too cold for the models; half of the air at most. */
    private static double coldest(Course course, Probe probe, double rpm, double plenum) {
        double air = course.evaluator()
                .at(course.conditions(), rpm, Demand.boost(plenum))
                .charge()
                .mixture()
                .dryAir();
        double low = 0;
        double high = air;
        for (int i = 0; i < 30; i++) {
            double middle = 0.5 * (low + high);
            if (warm(probe, rpm, plenum, course.conditions().bottleLiquid().temperature(), middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low / plenum;
    }

    private static boolean warm(Probe probe, double rpm, double plenum, double bottle, double nitrous) {
        try {
            return probe.evaluate(rpm, plenum, bottle, nitrous, nitrous / 6)
                            .charge()
                            .temperature()
                    > COLDEST_FITTED;
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    /** Richness of two flows at a plenum pressure: a coordinate near 1/lambda in which the fitted range has straight edges. */
    double richness(double plenum, double nitrousFlow, double fuelFlow) {
        return (demand * plenum + fuelDemand * fuelFlow)
                / (oxygen * plenum + Oxidisers.OXYGEN_IN_NITROUS_OXIDE * nitrousFlow);
    }

    /** The stretched richness is {@code offset + slope fuel}: the offset. */
    double richOffset(double plenum, double nitrousFlow) {
        return richness.to(richness(plenum, nitrousFlow, 0));
    }

    /** The slope, per kg/s. */
    double richSlope(double plenum, double nitrousFlow) {
        return richness.slope() * fuelDemand / (oxygen * plenum + Oxidisers.OXYGEN_IN_NITROUS_OXIDE * nitrousFlow);
    }

    private double fuelFor(double plenum, double nitrousFlow, double rich) {
        return (rich * (oxygen * plenum + Oxidisers.OXYGEN_IN_NITROUS_OXIDE * nitrousFlow) - demand * plenum)
                / fuelDemand;
    }

    private double[][] fit(Probe probe) {
        List<double[]> places = new ArrayList<>();
        List<double[]> numbers = new ArrayList<>();
        SobolSequenceGenerator points = new SobolSequenceGenerator(4);
        points.skipTo(64);
        int wanted = SAMPLES_PER_TERM * basis.size();
        for (int tried = 0; places.size() < wanted && tried < 6 * wanted; tried++) {
            double[] u = points.nextVector();
            for (int i = 0; i < u.length; i++) {
                u[i] = Math.cos(Math.PI * u[i]);
            }
            sample(probe, u, places, numbers);
        }
        if (places.size() < 2 * basis.size()) {
            throw new StudyException("Only " + places.size() + " operating points at " + rpm
                    + " rpm lie inside what the models cover; narrow the jet axes towards mixtures that burn.");
        }
        double[][] solved = solve(places, numbers);
        check(probe, solved);
        return solved;
    }

    private void sample(Probe probe, double[] x, List<double[]> places, List<double[]> numbers) {
        double p = pressure.from(x[0]);
        double bottle = temperature.from(x[1]);
        double flow = nitrous.from(x[2]) * p;
        double fuel = fuelFor(p, flow, richness.from(x[3]));
        if (fuel < 0) {
            return;
        }
        try {
            Evaluation point = probe.evaluate(rpm, p, bottle, flow, fuel);
            if (point.charge().temperature() > COLDEST_FITTED) {
                double xh = enthalpy.to(point.conditions().bottleLiquid().enthalpy());
                places.add(basis.at(x[0], xh, x[2], x[3]));
                numbers.add(probe.numbers(point));
            }
        } catch (IllegalArgumentException refused) {
            // beyond the models: the table is not asked there either, see TaperBranch and RowKernel
            return;
        }
    }

    private double[][] solve(List<double[]> places, List<double[]> numbers) {
        RealMatrix values = new Array2DRowRealMatrix(numbers.toArray(double[][]::new), false);
        RealMatrix terms = new Array2DRowRealMatrix(places.toArray(double[][]::new), false);
        double[][] solved = new QRDecomposition(terms).getSolver().solve(values).getData();
        for (int k = Probe.MARGINS; k < outputs; k++) {
            if (java.util.Arrays.stream(values.getColumn(k)).max().orElse(0) > 1) {
                refit(k, terms, values.getColumn(k), solved);
            }
        }
        return solved;
    }

    /** Margins that grow without bound are fitted with weights, so that they are right where they are small. */
    private static void refit(int k, RealMatrix terms, double[] values, double[][] solved) {
        double[][] weighted = terms.getData();
        double[] right = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            double weight = 1 / (1 + Math.pow(values[i] / EASY, 2));
            right[i] = weight * values[i];
            for (int t = 0; t < weighted[i].length; t++) {
                weighted[i][t] *= weight;
            }
        }
        double[] column = new QRDecomposition(new Array2DRowRealMatrix(weighted, false))
                .getSolver()
                .solve(new org.hipparchus.linear.ArrayRealVector(right, false))
                .toArray();
        for (int t = 0; t < column.length; t++) {
            solved[t][k] = column[t];
        }
    }

    private void check(Probe probe, double[][] solved) {
        SplittableRandom random = new SplittableRandom(Math.round(rpm));
        List<double[]> places = new ArrayList<>();
        List<double[]> numbers = new ArrayList<>();
        for (int tried = 0; places.size() < CHECKS && tried < 6 * CHECKS; tried++) {
            double[] x = new double[4];
            for (int i = 0; i < x.length; i++) {
                x[i] = random.nextDouble(-1, 1);
            }
            sample(probe, x, places, numbers);
        }
        for (int i = 0; i < places.size(); i++) {
            powerError = Math.max(powerError, miss(places.get(i), numbers.get(i), solved, Probe.POWER));
            lambdaError = Math.max(lambdaError, miss(places.get(i), numbers.get(i), solved, Probe.LAMBDA));
        }
    }

    private static double miss(double[] terms, double[] exact, double[][] solved, int output) {
        double sum = 0;
        for (int t = 0; t < terms.length; t++) {
            sum += terms[t] * solved[t][output];
        }
        return Math.abs(sum / exact[output] - 1);
    }

    /** Puts a plenum pressure in: for each output one number for each group of the basis. */
    double[][] atPressure(double plenum) {
        double x = pressure.to(plenum);
        double[][] rows = new double[outputs][basis.groups.length];
        for (int k = 0; k < outputs; k++) {
            for (int g = 0; g < basis.groups.length; g++) {
                rows[k][g] = basis.group(g, columns[k], x);
            }
        }
        return rows;
    }

    /** Puts enthalpy and nitrous flow in as well: what each group is multiplied by. */
    void factors(double plenum, double h, double nitrousFlow, double[] to) {
        basis.factors(enthalpy.to(h), nitrous.to(nitrousFlow / plenum), to);
    }

    /** One output at one pressure, as powers of the stretched richness. */
    void powers(int k, double plenum, double[] factors, double[] to) {
        basis.gather(columns[k], pressure.to(plenum), factors, to);
    }
}
