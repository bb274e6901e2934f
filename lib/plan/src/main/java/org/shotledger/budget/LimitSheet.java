package org.shotledger.budget;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.boost.MapPoint;
import org.shotledger.build.Build;
import org.shotledger.build.BuilderLimits;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.units.QuantityKind;

/** Holds one operating point against everything the builder allows. */
public final class LimitSheet {
    /** Margin below which a kept limit is called tight: common practice, no source. */
    private static final double CAUTION = 0.05;

    /** Coldest mixed charge in which the fuels still burn evenly, K: common practice, no source. */
    private static final double COLDEST_CHARGE = 220;

    private LimitSheet() {}

    /**
     * The limits that concern an operating point. Those of the wet kit stand in the list only while the nitrous is on.
     *
     * @param build the build
     * @param point an operating point of it
     * @return the limits; how much power is left to each is not known here and is NaN
     */
    public static Limits of(Build build, Evaluation point) {
        List<Limit> limits = new ArrayList<>();
        engine(build.limits(), build, point, limits);
        boost(build, point, limits);
        supply(build.limits(), point, limits);
        if (point.demand().jets().isPresent()) {
            limits.add(atLeast(
                    "charge-cold",
                    "temperature of the mixed charge",
                    QuantityKind.TEMPERATURE,
                    point.charge().temperature(),
                    COLDEST_CHARGE,
                    "so cold that fuel stays liquid: uneven mixture, and outside what the models cover"));
            double bottle = point.conditions().bottleLiquid().pressure();
            double inlet = point.nitrous().jetInlet().pressure();
            KitLimits.add(
                    build,
                    bottle,
                    inlet,
                    point.nitrousFuel(),
                    point.demand().jets().get(),
                    limits);
        }
        return new Limits(limits);
    }

    /**
     * The limits that concern bottle, fuel pump and solenoids of the wet kit alone; they do not ask what the engine does.
     *
     * @param build the build
     * @param bottlePressure pressure of the bottle's liquid, Pa absolute
     * @param inletPressure pressure before the nitrous jets, Pa absolute
     * @param fuel what the fuel circuit of the kit passes
     * @param pair the jets of each nozzle
     * @return the limits, a part of those of an operating point with the nitrous on
     */
    public static Limits ofKit(Build build, double bottlePressure, double inletPressure, FuelFlow fuel, JetPair pair) {
        List<Limit> limits = new ArrayList<>();
        KitLimits.add(build, bottlePressure, inletPressure, fuel, pair, limits);
        return new Limits(limits);
    }

    private static void engine(BuilderLimits allowed, Build build, Evaluation at, List<Limit> to) {
        to.add(atMost(
                "peak-pressure",
                "peak cylinder pressure",
                QuantityKind.ABSOLUTE_PRESSURE,
                at.cylinder().peakPressure(),
                allowed.peakPressure(),
                "head gasket, rings and rods fail"));
        to.add(atMost(
                "crank-torque",
                "crankshaft torque",
                QuantityKind.TORQUE,
                at.crankTorque(),
                allowed.crankTorque(),
                "rods, crankshaft and driveline are overloaded"));
        to.add(atMost(
                "piston-speed",
                "mean piston speed",
                QuantityKind.SPEED,
                build.engine().meanPistonSpeed(at.rpm()),
                allowed.pistonSpeed(),
                "rod bolts and pistons are overloaded"));
        to.add(atMost(
                "lambda-lean",
                "mixture, lean side",
                QuantityKind.RATIO,
                at.lambda(),
                allowed.lambdaHigh(),
                "the mixture is too lean: knock, melted pistons"));
        to.add(atLeast(
                "lambda-rich",
                "mixture, rich side",
                QuantityKind.RATIO,
                at.lambda(),
                allowed.lambdaLow(),
                "the mixture is too rich: misfire, washed bores"));
    }

    private static void boost(Build build, Evaluation at, List<Limit> to) {
        MapPoint place = at.compressor().place();
        to.add(atMost(
                "compressor-choke",
                "compressor flow, choke side",
                QuantityKind.MASS_FLOW,
                place.correctedFlow(),
                place.chokeFlow() * (1 - build.limits().chokeMargin()),
                "the compressor chokes: heat without boost"));
        to.add(atLeast(
                "compressor-surge",
                "compressor flow, surge side",
                QuantityKind.MASS_FLOW,
                place.correctedFlow(),
                place.surgeFlow() / (1 - build.limits().surgeMargin()),
                "the compressor surges: thrust bearing damage"));
        to.add(atMost(
                "turbo-speed",
                "turbocharger speed",
                QuantityKind.ROTATION,
                at.compressor().rpm(),
                build.turbo().map().maximumRpm(),
                "the wheel may burst"));
        to.add(atMost(
                "boost-ceiling",
                "boost",
                QuantityKind.GAUGE_PRESSURE,
                at.gaugePressure(),
                build.turbo().boostCeiling(),
                "the builder's boost ceiling is passed"));
        to.add(atMost(
                "turbine-flow",
                "exhaust the turbine must swallow",
                QuantityKind.MASS_FLOW,
                at.shaft().turbineFlow(),
                at.charge().mixture().totalFlow(),
                "the turbine cannot drive the compressor: the boost is not reached"));
    }

    private static void supply(BuilderLimits allowed, Evaluation at, List<Limit> to) {
        to.add(atMost(
                "injector-duty",
                "main injector duty",
                QuantityKind.FRACTION,
                at.main().duty(),
                allowed.injectorDuty(),
                "the injectors cannot pass the fuel: the mixture goes lean"));
        to.add(atMost(
                "main-pump",
                "main fuel pumps",
                QuantityKind.MASS_FLOW,
                at.main().massFlow(),
                at.main().pumpCapacity() * (1 - allowed.pumpReserve()),
                "rail pressure falls: the mixture goes lean"));
    }

    static Limit atMost(String key, String name, QuantityKind kind, double value, double bound, String consequence) {
        return new Limit(
                key, name, kind, value, bound, Side.AT_MOST, CAUTION, consequence, Standing.ASSUMED, Double.NaN);
    }

    static Limit atLeast(String key, String name, QuantityKind kind, double value, double bound, String consequence) {
        return new Limit(
                key, name, kind, value, bound, Side.AT_LEAST, CAUTION, consequence, Standing.ASSUMED, Double.NaN);
    }
}
