package org.shotledger.evaluate;

import static org.shotledger.evaluate.PointRule.atLeast;
import static org.shotledger.evaluate.PointRule.atMost;
import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.SPEED;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TORQUE;

import java.util.List;
import org.shotledger.engine.ColdCharge;
import org.shotledger.nitrous.NozzlePosition;

/** Every limit that an operating point can break, in the order in which they are shown. The one place that lists them. */
final class PointRules {
    /** Share of the plenum pressure asked for that may be missing: our choice, about what a gauge tells. */
    private static final double BOOST_MISSING = 0.01;

    private static final List<PointRule> ENGINE = List.of(
            atMost(
                            "peak-pressure",
                            "peak cylinder pressure",
                            ABSOLUTE_PRESSURE,
                            "limits.peak-pressure",
                            "head gasket, rings and rods fail")
                    .value((car, p) -> p.cylinder().peakPressure())
                    .bound((car, p) -> car.limits().peakPressure()),
            atMost(
                            "crank-torque",
                            "crankshaft torque",
                            TORQUE,
                            "limits.crank-torque",
                            "rods, crankshaft and driveline are overloaded")
                    .value((car, p) -> p.crankTorque())
                    .bound((car, p) -> car.limits().crankTorque()),
            atMost(
                            "piston-speed",
                            "mean piston speed",
                            SPEED,
                            "limits.piston-speed",
                            "rod bolts and pistons are overloaded")
                    .value((car, p) -> car.engine().meanPistonSpeed(p.rpm()))
                    .bound((car, p) -> car.limits().pistonSpeed()),
            atMost(
                            "lambda-lean",
                            "mixture, lean side",
                            RATIO,
                            "limits.lambda-high",
                            "the mixture is too lean: knock, melted pistons")
                    .value((car, p) -> p.lambda())
                    .bound((car, p) -> car.limits().lambdaHigh()),
            atLeast(
                            "lambda-rich",
                            "mixture, rich side",
                            RATIO,
                            "limits.lambda-low",
                            "the mixture is too rich: misfire, washed bores")
                    .value((car, p) -> p.lambda())
                    .bound((car, p) -> car.limits().lambdaLow()),
            atMost(
                            "knock",
                            "knock against the base pull",
                            RATIO,
                            "",
                            "the end gas may ignite by itself: knock, broken ring lands; not validated against engine data with nitrous")
                    .value((car, p) -> p.cylinder().knock())
                    .bound((car, p) -> 1),
            atMost(
                            "exhaust-temperature",
                            "exhaust temperature before the turbine",
                            TEMPERATURE,
                            "limits.exhaust-temperature",
                            "turbine and exhaust valves are overheated")
                    .value((car, p) -> p.exhaustTemperature())
                    .bound((car, p) -> car.limits().exhaustTemperature()),
            atMost(
                            "throttle-ice",
                            "water vapour against what keeps no ice on the throttle",
                            RATIO,
                            "",
                            "ice on the throttle plate: it can stick open")
                    .value((car, p) -> ColdCharge.of(p.charge()).icing())
                    .bound((car, p) ->
                            car.nitrous().position() == NozzlePosition.BEFORE_THROTTLE ? 1 : Double.POSITIVE_INFINITY)
                    .withNitrousOnly());

    private static final List<PointRule> BOOST = List.of(
            atMost(
                            "compressor-choke",
                            "compressor flow, choke side",
                            MASS_FLOW,
                            "limits.choke-margin",
                            "the compressor chokes: heat without boost")
                    .value((car, p) -> p.compressor().place().correctedFlow())
                    .bound((car, p) -> p.compressor().place().chokeFlow()
                            * (1 - car.limits().chokeMargin())),
            atLeast(
                            "compressor-surge",
                            "compressor flow, surge side",
                            MASS_FLOW,
                            "limits.surge-margin",
                            "the compressor surges: thrust bearing damage")
                    .value((car, p) -> p.compressor().place().correctedFlow())
                    .bound((car, p) -> p.compressor().place().surgeFlow()
                            / (1 - car.limits().surgeMargin())),
            atMost("turbo-speed", "turbocharger speed", ROTATION, "turbo.compressor.max-speed", "the wheel may burst")
                    .value((car, p) -> p.compressor().rpm())
                    .bound((car, p) -> car.turbo().map().maximumRpm()),
            atMost(
                            "boost-ceiling",
                            "boost",
                            GAUGE_PRESSURE,
                            "turbo.boost-ceiling",
                            "the builder's boost ceiling is passed")
                    .value((car, p) -> p.gaugePressure())
                    .bound((car, p) -> car.turbo().boostCeiling()),
            atMost(
                            "turbine-flow",
                            "exhaust the turbine must swallow",
                            MASS_FLOW,
                            "turbo.turbine.effective-area",
                            "the turbine cannot drive the compressor: the boost is not reached")
                    .value((car, p) -> p.shaft().turbineFlow())
                    .bound((car, p) -> p.charge().mixture().totalFlow())
                    // without nitrous a turbocharger that is not up to speed gives less boost, and that is no fault
                    .withNitrousOnly(),
            atMost(
                            "boost-reached",
                            "boost missing with nitrous",
                            FRACTION,
                            "",
                            "the turbocharger cannot give the boost that is asked for: the figures are for less boost than is set")
                    .value((car, p) -> 1 - p.plenumPressure() / p.wanted())
                    .bound((car, p) -> BOOST_MISSING)
                    .withNitrousOnly());

    private static final List<PointRule> SUPPLY = List.of(
            atMost(
                            "injector-duty",
                            "main injector duty",
                            FRACTION,
                            "limits.injector-duty",
                            "the injectors cannot pass the fuel: the mixture goes lean")
                    .value((car, p) -> p.main().duty())
                    .bound((car, p) -> car.limits().injectorDuty()),
            atMost(
                            "main-pump",
                            "main fuel pumps",
                            MASS_FLOW,
                            "limits.pump-reserve",
                            "rail pressure falls: the mixture goes lean")
                    .value((car, p) -> p.main().pumped())
                    .bound((car, p) ->
                            p.main().pumpCapacity() * (1 - car.limits().pumpReserve())),
            atMost(
                            "kit-pump",
                            "nitrous fuel pump",
                            MASS_FLOW,
                            "limits.pump-reserve",
                            "nitrous fuel pressure falls: the mixture goes lean")
                    .value((car, p) -> p.nitrousFuel().massFlow())
                    .bound((car, p) -> car.nitrous().fuel().onMainRail()
                            ? Double.POSITIVE_INFINITY
                            : p.nitrousFuel().pumpCapacity() * (1 - car.limits().pumpReserve()))
                    .withNitrousOnly(),
            atMost(
                            "feed-loss",
                            "pressure lost before the nitrous jets",
                            FRACTION,
                            "limits.feed-loss",
                            "the lines, not the jets, set the flow; more of it boils before the jets")
                    .value((car, p) ->
                            1 - p.nitrous().jetInlet().pressure() / p.bottle().pressure())
                    .bound((car, p) -> car.limits().feedLoss())
                    .withNitrousOnly());

    static final List<PointRule> ALL = java.util.stream.Stream.of(ENGINE, BOOST, SUPPLY)
            .flatMap(List::stream)
            .toList();

    private PointRules() {}
}
