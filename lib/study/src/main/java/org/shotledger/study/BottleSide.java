package org.shotledger.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.BottleOutcome;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Limit;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * What bottle and nitrous jet give, by bottle temperature and jet ("row"), worked out once each with the boost of the plan: the flow
 * is choked, or so nearly that boost does not tell. Flow and enthalpy have one value for each case.
 */
record BottleSide(List<Row> rows) {
    /** Limits that follow from the fuel circuit and are held by {@link FuelSide}. */
    static final List<String> FUEL_KEYS = List.of("fuel-cell", "fuel-solenoid", "fuel-passage");

    /**
     * @param flow nitrous oxide by case, kg/s
     * @param enthalpy of the liquid at the siphon by case, J/kg
     * @param closest of the limits of bottle and feed
     */
    @SuppressWarnings("ArrayRecordComponent") // read only and never compared
    record Row(double[] flow, double[] enthalpy, Closest closest) {}

    /** What a row depends on. */
    private record Filled(Setup setup) {}

    static BottleSide of(Space space, Names names) {
        int jets = space.count(Axis.NITROUS_JET);
        int temperatures = space.count(Axis.BOTTLE_TEMPERATURE);
        Row[] rows = new Row[temperatures * jets];
        IntStream.range(0, jets).parallel().forEach(jet -> {
            Setup setup = Axis.NITROUS_JET.set(
                    space.plan().setup(), space.axes().get(Axis.NITROUS_JET).get(jet));
            // what a jet passes is the same however warm the bottle was
            Bottles bottles = new Bottles();
            IntStream.range(0, temperatures).parallel().forEach(t -> {
                double warm = space.axes().get(Axis.BOTTLE_TEMPERATURE).get(t);
                Setup filled = Axis.BOTTLE_TEMPERATURE.set(setup, warm);
                rows[t * jets + jet] = space.plan()
                        .known()
                        .of(new Filled(filled), () -> row(space, names, filled, bottles.withoutDays()));
            });
        });
        return new BottleSide(List.of(rows));
    }

    private static Row row(Space space, Names names, Setup setup, Bottles bottles) {
        Car car = space.plan().car();
        List<Case> cases = space.plan().job().cases();
        Closest closest = Closest.NONE;
        double[] flow = new double[cases.size()];
        double[] enthalpy = new double[cases.size()];
        double rpm = setup.arming().rpmHigh();
        Map<List<Object>, FeedFlow> feeds = new HashMap<>();
        for (int i = 0; i < flow.length; i++) {
            Case at = cases.get(i);
            double factor = at.factors().of(Factor.NITROUS_FLOW);
            BottleOutcome bottle = Evaluate.bottle(bottles, car, setup, at).orElseThrow();
            closest = closest.or(closest(bottle, names));
            FluidState liquid = liquid(car, setup, at.bottle(), bottle);
            double ambient = at.air().pressure();
            // a case that differs in fuel or voltage alone passes the same nitrous
            FeedFlow feed = feeds.computeIfAbsent(
                    List.of(factor, ambient, liquid.temperature(), liquid.pressure(), liquid.enthalpy()),
                    any -> PointModel.of(car, setup, at, liquid)
                            .feed(ambient + setup.boost().armed().at(rpm)));
            flow[i] = feed.massFlow();
            enthalpy[i] = liquid.enthalpy();
            double loss = 1 - feed.jetInlet().pressure() / liquid.pressure();
            closest = closest.or(1 - loss / car.limits().feedLoss(), names.of("feed-loss"));
        }
        return new Row(flow, enthalpy, closest);
    }

    private static FluidState liquid(Car car, Setup setup, BottleState state, BottleOutcome bottle) {
        return switch (state.moment()) {
            case GIVEN -> NitrousOxide.saturatedLiquid(state.temperature());
            case FIRST_OPENING ->
                car.bottle()
                        .vessel()
                        .charged(setup.bottle().charge(), setup.bottle().startTemperature())
                        .outlet();
            case END_OF_LAST_PASS -> bottle.end();
        };
    }

    private static Closest closest(BottleOutcome bottle, Names names) {
        Closest closest = Closest.NONE;
        for (Limit limit : bottle.limits()) {
            if (!FUEL_KEYS.contains(limit.key())) {
                closest = closest.or(limit.relativeMargin(), names.of(limit.key()));
            }
        }
        return closest;
    }
}
