package org.shotledger.study;

import java.util.List;
import java.util.stream.IntStream;
import org.shotledger.car.Car;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointLimits;
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
     * @param margin least margin of the limits of bottle and feed
     * @param limit number of the limit that has it
     * @param at number of the case in which it is
     */
    @SuppressWarnings("ArrayRecordComponent") // read only and never compared
    record Row(double[] flow, double[] enthalpy, double margin, int limit, int at) {}

    static BottleSide of(Space space, Names names) {
        int jets = space.count(Axis.NITROUS_JET);
        int rows = space.count(Axis.BOTTLE_TEMPERATURE) * jets;
        return new BottleSide(IntStream.range(0, rows)
                .parallel()
                .mapToObj(row -> {
                    Setup warm = Axis.BOTTLE_TEMPERATURE.set(
                            space.plan().setup(),
                            space.axes().get(Axis.BOTTLE_TEMPERATURE).get(row / jets));
                    return row(
                            space,
                            names,
                            Axis.NITROUS_JET.set(
                                    warm, space.axes().get(Axis.NITROUS_JET).get(row % jets)));
                })
                .toList());
    }

    private static Row row(Space space, Names names, Setup setup) {
        Car car = space.plan().car();
        List<Case> cases = space.plan().job().cases();
        Closest closest = new Closest();
        double[] flow = new double[cases.size()];
        double[] enthalpy = new double[cases.size()];
        double rpm = setup.arming().rpmHigh();
        Outcome day = null;
        for (int i = 0; i < flow.length; i++) {
            Case at = cases.get(i);
            if (day == null
                    || day.at().factors().of(Factor.NITROUS_FLOW)
                            != at.factors().of(Factor.NITROUS_FLOW)) {
                day = Evaluate.of(car, setup, at.withBottle(BottleState.LAST));
                offer(day, names, closest, i);
            }
            FluidState liquid = liquid(car, setup, at.bottle(), day);
            FeedFlow feed = PointModel.of(car, setup, at, liquid)
                    .feed(at.air().pressure() + setup.boost().armed().at(rpm));
            flow[i] = feed.massFlow();
            enthalpy[i] = liquid.enthalpy();
            double loss = 1 - feed.jetInlet().pressure() / liquid.pressure();
            closest.offer(1 - loss / car.limits().feedLoss(), names.of("feed-loss"), i);
        }
        return new Row(flow, enthalpy, closest.margin, closest.limit, closest.at);
    }

    private static FluidState liquid(Car car, Setup setup, BottleState state, Outcome day) {
        return switch (state.moment()) {
            case GIVEN -> NitrousOxide.saturatedLiquid(state.temperature());
            case FIRST_OPENING ->
                car.bottle()
                        .vessel()
                        .charged(setup.bottle().charge(), setup.bottle().startTemperature())
                        .outlet();
            case END_OF_LAST_PASS -> day.strongest().map(OperatingPoint::bottle).orElseThrow();
        };
    }

    private static void offer(Outcome day, Names names, Closest closest, int at) {
        List<Limit> limits = day.limits().all();
        for (Limit limit : limits) {
            int number = names.of(limit.key());
            if (number >= PointLimits.count() && !FUEL_KEYS.contains(limit.key())) {
                closest.offer(limit.relativeMargin(), number, at);
            }
        }
    }

    /** The least of margins offered, and whose it is. */
    static final class Closest {
        double margin = Double.POSITIVE_INFINITY;
        int limit;
        int at;

        void offer(double other, int which, int where) {
            if (other < margin) {
                margin = other;
                limit = which;
                at = where;
            }
        }
    }
}
