package org.shotledger.evaluate;

import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import org.shotledger.boost.Compressor;
import org.shotledger.boost.CompressorPoint;
import org.shotledger.boost.ExhaustGas;
import org.shotledger.boost.OutsideMapException;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.boost.Turbine;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.car.Injection;
import org.shotledger.car.Turbo;
import org.shotledger.engine.BackPressure;
import org.shotledger.engine.Charge;
import org.shotledger.engine.ChargeMixing;
import org.shotledger.engine.Cycle;
import org.shotledger.engine.CycleTrace;
import org.shotledger.engine.Intake;
import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.Power;
import org.shotledger.evaluate.OperatingPoint.CylinderLoad;
import org.shotledger.evaluate.OperatingPoint.MainFuel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.SharedRail;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * Evaluates operating points of a setup in a case at one state of the bottle. Pure.
 *
 * <p>Order of the reasoning: the nitrous flow follows from the bottle and the feed path; the nitrous fuel from regulator and
 * plenum; the air from speed-density with the charge mixed to one temperature, solved together with compressor and charge
 * cooler; the main fuel from the air; the work from the fuel-air cycle of that charge, its spark and what the engine reaches of it; the
 * exhaust from the closed cycle; the power from work, friction and pumping.
 */
public final class PointModel {
    /** Gas constant and heat-capacity ratio of rich exhaust gas near 1100 K (Heywood figs 4.13 to 4.18, from memory). */
    private static final double EXHAUST_GAS_CONSTANT = 290;

    private static final double EXHAUST_GAMMA = 1.30;
    /** Relative step of the air flow at which a point is settled. */
    private static final double FLOW_TOLERANCE = 1e-8;

    private static final int MOST_ROUNDS = 60;
    /** A pascal of the rail is a millionth of its drop and so half that of its flow. */
    private static final double RAIL_TOLERANCE = 1;
    /** Highest exhaust over plenum pressure that the back-pressure model takes. */
    private static final double HIGHEST_RATIO = 5;

    private final Car car;
    private final Setup setup;
    private final Case at;
    private final FuelStreams fuels;
    private final FluidState bottle;
    private final EngineModel model;
    private final CylinderModel cylinders;
    private final double highest;
    /** What the feed path passes against the highest plenum pressure; worked out when it is first asked for. */
    private volatile FeedFlow atHighest;

    private PointModel(Car car, Setup setup, Case at, FuelStreams fuels, FluidState bottle) {
        if (car.nitrous().fuel().onMainRail() != setup.ownRegulator().isEmpty()) {
            throw new IllegalArgumentException(
                    car.nitrous().fuel().onMainRail()
                            ? "The nitrous fuel of this car comes from the main rail, but the setup has a regulator of its own"
                                    + " for it; take it out of the setup."
                            : "The nitrous fuel of this car has a cell of its own, but the setup has no regulator for it; give"
                                    + " the setup one.");
        }
        this.car = car;
        this.setup = setup;
        this.at = at;
        this.fuels = fuels;
        this.bottle = bottle;
        this.model = car.model();
        this.cylinders = new CylinderModel(car, fuels);
        this.highest = at.air().pressure()
                + Math.max(setup.boost().armed().highest(), setup.boost().off().highest())
                + setup.boost().tolerance();
    }

    /**
     * The model of a setup in a case.
     *
     * @param car what is built
     * @param setup what is set
     * @param at what the world is
     * @param bottle state of the liquid at the bottle's siphon
     * @return the model
     */
    public static PointModel of(Car car, Setup setup, Case at, FluidState bottle) {
        return new PointModel(car, setup, at, car.fuels().with(at.ethanol()), bottle);
    }

    static PointModel of(Car car, FuelStreams fuels, Setup setup, Case at, FluidState bottle) {
        return new PointModel(car, setup, at, fuels, bottle);
    }

    /**
     * The same with the bottle in another state.
     *
     * @param other state of the liquid at the siphon
     * @return the changed model
     */
    public PointModel withBottle(FluidState other) {
        return new PointModel(car, setup, at, fuels, other);
    }

    /**
     * An operating point.
     *
     * @param rpm engine speed, rev/min, inside the volumetric-efficiency table
     * @param plenum plenum pressure, Pa absolute
     * @param mode what the engine is doing
     * @return the point
     * @throws NoAnswerException where the models have none
     */
    public OperatingPoint at(double rpm, double plenum, Mode mode) {
        return answer(() -> mode.nitrousFlows() && setup.jets().isPresent()
                ? point(rpm, plenum, mode, feed(plenum), nitrousFuel(plenum))
                : point(rpm, plenum, mode, Closed.feed(bottle), closedFuel(plenum)));
    }

    /** On the main rail the pressure stands before the closed solenoid too. */
    private FuelFlow closedFuel(double plenum) {
        double ambient = at.air().pressure();
        return Closed.fuel(onMainRail() ? setup.mainRegulator().railPressure(ambient, plenum) : ambient);
    }

    private boolean onMainRail() {
        return car.nitrous().fuel().onMainRail();
    }

    /**
     * An operating point with both flows of the nitrous system given, for example those with a blocked jet. Where the nitrous fuel comes
     * from the main rail, its flow is that at its own rail pressure, which the injectors feel too and which falls further where the
     * pumps cannot give both.
     *
     * @param rpm engine speed, rev/min
     * @param plenum plenum pressure, Pa absolute
     * @param mode what the engine is doing; it decides the spark
     * @param feed the nitrous flow
     * @param extra the flow of nitrous fuel
     * @return the point
     * @throws NoAnswerException where the models have none
     */
    public OperatingPoint at(double rpm, double plenum, Mode mode, FeedFlow feed, FuelFlow extra) {
        return answer(() -> point(rpm, plenum, mode, feed, extra));
    }

    /**
     * The same for one spark after another: what the engine breathes does not know the spark and is worked out once.
     *
     * @param rpm engine speed, rev/min, inside the volumetric-efficiency table
     * @param plenum plenum pressure, Pa absolute
     * @param mode what the engine is doing, with nitrous
     * @param feed the nitrous flow
     * @param extra the flow of nitrous fuel
     * @return the point by spark retard from the builder's own timing, crank degrees; it throws what this throws
     * @throws NoAnswerException where the models have none
     */
    public DoubleFunction<OperatingPoint> bySpark(double rpm, double plenum, Mode mode, FeedFlow feed, FuelFlow extra) {
        DoubleFunction<OperatingPoint> points = answer(() -> breathed(rpm, plenum, mode, feed, extra));
        return retard -> answer(() -> points.apply(retard));
    }

    private static <T> T answer(Supplier<T> point) {
        try {
            return point.get();
        } catch (OutsideMapException outside) {
            throw new NoAnswerException(outside.edge().words() + " of the compressor map", outside);
        } catch (NoAnswerException none) {
            throw none;
        } catch (IllegalArgumentException refused) {
            throw new NoAnswerException(refused.getMessage(), refused);
        }
    }

    private OperatingPoint point(double rpm, double plenum, Mode mode, FeedFlow feed, FuelFlow extra) {
        return breathed(rpm, plenum, mode, feed, extra).apply(mode.nitrousFlows() ? setup.retard() : 0);
    }

    private DoubleFunction<OperatingPoint> breathed(
            double rpm, double plenum, Mode mode, FeedFlow feed, FuelFlow extra) {
        // a second round would change the air by less than a thousandth
        Breath first = breathe(rpm, plenum, feed, extra, 1, Optional.empty());
        ShaftBalance shaft = shaft(first, car.turbo().exhaustTemperature());
        Breath breath =
                breathe(rpm, plenum, feed, extra, backPressure(shaft.exhaustPressure() / plenum), Optional.of(first));
        double exhaustPressure = shaft(breath, car.turbo().exhaustTemperature()).exhaustPressure();
        CylinderModel.Ready ready = cylinders.ready(
                rpm, breath.intake, breath.charge, exhaustPressure, mode.nitrousFlows(), factor(Factor.NITROUS_WORK));
        return retard -> burned(rpm, plenum, mode, feed, breath, ready, retard);
    }

    private OperatingPoint burned(
            double rpm,
            double plenum,
            Mode mode,
            FeedFlow feed,
            Breath breath,
            CylinderModel.Ready ready,
            double retard) {
        Charge charge = breath.charge;
        FuelFlow through = breath.extra;
        CylinderModel.Burned burned = cylinders.burn(rpm, ready, retard);
        double exhaust = exhaustTemperature(burned.cycle());
        ShaftBalance shaft = shaft(breath, exhaust);
        double peak = burned.cycle().peakPressure() * factor(Factor.PEAK_PRESSURE);
        double friction =
                model.friction().meanEffectivePressure(peak, car.engine().meanPistonSpeed(rpm));
        double rate = car.engine().displacementRate(rpm);
        Power power = new Power(
                burned.indicated() * factor(Factor.ENGINE_WORK),
                (shaft.exhaustPressure() - plenum) * rate,
                friction * rate,
                rpm);
        return new OperatingPoint(
                rpm,
                mode,
                plenum,
                plenum,
                at.air(),
                bottle,
                breath.compressor,
                breath.airTemperature,
                charge,
                feed,
                through,
                mainFuel(rpm, plenum, charge.mixture().mainFlow(), through),
                burned.heat(),
                exhaust,
                shaft,
                new CylinderLoad(
                        peak, burned.cycle().peakAngle(), burned.knock() * factor(Factor.KNOCK), retard, burned.base()),
                power,
                car.driveline().wheelPower(power.brake(), rpm));
    }

    private double exhaustTemperature(Cycle cycle) {
        return model.probe().at(cycle.exhaustTemperature()) * factor(Factor.EXHAUST_TEMPERATURE);
    }

    /** What another back pressure than that of the base pull does to the breathing. */
    private double backPressure(double ratio) {
        return Double.isNaN(model.backPressure())
                ? 1
                : BackPressure.factor(
                        model.backPressure(),
                        Math.min(ratio, HIGHEST_RATIO),
                        car.engine().compressionRatio(),
                        EXHAUST_GAMMA);
    }

    /**
     * What the nitrous feed path passes; it does not depend on engine speed. A choked flow is the same at every lower plenum
     * pressure, so it is solved once.
     *
     * @param plenum plenum pressure, Pa absolute
     * @return the flow; none without jets
     */
    public FeedFlow feed(double plenum) {
        if (plenum > highest) {
            return solved(plenum);
        }
        FeedFlow most = atHighest;
        if (most == null) {
            most = solved(highest);
            atHighest = most;
        }
        return most.choked() || plenum == highest ? most : solved(plenum);
    }

    private FeedFlow solved(double plenum) {
        return setup.jets().map(pair -> feed(plenum, pair.nitrousBore())).orElseGet(() -> Closed.feed(bottle));
    }

    /**
     * What the fuel circuit of the nitrous system passes; on the main rail that with the rail held, which an operating point then asks
     * the pumps for.
     *
     * @param plenum plenum pressure, Pa absolute
     * @return the flow; none without jets
     */
    public FuelFlow nitrousFuel(double plenum) {
        return setup.jets().map(pair -> nitrousFuel(plenum, pair.fuelBore())).orElseGet(() -> closedFuel(plenum));
    }

    /**
     * What the fuel circuit would pass through other jets.
     *
     * @param plenum plenum pressure, Pa absolute
     * @param bore hole of the fuel jet of every nozzle, m
     * @return the flow
     * @throws NoAnswerException where pump or regulator have none
     */
    public FuelFlow nitrousFuel(double plenum, double bore) {
        double density = nitrousFuelDensity();
        FuelFlow flow = answer(() -> car.nitrous()
                .fuelFlow(density, new JetPair(bore, bore), pressures(plenum), setup.nitrousRegulator(), at.voltage()));
        double factor = factor(Factor.FUEL_JET_FLOW);
        return factor == 1 ? flow : flow.times(factor);
    }

    /**
     * The fuel jet that passes a flow.
     *
     * @param plenum plenum pressure, Pa absolute
     * @param massFlow nitrous fuel through all nozzles, kg/s, positive
     * @return hole of the fuel jet of every nozzle, m
     * @throws NoAnswerException when no jet passes that much
     */
    public double fuelBore(double plenum, double massFlow) {
        try {
            return car.nitrous()
                    .fuelBoreFor(massFlow, nitrousFuelDensity(), pressures(plenum), setup.nitrousRegulator());
        } catch (IllegalArgumentException refused) {
            throw new NoAnswerException(refused.getMessage(), refused);
        }
    }

    /**
     * What the feed path passes through another nitrous jet.
     *
     * @param plenum plenum pressure, Pa absolute
     * @param bore hole of the nitrous jet of every nozzle, m
     * @return the flow
     */
    public FeedFlow feed(double plenum, double bore) {
        FeedFlow flow = car.nitrous().nitrousPath(new JetPair(bore, bore)).flow(bottle, plenum);
        double factor = factor(Factor.NITROUS_FLOW);
        return factor == 1 ? flow : flow.times(factor);
    }

    /**
     * The flow alone, for searches.
     *
     * @param plenum plenum pressure, Pa absolute
     * @param bore hole of the nitrous jet of every nozzle, m
     * @return kg/s
     */
    public double nitrousFlow(double plenum, double bore) {
        return factor(Factor.NITROUS_FLOW)
                * car.nitrous().nitrousPath(new JetPair(bore, bore)).massFlow(bottle, plenum);
    }

    /**
     * The pressures around the fuel circuit; every position of the nozzle feels the plenum within its own loss.
     *
     * @param plenum plenum pressure, Pa absolute
     * @return ambient, plenum and nozzle pressure
     */
    public Pressures pressures(double plenum) {
        return new Pressures(at.air().pressure(), plenum, plenum);
    }

    /**
     * Density of the nitrous fuel as it is sprayed.
     *
     * @return kg/m3
     */
    public double nitrousFuelDensity() {
        return fuels.nitrous().density(fuels.temperature());
    }

    private double factor(Factor which) {
        return at.factors().of(which);
    }

    /** @param extra nitrous fuel at the rail pressure there is */
    private record Breath(
            CompressorPoint compressor, double airTemperature, Intake intake, Charge charge, FuelFlow extra) {
        /** Moist air, kg/s. */
        double air() {
            return charge.mixture().dryAir() + charge.mixture().waterVapour();
        }
    }

    /**
     * On the main rail the pumps must give both fuels. Without nitrous fuel a rail that falls is the limit's to tell: the mixture of the
     * tune was measured on that rail.
     */
    private Breath breathe(
            double rpm, double plenum, FeedFlow feed, FuelFlow offered, double backPressure, Optional<Breath> near) {
        if (!onMainRail()) {
            return breathe(rpm, plenum, feed, offered, 1, backPressure, near);
        }
        SharedRail rail = new SharedRail(
                car.injection().pumps(),
                setup.mainRegulator().railPressure(at.air().pressure(), plenum),
                fuels.main().density(fuels.temperature()),
                at.voltage());
        FuelFlow extra = offered;
        Optional<Breath> last = near;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double share = SharedRail.share(extra.railPressure(), rail.regulated(), plenum);
            Breath breath = breathe(rpm, plenum, feed, extra, share, backPressure, last);
            if (offered.massFlow() == 0) {
                return breath;
            }
            double metered = breath.charge.mixture().mainFlow() / share;
            FuelFlow next = rail.settled(metered, offered, pressures(plenum));
            if (Math.abs(next.railPressure() - extra.railPressure()) <= RAIL_TOLERANCE) {
                return new Breath(breath.compressor, breath.airTemperature, breath.intake, breath.charge, next);
            }
            extra = next;
            last = Optional.of(breath);
        }
        throw new NoAnswerException("the main rail and the fuel drawn from it do not settle together");
    }

    /** @param near what was breathed just beside, from which the search begins */
    private Breath breathe(
            double rpm,
            double plenum,
            FeedFlow feed,
            FuelFlow extra,
            double share,
            double backPressure,
            Optional<Breath> near) {
        double volume = car.engine().breathedVolume(rpm) * factor(Factor.BREATHING) * backPressure;
        MoistAir ambient = at.air();
        double air = near.map(n -> n.air() * backPressure)
                .orElseGet(() -> ambient.density() * volume * plenum / ambient.pressure());
        Optional<Charge> last = near.map(Breath::charge);
        double lastAir = Double.NaN;
        double lastMiss = Double.NaN;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            CompressorPoint point = compress(plenum, air);
            double temperature =
                    car.turbo().cooler().outletTemperature(point.outletTemperature(), ambient.temperature());
            Intake intake = intake(plenum, temperature, feed, extra, share);
            Charge charge = last.map(l -> ChargeMixing.mix(intake, volume, l))
                    .orElseGet(() -> ChargeMixing.mix(intake, volume));
            Breath breath = new Breath(point, temperature, intake, charge, extra);
            double next = breath.air();
            if (Math.abs(next - air) <= FLOW_TOLERANCE * air) {
                return breath;
            }
            last = Optional.of(charge);
            double miss = next - air;
            double step = secant(air - lastAir, miss - lastMiss, miss);
            lastAir = air;
            lastMiss = miss;
            air += step;
        }
        throw new NoAnswerException("air flow and compressor do not settle together");
    }

    /** The step of the secant method; the plain step where there is no secant yet or it would more than double that step. */
    private static double secant(double change, double missChange, double miss) {
        double step = -miss * change / missChange;
        return Math.abs(step) <= 2 * Math.abs(miss) ? step : miss;
    }

    private CompressorPoint compress(double plenum, double air) {
        Turbo turbo = car.turbo();
        MoistAir ambient = at.air();
        double inlet = ambient.pressure() - turbo.inlet().loss(air, ambient.density());
        double coolerDensity = ambient.density() * plenum / ambient.pressure();
        double outlet = plenum + turbo.cooler().loss().loss(air, coolerDensity);
        return Compressor.at(turbo.map(), air, ambient.temperature(), inlet, outlet);
    }

    private Intake intake(double plenum, double airTemperature, FeedFlow feed, FuelFlow extra, double share) {
        return new Intake(
                plenum,
                airTemperature,
                at.air().humidityRatio(),
                feed.massFlow(),
                bottle.enthalpy(),
                new FuelSupplied(fuels.main(), fuels.temperature(), fuels.mainEvaporated()),
                setup.mixture() / (factor(Factor.MAIN_FUEL) * share),
                new FuelSupplied(fuels.nitrous(), fuels.temperature(), fuels.nitrousEvaporated()),
                extra.massFlow(),
                fuels.warming());
    }

    private MainFuel mainFuel(double rpm, double plenum, double flow, FuelFlow extra) {
        Injection injection = car.injection();
        double ambient = at.air().pressure();
        double density = fuels.main().density(fuels.temperature());
        double regulated = setup.mainRegulator().railPressure(ambient, plenum);
        double rail = onMainRail() ? extra.railPressure() : regulated;
        double duty = injection.injector().duty(flow / injection.count(), rpm, density, rail - plenum, at.voltage());
        double capacity = density * injection.pumps().capacity(regulated - ambient, at.voltage());
        return new MainFuel(flow, duty, rail, flow + (onMainRail() ? extra.massFlow() : 0), capacity);
    }

    private ShaftBalance shaft(Breath breath, double temperature) {
        ExhaustGas gas = exhaust(breath.charge, temperature);
        return ShaftBalance.solve(car.turbo().turbine(), gas, breath.compressor.power(), behindTurbine(gas));
    }

    private static ExhaustGas exhaust(Charge charge, double temperature) {
        return new ExhaustGas(charge.mixture().totalFlow(), temperature, EXHAUST_GAS_CONSTANT, EXHAUST_GAMMA);
    }

    private double behindTurbine(ExhaustGas gas) {
        double ambient = at.air().pressure();
        double density = ambient / (EXHAUST_GAS_CONSTANT * gas.temperature());
        return ambient + car.turbo().turbine().exhaustLoss().loss(gas.flow(), density);
    }

    /**
     * Power that speeds the turbocharger's shaft up with the wastegate shut: what the turbine gives while it swallows all of the exhaust,
     * less what the compressor takes.
     *
     * @param point a point of this model
     * @return W; negative where the shaft slows down
     */
    public double shaftSurplus(OperatingPoint point) {
        Turbine turbine = car.turbo().turbine();
        ExhaustGas gas = exhaust(point.charge(), point.exhaustTemperature());
        double back = behindTurbine(gas);
        double ratio = ShaftBalance.swallowingRatio(turbine, gas, back);
        return ShaftBalance.shaftPower(turbine, gas, ratio, back)
                - point.compressor().power();
    }

    /**
     * Pressure in a cylinder over the cycle of a point already evaluated, for pictures.
     *
     * @param point a point of this model
     * @return the trace whose peak the point holds
     */
    public CycleTrace trace(OperatingPoint point) {
        return cylinders.trace(
                point.cylinder().base(), point.cylinder().retard(), point.mode().nitrousFlows());
    }

    /**
     * The closed cycle of a point with another spark.
     *
     * @param point a point of this model
     * @param retard later than the builder's own timing by this, crank degrees, not negative
     * @return peak pressure, its angle, knock integral and work of one cylinder
     */
    public Cycle cycle(OperatingPoint point, double retard) {
        return cylinders.run(point.cylinder().base(), retard, point.mode().nitrousFlows());
    }
}
