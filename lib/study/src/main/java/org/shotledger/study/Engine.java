package org.shotledger.study;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.NoAnswerException;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointLimits;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
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

    /**
     * One engine for each spark; what they breathe is worked out once for all of them.
     *
     * @param setup mixture and boost; all else as in the plan
     * @param retards sparks later than the builder's own, crank degrees
     */
    static List<Engine> of(
            Plan plan,
            Names names,
            List<Site> sites,
            Setup setup,
            List<Double> retards,
            Lattice nitrous,
            Lattice fuel) {
        List<FluidState> liquids = List.of(NitrousOxide.saturatedLiquid(COOL), NitrousOxide.saturatedLiquid(WARM));
        double[] enthalpy = liquids.stream().mapToDouble(FluidState::enthalpy).toArray();
        int half = nitrous.count() * fuel.count() * CHANNELS;
        List<Engine> engines = retards.stream()
                .map(any -> new Engine(nitrous, fuel, enthalpy, new double[sites.size()][2 * half]))
                .toList();
        Tables tables = new Tables(plan, names, setup, retards, engines);
        IntStream.range(0, sites.size() * 2)
                .parallel()
                .forEach(i -> tables.fill(i / 2, sites.get(i / 2), liquids.get(i % 2), i % 2 * half));
        return engines;
    }

    /** What the exact values at one site depend on beside the flows. */
    private record AtSite(Setup setup, Site site, FluidState liquid, List<Double> retards) {}

    /** Both flows of a node, kg/s. */
    private record Flows(double nitrous, double fuel) {}

    /** The engines of some sparks while their tables are being filled. */
    private record Tables(Plan plan, Names names, Setup setup, List<Double> retards, List<Engine> engines) {

        /** One site at one enthalpy, from an offset on. */
        void fill(int number, Site site, FluidState liquid, int offset) {
            Lattice nitrous = engines.get(0).nitrous;
            Lattice fuel = engines.get(0).fuel;
            PointModel model = PointModel.of(plan.car(), setup.withoutJets(), site.at(), liquid);
            OperatingPoint like = plan.outcomes().stream()
                    .flatMap(outcome -> outcome.withNitrous().stream())
                    .findFirst()
                    .orElseThrow();
            Map<Flows, List<double[]>> known =
                    plan.known().of(new AtSite(setup, site, liquid, retards), ConcurrentHashMap::new);
            double rail = setup.nitrousRegulator().railPressure(site.at().air().pressure(), site.plenum(setup));
            for (int n = 0; n < nitrous.count(); n++) {
                FeedFlow feed =
                        like.nitrous().times(nitrous.value(n) / like.nitrous().massFlow());
                for (int f = 0; f < fuel.count(); f++) {
                    FuelFlow extra = new FuelFlow(fuel.value(f), rail, rail, Double.POSITIVE_INFINITY, false);
                    List<double[]> nodes = known.computeIfAbsent(
                            new Flows(nitrous.value(n), fuel.value(f)), any -> bySpark(model, site, feed, extra));
                    for (int e = 0; e < retards.size(); e++) {
                        for (int c = 0; c < CHANNELS; c++) {
                            engines.get(e).values[number][offset + (n * CHANNELS + c) * fuel.count() + f] =
                                    nodes.get(e)[c];
                        }
                    }
                }
            }
        }

        private List<double[]> bySpark(PointModel model, Site site, FeedFlow feed, FuelFlow extra) {
            DoubleFunction<double[]> channels;
            try {
                DoubleFunction<OperatingPoint> points =
                        model.bySpark(site.rpm(), site.plenum(setup), site.mode(), feed, extra);
                channels = retard -> channels(plan.car(), names, () -> points.apply(retard));
            } catch (NoAnswerException none) {
                channels = retard -> unanswered();
            }
            return retards.stream().map(channels::apply).toList();
        }
    }

    private static double[] unanswered() {
        double[] channels = new double[CHANNELS];
        Arrays.fill(channels, Double.NaN);
        return channels;
    }

    /** Everything at a node; NaN where the models have no answer. */
    private static double[] channels(Car car, Names names, Supplier<OperatingPoint> at) {
        try {
            OperatingPoint point = at.get();
            double[] channels = Arrays.copyOf(PointLimits.margins(car, point), CHANNELS);
            for (int i = 0; i < MARGINS; i++) {
                channels[i] = Math.max(-FAR, Math.min(FAR, channels[i]));
            }
            // these two follow from bottle and circuit, which hold them
            channels[names.of("kit-pump")] = FAR;
            channels[names.of("feed-loss")] = FAR;
            channels[POWER] = point.mode() == Mode.NITROUS ? point.wheelPower() : 0;
            channels[LAMBDA] = point.lambda();
            return channels;
        } catch (NoAnswerException none) {
            return unanswered();
        }
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
