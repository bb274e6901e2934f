package org.shotledger.budget;

import org.shotledger.boost.Compressor;
import org.shotledger.boost.CompressorPoint;
import org.shotledger.boost.ExhaustGas;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.build.Build;
import org.shotledger.build.FuelStreams;
import org.shotledger.build.Injection;
import org.shotledger.build.Turbo;
import org.shotledger.engine.Charge;
import org.shotledger.engine.ChargeMixing;
import org.shotledger.engine.Cycle;
import org.shotledger.engine.CycleTrace;
import org.shotledger.engine.Intake;
import org.shotledger.engine.Intake.FuelSupplied;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.Power;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fuel.HeatRelease;
import org.shotledger.fuel.Mixture;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.FuelCircuit.Pressures;
import org.shotledger.nitrous.JetPair;
import org.shotledger.units.Require;

/**
 * Evaluates one operating point. A pure function of build, models, conditions, speed and demand.
 *
 * <p>Order of the reasoning: the nitrous flow follows from the bottle and the feed path; the nitrous fuel from regulator and
 * plenum; the air from speed-density with the charge mixed to one temperature, solved together with compressor and charge
 * cooler; the main fuel from the air; the heat from all oxygen and all fuel; the power from heat, friction and pumping.
 *
 * @param build the build
 * @param model the calibrated models
 */
public record Evaluator(Build build, EngineModel model) {
    /** Gas constant and heat-capacity ratio of rich exhaust gas near 1100 K (Heywood figs 4.13 to 4.18, from memory). */
    private static final double EXHAUST_GAS_CONSTANT = 290;

    private static final double EXHAUST_GAMMA = 1.30;
    private static final double FLOW_TOLERANCE = 1e-10;
    private static final int MOST_ROUNDS = 60;

    /**
     * Evaluates an operating point.
     *
     * @param at what surrounds the engine
     * @param rpm engine speed, rev/min, inside the volumetric-efficiency table
     * @param demand what is asked of it
     * @return the point
     * @throws org.shotledger.boost.OutsideMapException where the compressor map has no answer
     * @throws IllegalArgumentException where another model has none
     */
    public Evaluation at(Conditions at, double rpm, Demand demand) {
        return at(at, rpm, demand, feed(at, demand));
    }

    /**
     * What the nitrous feed path passes; it does not depend on engine speed.
     *
     * @param at what surrounds the engine
     * @param demand what is asked of it
     * @return the flow; none when the nitrous is off
     */
    public FeedFlow feed(Conditions at, Demand demand) {
        return demand.jets()
                .map(pair -> build.wetKit()
                        .nitrous()
                        .path(build.wetKit().nozzles(), pair.nitrousBore())
                        .flow(at.bottleLiquid(), demand.plenumPressure()))
                .orElseGet(() -> Closed.feed(at.bottleLiquid()));
    }

    /**
     * Evaluates an operating point with a nitrous flow already solved.
     *
     * @param at what surrounds the engine
     * @param rpm engine speed, rev/min
     * @param demand what is asked of it
     * @param feed the nitrous flow of this demand
     * @return the point
     */
    public Evaluation at(Conditions at, double rpm, Demand demand, FeedFlow feed) {
        return at(at, rpm, demand, feed, nitrousFuel(at, demand));
    }

    /**
     * Evaluates an operating point at which the two circuits pass shares of their flow: pulsed solenoids, one cylinder's
     * jets off their nominal size, or a blocked jet. What the feed paths would pass at full opening is scaled; states along
     * them are left as they are.
     *
     * @param at what surrounds the engine
     * @param rpm engine speed, rev/min
     * @param demand what is asked of it, with jets
     * @param feed the nitrous flow of this demand at full opening
     * @param nitrousShare share of that flow, 0 or more
     * @param fuelShare share of the nitrous fuel's flow, 0 or more
     * @return the point
     */
    public Evaluation sharing(
            Conditions at, double rpm, Demand demand, FeedFlow feed, double nitrousShare, double fuelShare) {
        Require.notNegative("share of the nitrous flow", nitrousShare, "");
        Require.notNegative("share of the nitrous fuel flow", fuelShare, "");
        return at(
                at,
                rpm,
                demand,
                feed.times(nitrousShare),
                nitrousFuel(at, demand).times(fuelShare));
    }

    /**
     * Evaluates an operating point with both flows of the wet kit given, for example those of a kit with a blocked jet.
     *
     * @param at what surrounds the engine
     * @param rpm engine speed, rev/min
     * @param demand what is asked of it; with jets the spark is retarded as planned
     * @param feed the nitrous flow
     * @param extra the flow of nitrous fuel
     * @return the point
     */
    public Evaluation at(Conditions at, double rpm, Demand demand, FeedFlow feed, FuelFlow extra) {
        Breath breath = breathe(at, rpm, demand, feed, extra);
        Charge charge = breath.charge;
        HeatRelease heat = model.combustion().burn(charge.mixture());
        ShaftBalance shaft = shaft(at.air(), charge.mixture(), breath.compressor.power());
        Evaluation.CylinderLoad load = load(rpm, demand, charge, heat, shaft.exhaustPressure());
        double friction = model.friction()
                .meanEffectivePressure(load.peakPressure(), build.engine().meanPistonSpeed(rpm), rpm);
        Power power = Power.of(
                build.engine(),
                rpm,
                workingHeat(charge.mixture(), heat),
                load.indicatedEfficiency(),
                demand.plenumPressure(),
                shaft.exhaustPressure(),
                friction);
        return new Evaluation(
                rpm,
                at,
                demand,
                breath.compressor,
                breath.airTemperature,
                charge,
                feed,
                extra,
                mainFuel(at, rpm, demand, charge.mixture().mainFlow()),
                heat,
                shaft,
                load,
                power,
                build.driveline().wheelPower(power.brake(), rpm));
    }

    private record Breath(CompressorPoint compressor, double airTemperature, Charge charge) {}

    private Breath breathe(Conditions at, double rpm, Demand demand, FeedFlow feed, FuelFlow extra) {
        double volume = build.engine().breathedVolume(rpm);
        double air =
                at.air().density() * volume * demand.plenumPressure() / at.air().pressure();
        double lastAir = Double.NaN;
        double lastMiss = Double.NaN;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            CompressorPoint point = compress(at.air(), demand.plenumPressure(), air);
            double temperature = build.turbo()
                    .cooler()
                    .outletTemperature(point.outletTemperature(), at.air().temperature());
            Charge charge = ChargeMixing.mix(intake(at, demand, temperature, feed, extra), volume);
            double next = charge.mixture().dryAir() + charge.mixture().waterVapour();
            if (Math.abs(next - air) <= FLOW_TOLERANCE * air) {
                return new Breath(point, temperature, charge);
            }
            double miss = next - air;
            double step = secant(air - lastAir, miss - lastMiss, miss);
            lastAir = air;
            lastMiss = miss;
            air += step;
        }
        throw new IllegalStateException("The air flow at " + rpm + " rpm and " + demand.plenumPressure()
                + " Pa did not settle in " + MOST_ROUNDS + " rounds; the last value was " + air + " kg/s.");
    }

    /** The step of the secant method; the plain step where there is no secant yet or it would more than double that step. */
    private static double secant(double change, double missChange, double miss) {
        double step = -miss * change / missChange;
        return Math.abs(step) <= 2 * Math.abs(miss) ? step : miss;
    }

    private CompressorPoint compress(MoistAir ambient, double plenum, double air) {
        Turbo turbo = build.turbo();
        double inlet = ambient.pressure() - turbo.inlet().loss(air, ambient.density());
        double coolerDensity = ambient.density() * plenum / ambient.pressure();
        double outlet = plenum + turbo.cooler().loss().loss(air, coolerDensity);
        return Compressor.at(turbo.map(), air, ambient.temperature(), inlet, outlet);
    }

    private Intake intake(Conditions at, Demand demand, double airTemperature, FeedFlow feed, FuelFlow extra) {
        FuelStreams fuels = build.fuels();
        return new Intake(
                demand.plenumPressure(),
                airTemperature,
                at.air().humidityRatio(),
                feed.massFlow(),
                at.bottleLiquid().enthalpy(),
                new FuelSupplied(fuels.main(), fuels.temperature(), fuels.mainEvaporated()),
                build.tune().lambda(),
                new FuelSupplied(fuels.nitrous(), fuels.temperature(), fuels.nitrousEvaporated()),
                extra.massFlow());
    }

    /**
     * What the fuel circuit of the kit passes.
     *
     * @param at what surrounds the engine
     * @param demand what is asked of it
     * @return the flow; none when the nitrous is off
     */
    public FuelFlow nitrousFuel(Conditions at, Demand demand) {
        if (demand.jets().isEmpty()) {
            return Closed.fuel(at.air().pressure());
        }
        JetPair pair = demand.jets().get();
        double density = build.fuels().nitrous().density(build.fuels().temperature());
        return build.wetKit()
                .fuel()
                .flow(density, build.wetKit().nozzles(), pair.fuelBore(), pressures(at, demand), at.voltage());
    }

    /**
     * The pressures around the fuel circuit; every position of the nozzle feels the plenum within its own loss.
     *
     * @param at what surrounds the engine
     * @param demand what is asked of it
     * @return ambient, plenum and nozzle pressure
     */
    public static Pressures pressures(Conditions at, Demand demand) {
        return new Pressures(at.air().pressure(), demand.plenumPressure(), demand.plenumPressure());
    }

    private Evaluation.MainFuel mainFuel(Conditions at, double rpm, Demand demand, double flow) {
        Injection injection = build.injection();
        double density = build.fuels().main().density(build.fuels().temperature());
        double rail = injection.regulator().railPressure(at.air().pressure(), demand.plenumPressure());
        double drop = rail - demand.plenumPressure();
        double duty = injection.injector().duty(flow / injection.count(), rpm, density, drop, at.voltage());
        double capacity = density * injection.pumps().capacity(rail - at.air().pressure(), at.voltage());
        return new Evaluation.MainFuel(flow, duty, rail, capacity);
    }

    private ShaftBalance shaft(MoistAir ambient, Mixture mixture, double compressorPower) {
        Turbo turbo = build.turbo();
        ExhaustGas gas =
                new ExhaustGas(mixture.totalFlow(), turbo.exhaustTemperature(), EXHAUST_GAS_CONSTANT, EXHAUST_GAMMA);
        double density = ambient.pressure() / (EXHAUST_GAS_CONSTANT * turbo.exhaustTemperature());
        double back = ambient.pressure() + turbo.turbine().exhaustLoss().loss(mixture.totalFlow(), density);
        return ShaftBalance.solve(turbo.turbine(), gas, compressorPower, back);
    }

    /** The engine's own heat, and of what the nitrous circuit adds the effective share. */
    private double workingHeat(Mixture mixture, HeatRelease heat) {
        if (mixture.nitrous() == 0 && mixture.nitrousFuelFlow() == 0) {
            return heat.total();
        }
        Mixture own = Mixture.ofAir(mixture.dryAir(), mixture.waterVapour(), mixture.mainFuel(), mixture.mainFlow());
        double base = model.combustion().burn(own).total();
        return base + model.nitrousEffectiveness() * (heat.total() - base);
    }

    /**
     * Pressure in a cylinder over the cycle of a point already evaluated, for pictures.
     *
     * @param point the point
     * @return the trace whose peak the point holds
     */
    public CycleTrace trace(Evaluation point) {
        boolean on = point.demand().jets().isPresent();
        return model.cylinder()
                .trace(cylinders()
                        .cycle(
                                point.rpm(),
                                point.charge(),
                                point.heat(),
                                point.shaft().exhaustPressure(),
                                point.cylinder().retard(),
                                on));
    }

    private Evaluation.CylinderLoad load(
            double rpm, Demand demand, Charge charge, HeatRelease heat, double exhaustPressure) {
        boolean on = demand.jets().isPresent();
        double retard = on ? build.tune().nitrousRetard() : 0;
        Cycle cycle = model.cylinder().run(cylinders().cycle(rpm, charge, heat, exhaustPressure, retard, on));
        return new Evaluation.CylinderLoad(
                cycle.peakPressure(),
                cycle.peakAngle(),
                cycle.knockIntegral(),
                retard,
                model.efficiency().at(build.engine().compressionRatio(), retard));
    }

    /**
     * The closed cycle of a point with another spark.
     *
     * @param point an operating point of this evaluator
     * @param retard later than the builder's own timing by this, crank degrees, not negative
     * @return peak pressure, its angle, knock integral and work of one cylinder
     */
    public Cycle cycle(Evaluation point, double retard) {
        boolean on = point.demand().jets().isPresent();
        double exhaust = point.shaft().exhaustPressure();
        return model.cylinder().run(cylinders().cycle(point.rpm(), point.charge(), point.heat(), exhaust, retard, on));
    }

    private ClosedCycles cylinders() {
        return new ClosedCycles(build, model.timing());
    }
}
