package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Setup;

/**
 * The engine with one mixture, spark and boost: at every site the margins of all limits of an operating point, the power and the
 * mixture, over nitrous flow, nitrous fuel flow and enthalpy of the nitrous oxide. The nodes are exact operating points.
 *
 * @param nitrous nodes of the nitrous flow, kg/s
 * @param fuel nodes of the nitrous fuel flow, kg/s
 * @param enthalpy of the two bottle temperatures between which a value is a straight line: it enters the charge by an energy balance
 * @param values by site; in each by enthalpy, nitrous node, channel and fuel node
 */
@SuppressWarnings("ArrayRecordComponent") // read only and never compared
record Engine(Lattice nitrous, Lattice fuel, double[] enthalpy, double[][] values) {
    /** Channels: margins first, then power at the wheels, W, and lambda. */
    static final int MARGINS = PointLimits.count();

    static final int POWER = MARGINS;
    static final int LAMBDA = MARGINS + 1;
    static final int CHANNELS = MARGINS + 2;
    /** Bottle temperatures of the nodes, K. */
    static final double COOL = 278;

    private static final double WARM = 303;
    /** Stands for a limit that concerns nothing here; below zero for one without a value. */
    static final double FAR = 1e3;

    static Engine of(Plan plan, Names names, List<Site> sites, Setup setup, Lattice nitrous, Lattice fuel) {
        List<FluidState> liquids = List.of(NitrousOxide.saturatedLiquid(COOL), NitrousOxide.saturatedLiquid(WARM));
        double[][] values = new double[sites.size()][];
        int nodes = nitrous.count() * fuel.count();
        IntStream.range(0, sites.size() * 2).parallel().forEach(i -> {
            double[] half = site(plan, names, sites.get(i / 2), setup, liquids.get(i % 2), nitrous, fuel);
            synchronized (values) {
                if (values[i / 2] == null) {
                    values[i / 2] = new double[2 * nodes * CHANNELS];
                }
            }
            System.arraycopy(half, 0, values[i / 2], i % 2 * half.length, half.length);
        });
        return new Engine(
                nitrous,
                fuel,
                liquids.stream().mapToDouble(FluidState::enthalpy).toArray(),
                values);
    }

    private static double[] site(
            Plan plan, Names names, Site site, Setup setup, FluidState liquid, Lattice nitrous, Lattice fuel) {
        Car car = plan.car();
        PointModel model = PointModel.of(car, setup.withoutJets(), site.at(), liquid);
        OperatingPoint like = plan.outcomes().stream()
                .flatMap(outcome -> outcome.withNitrous().stream())
                .findFirst()
                .orElseThrow();
        double rail = setup.nitrousRegulator().railPressure(site.at().air().pressure(), site.plenum(setup));
        double[] values = new double[nitrous.count() * fuel.count() * CHANNELS];
        for (int n = 0; n < nitrous.count(); n++) {
            double share = nitrous.value(n) / like.nitrous().massFlow();
            for (int f = 0; f < fuel.count(); f++) {
                FuelFlow extra = new FuelFlow(fuel.value(f), rail, rail, Double.POSITIVE_INFINITY, false);
                double[] channels = new double[CHANNELS];
                try {
                    fill(
                            channels,
                            car,
                            model.at(
                                    site.rpm(),
                                    site.plenum(setup),
                                    site.mode(),
                                    like.nitrous().times(share),
                                    extra));
                } catch (NoAnswerException none) {
                    Arrays.fill(channels, Double.NaN);
                }
                // these two follow from bottle and circuit, which hold them
                channels[names.of("kit-pump")] = FAR;
                channels[names.of("feed-loss")] = FAR;
                for (int c = 0; c < CHANNELS; c++) {
                    values[(n * CHANNELS + c) * fuel.count() + f] = channels[c];
                }
            }
        }
        return values;
    }

    private static void fill(double[] channels, Car car, OperatingPoint point) {
        double[] margins = PointLimits.margins(car, point);
        for (int i = 0; i < MARGINS; i++) {
            channels[i] = Math.max(-FAR, Math.min(FAR, margins[i]));
        }
        channels[POWER] = point.mode() == Mode.NITROUS ? point.wheelPower() : 0;
        channels[LAMBDA] = point.lambda();
    }

    /**
     * The table of a site at one flow and enthalpy of the nitrous oxide; where only the nodes on both sides of the flow are answered, the
     * straight line between them.
     *
     * @param flow kg/s
     * @param h enthalpy, J/kg
     * @param to by channel and fuel node
     */
    void at(int site, double flow, double h, double[] to) {
        double place = nitrous.place(flow);
        double warm = (h - enthalpy[0]) / (enthalpy[1] - enthalpy[0]);
        blend(values[site], nitrous.start(place), nitrous.weights(place), warm, to);
        if (IntStream.range(0, fuel.count()).anyMatch(f -> Double.isNaN(to[f]))) {
            int below = Math.min((int) place, nitrous.count() - 2);
            double[] line = new double[to.length];
            blend(values[site], below, new double[] {1 - (place - below), place - below}, warm, line);
            for (int i = 0; i < to.length; i++) {
                to[i] = Double.isNaN(to[i % fuel.count()]) ? line[i] : to[i];
            }
        }
    }

    private void blend(double[] from, int node, double[] w, double warm, double[] to) {
        Arrays.fill(to, 0);
        for (int half = 0; half < 2; half++) {
            for (int i = 0; i < w.length; i++) {
                double weight = w[i] * (half == 0 ? 1 - warm : warm);
                int at = (half * nitrous.count() + node + i) * to.length;
                for (int j = 0; j < to.length; j++) {
                    to[j] += weight * from[at + j];
                }
            }
        }
    }
}
