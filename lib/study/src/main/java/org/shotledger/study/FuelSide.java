package org.shotledger.study;

import java.util.List;
import java.util.Optional;
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
import org.shotledger.study.BottleSide.Closest;

/**
 * What every fuel circuit (jet, pressure, boost reference) passes at one boost.
 *
 * @param flow nitrous fuel, kg/s, by site and circuit
 * @param margin least margin of the limits of the circuit, by circuit
 * @param limit number of the limit that has it, by circuit
 * @param at number of the case in which it is, by circuit
 */
@SuppressWarnings("ArrayRecordComponent") // read only and never compared
record FuelSide(double[][] flow, double[] margin, int[] limit, int[] at) {

    static FuelSide of(Space space, Names names, List<Site> sites, Setup engine) {
        int circuits = space.count(Axis.FUEL_JET) * space.count(Axis.FUEL_PRESSURE) * space.count(Axis.BOOST_REFERENCE);
        FuelSide side = new FuelSide(
                new double[sites.size()][circuits], new double[circuits], new int[circuits], new int[circuits]);
        // the last axes of the space go round first: its first setups differ in nothing but the circuit
        IntStream.range(0, circuits)
                .parallel()
                .forEach(k -> side.fill(space.plan(), names, sites, engine, space.setup(k), k));
        return side;
    }

    private void fill(Plan plan, Names names, List<Site> sites, Setup engine, Setup circuit, int k) {
        Car car = plan.car();
        Setup setup = circuit.ownRegulator()
                .map(engine::withNitrousRegulator)
                .orElse(engine)
                .withoutJets();
        double bore = circuit.jets().orElseThrow().fuelBore();
        Closest closest = new Closest();
        List<Case> cases = plan.job().cases();
        for (int i = 0; i < cases.size(); i++) {
            PointModel model = PointModel.of(car, setup, cases.get(i), NitrousOxide.saturatedLiquid(Engine.COOL));
            double most = 0;
            for (int s = 0; s < sites.size(); s++) {
                if (!sites.get(s).at().equals(Site.weather(cases.get(i)))) {
                    continue;
                }
                FuelFlow fuel = model.nitrousFuel(sites.get(s).plenum(engine), bore);
                flow[s][k] = fuel.massFlow();
                most = Math.max(most, fuel.massFlow());
                if (!car.nitrous().fuel().onMainRail()) {
                    double capacity = fuel.pumpCapacity() * (1 - car.limits().pumpReserve());
                    closest.offer(1 - fuel.massFlow() / capacity, names.of("kit-pump"), i);
                }
            }
            scaled(plan.outcomes().get(i), "fuel-cell", names, closest, i, volume -> volume.most(), most);
        }
        for (String hole : List.of("fuel-solenoid", "fuel-passage")) {
            scaled(plan.stated(), hole, names, closest, 0, old -> old.hole(plan), bore * bore);
        }
        margin[k] = closest.margin;
        limit[k] = closest.limit;
        at[k] = closest.at;
    }

    /** What the values of limits known of the plan are proportional to. */
    private record Old(Outcome outcome) {
        double most() {
            return outcome.armed().stream()
                    .map(OperatingPoint::nitrousFuel)
                    .mapToDouble(FuelFlow::massFlow)
                    .max()
                    .orElse(Double.NaN);
        }

        double hole(Plan plan) {
            double bore = plan.setup().jets().orElseThrow().fuelBore();
            return bore * bore;
        }
    }

    /** A limit of the plan whose value is proportional to the fuel of all passes, or to the area of the hole. */
    private static void scaled(
            Outcome outcome,
            String key,
            Names names,
            Closest closest,
            int at,
            java.util.function.ToDoubleFunction<Old> basis,
            double now) {
        Optional<Limit> limit = outcome.limits().find(key);
        limit.ifPresent(old -> closest.offer(
                1 - old.value() * now / basis.applyAsDouble(new Old(outcome)) / old.bound(), names.of(key), at));
    }
}
