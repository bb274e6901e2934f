package org.shotledger.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Limit;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;

/**
 * What the fuel circuits pass at one boost. The square of a flow is all but a straight line over the fuel pressure (Bernoulli), so it
 * is tabulated there, for each fuel jet and boost reference ("hole") and each pressure behind the nozzles ("mouth").
 *
 * @param mouth number of the mouth of each site
 * @param pressures nodes of the fuel pressure, Pa above {@link #LOWEST}
 * @param squared square of the nitrous fuel flow, (kg/s)^2, by hole; in each by mouth and node
 * @param pump least margin of the nitrous fuel pump, by hole and node
 * @param fixed the closest limit that does not know the pressure, by hole
 * @param cell share of the fuel cell that a flow of 1 kg/s uses, by mouth
 */
@SuppressWarnings("ArrayRecordComponent") // read only and never compared
record FuelSide(int[] mouth, Lattice pressures, double[][] squared, double[][] pump, Closest[] fixed, double[] cell) {
    /** Range of what a regulator can be set to, Pa: that of {@link org.shotledger.supply.Regulator}. */
    static final double LOWEST = 0.5e5;

    /** Highest fuel pressure that is tabulated, Pa: our choice, above usual regulators. */
    private static final double HIGHEST = 10e5;
    /** Distance of the nodes, Pa: our choice; the differences from exact flows are below a millionth. */
    private static final double STEP = 0.25e5;

    /** The pressure behind the nozzles in one weather. */
    private record Mouth(Case weather, double plenum) {}

    static FuelSide of(Space space, Names names, List<Site> sites, Setup engine) {
        List<Double> bases = space.axes().get(Axis.FUEL_PRESSURE);
        Lattice pressures = Lattice.over(STEP, Collections.min(bases) - LOWEST, Collections.max(bases) - LOWEST, (int)
                Math.round((HIGHEST - LOWEST) / STEP));
        List<Mouth> all = sites.stream()
                .map(site -> new Mouth(site.at(), site.plenum(engine)))
                .toList();
        List<Mouth> mouths = all.stream().distinct().toList();
        int jets = space.count(Axis.FUEL_JET);
        int holes = jets * space.count(Axis.BOOST_REFERENCE);
        int nodes = pressures.count();
        FuelSide side = new FuelSide(
                all.stream().mapToInt(mouths::indexOf).toArray(),
                pressures,
                new double[holes][mouths.size() * nodes],
                new double[holes][nodes],
                new Closest[holes],
                mouths.stream()
                        .mapToDouble(one -> cell(space.plan(), one.weather))
                        .toArray());
        List<List<PointModel>> models = new ArrayList<>();
        for (double reference : space.axes().get(Axis.BOOST_REFERENCE)) {
            for (int node = 0; node < nodes; node++) {
                Setup setup = regulated(engine, LOWEST + pressures.value(node), reference);
                models.add(mouths.stream()
                        .map(one -> PointModel.of(
                                space.plan().car(), setup, one.weather, NitrousOxide.saturatedLiquid(Engine.COOL)))
                        .toList());
            }
        }
        IntStream.range(0, holes).parallel().forEach(hole -> {
            double bore = space.axes().get(Axis.FUEL_JET).get(hole % jets);
            side.fixed[hole] = fixed(space.plan(), names, bore);
            for (int node = 0; node < nodes; node++) {
                side.fill(space.plan().car(), mouths, models.get(hole / jets * nodes + node), bore, hole, node);
            }
        });
        return side;
    }

    /** On the main rail the setup has no regulator to change. */
    private static Setup regulated(Setup engine, double base, double reference) {
        Setup open = engine.withoutJets();
        return engine.ownRegulator().isEmpty()
                ? open
                : Axis.BOOST_REFERENCE.set(Axis.FUEL_PRESSURE.set(open, base), reference);
    }

    private void fill(Car car, List<Mouth> mouths, List<PointModel> models, double bore, int hole, int node) {
        double least = Double.POSITIVE_INFINITY;
        for (int m = 0; m < mouths.size(); m++) {
            FuelFlow fuel = models.get(m).nitrousFuel(mouths.get(m).plenum, bore);
            squared[hole][m * pressures.count() + node] = fuel.massFlow() * fuel.massFlow();
            if (!car.nitrous().fuel().onMainRail()) {
                double capacity = fuel.pumpCapacity() * (1 - car.limits().pumpReserve());
                least = Math.min(least, 1 - fuel.massFlow() / capacity);
            }
        }
        pump[hole][node] = least;
    }

    /** The least and largest nitrous fuel flow of all circuits, kg/s: those of the ends of the fuel pressure. */
    DoubleSummaryStatistics flows(Space space) {
        List<Double> bases = space.axes().get(Axis.FUEL_PRESSURE);
        DoubleSummaryStatistics flows = new DoubleSummaryStatistics();
        for (double base : List.of(Collections.min(bases), Collections.max(bases))) {
            double place = pressures.place(base - LOWEST);
            double[] weight = pressures.weights(place);
            for (double[] hole : squared) {
                for (int at = pressures.start(place); at < hole.length; at += pressures.count()) {
                    flows.accept(Math.sqrt(Math.max(0, Lattice.at(hole, at, weight))));
                }
            }
        }
        return flows;
    }

    /** The limits on sizes alone: proportional to the area of the hole. */
    private static Closest fixed(Plan plan, Names names, double bore) {
        double old = plan.setup().jets().orElseThrow().fuelBore();
        Closest closest = Closest.NONE;
        for (String key : List.of("fuel-solenoid", "fuel-passage")) {
            Optional<Limit> limit = plan.stated().limits().find(key);
            if (limit.isPresent()) {
                double share = limit.get().value() / limit.get().bound();
                closest = closest.or(1 - share * bore * bore / (old * old), names.of(key));
            }
        }
        return closest;
    }

    /** The plan's share of the cell over its largest flow, in the worst of the cases that have a weather. */
    private static double cell(Plan plan, Case weather) {
        ToDoubleFunction<Outcome> flow = outcome -> outcome.armed().stream()
                .map(OperatingPoint::nitrousFuel)
                .mapToDouble(FuelFlow::massFlow)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        return plan.outcomes().stream()
                .filter(outcome -> Site.weather(outcome.at()).equals(weather))
                .mapToDouble(outcome -> outcome.limits()
                        .find("fuel-cell")
                        .map(limit -> limit.value() / limit.bound() / flow.applyAsDouble(outcome))
                        .orElse(0.0))
                .max()
                .orElse(0);
    }
}
