package org.shotledger.causes;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.shotledger.car.Car;
import org.shotledger.car.Injection;
import org.shotledger.car.Origin;
import org.shotledger.car.SheetPaths;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.fuel.Fuel;
import org.shotledger.ledger.PowerUncertainty;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.spread.Supply;
import org.shotledger.supply.Pump;
import org.shotledger.supply.PumpGroup;
import org.shotledger.supply.Regulator;

/**
 * The hypotheses of a setup with their priors. Bands come from the sheet and the models where these state them; what is left, and how
 * large and how frequent a fault is, is our own choice and stands here.
 */
final class Hypotheses {
    private static final double ROOT3 = Math.sqrt(3);
    private static final double BAR = 1e5;
    /** Wide-band sensor under load, one standard deviation, relative: common practice, no source. */
    private static final double SENSOR = 0.01;
    /** Main fuel metered beyond the base pull's mixture, as in the chances of a plan. */
    private static final double METERING = 0.012;
    /** Air breathed beyond the base pull, as in the chances of a plan. */
    private static final double BREATHING = 0.018;
    /** A dynamometer against itself on another day: common practice, no source. */
    private static final double DYNAMOMETER = 0.01;
    /** A regulator's setting and a gauge of 10 bar, Pa: common practice, no source. */
    private static final double FUEL_GAUGE = 0.03 * BAR;
    /** Bottle temperature, K, as in the chances of a plan. */
    private static final double BOTTLE = 1;
    /** A gauge of 100 bar: 1 % of its end; common practice, no source. */
    private static final double BOTTLE_GAUGE = 1 * BAR;

    /** Standard deviation of a manifold sensor, Pa. */
    private static final double MANIFOLD_GAUGE = 0.01 * BAR;
    /** Standard deviation of the supply voltage, V. */
    private static final double VOLTAGE = 0.2;
    /** Lowest supply that is looked at, V. */
    private static final double LOWEST_SUPPLY = 8;

    private static final double ETHANOL = 0.01;
    /** Largest resistance of a pump's wires that a sheet may state, ohm. */
    private static final double LARGEST_RESISTANCE = 1;

    private final Outcome outcome;
    private final Car car;
    private final Setup setup;
    private final List<Hypothesis> all = new ArrayList<>();

    private Hypotheses(Outcome outcome) {
        this.outcome = outcome;
        this.car = outcome.car();
        this.setup = outcome.setup();
    }

    /** All of them; those of the nitrous only where the setup has jets. The power may be read with an uncertainty of its own. */
    static List<Hypothesis> of(Outcome outcome, double powerReading) {
        Hypotheses made = new Hypotheses(outcome);
        if (outcome.setup().jets().isPresent()) {
            made.nitrousFlow();
            made.nitrousFuel();
            made.bottle();
        }
        made.mainFuel();
        made.engine(powerReading);
        return List.copyOf(made.all);
    }

    private void add(
            Cause cause, double band, double fault, double low, double high, double odds, Hypothesis.Change change) {
        all.add(new Hypothesis(cause, band, fault, low, high, odds, change));
    }

    private double stated(String path, double otherwise) {
        return car.origin(path).map(Origin::uncertainty).filter(u -> u > 0).orElse(otherwise);
    }

    private static double drill(double bore) {
        return 2 * Supply.USUAL_BORE_TOLERANCE / ROOT3 / bore;
    }

    private void nitrousFlow() {
        OperatingPoint point = outcome.strongest().orElseThrow();
        double law = point.nitrous().band().logarithmicDeviation();
        double bore = setup.jets().orElseThrow().nitrousBore();
        add(
                Cause.NITROUS_JETS,
                Math.hypot(law, drill(bore)),
                0.1,
                -0.5,
                0.5,
                1.5,
                (run, x) -> run.times(Factor.NITROUS_FLOW, 1 + x));
        add(
                Cause.NITROUS_SOLENOID,
                0,
                0.5,
                0,
                0.9,
                0.5,
                (run, x) -> withNitrous(
                        run,
                        c -> new NitrousCircuit(
                                c.valve(),
                                c.hoseBore(),
                                c.hoseLength(),
                                c.filterLoss(),
                                closed(c.solenoid(), x),
                                c.lineBore(),
                                c.lineLength(),
                                c.jet())));
        if (car.nitrous().nitrous().filterLoss() > 0) {
            add(Cause.NITROUS_FILTER, 0, 0.6, 0, 0.95, 0.4, (run, x) -> withNitrous(run, c -> c.withFilterBlocked(x)));
        }
        double work = PowerUncertainty.nitrousShare(car) / car.model().nitrous().value();
        add(Cause.NITROUS_WORK, work, 0.1, -0.4, 0.4, 0.3, (run, x) -> run.times(Factor.NITROUS_WORK, 1 + x));
    }

    private static Run withNitrous(Run run, UnaryOperator<NitrousCircuit> change) {
        WetKit kit = run.car().nitrous();
        return run.withCar(run.car().with(kit.withNitrous(change.apply(kit.nitrous()))));
    }

    private static Solenoid closed(Solenoid s, double share) {
        return new Solenoid(
                s.bore() * Math.sqrt(1 - share), s.dischargeCoefficient(), s.openingDelay(), s.closingDelay());
    }

    private void nitrousFuel() {
        double bore = setup.jets().orElseThrow().fuelBore();
        double coefficient = car.nitrous().fuel().jet().factors().logarithmicDeviation();
        add(
                Cause.FUEL_JETS,
                Math.hypot(coefficient, drill(bore)),
                0.1,
                -0.6,
                0.6,
                1,
                (run, x) -> run.times(Factor.FUEL_JET_FLOW, 1 + x));
        add(
                Cause.FUEL_RESTRICTED,
                0,
                0.5,
                0,
                0.9,
                0.4,
                (run, x) -> run.withCar(run.car()
                        .with(run.car()
                                .nitrous()
                                .withFuel(run.car()
                                        .nitrous()
                                        .fuel()
                                        .withSolenoid(closed(
                                                run.car().nitrous().fuel().solenoid(), x))))));
        if (car.nitrous().fuel().onMainRail()) {
            double rise = point().main().railPressure() - outcome.at().air().pressure();
            add(
                    Cause.MAIN_FUEL_PUMP,
                    0,
                    2,
                    0,
                    outcome.at().voltage() - LOWEST_SUPPLY,
                    0.6,
                    (run, x) -> run.withCar(shortOfVoltage(run.car(), rise, x)));
        } else {
            ownSupply();
        }
        add(
                Cause.NITROUS_FUEL_GAUGE,
                FUEL_GAUGE,
                0.4 * BAR,
                -2 * BAR,
                2 * BAR,
                0.4,
                (run, x) -> run.withGauges(g -> g.withNitrousFuel(x)));
    }

    private OperatingPoint point() {
        return outcome.strongest().orElseThrow();
    }

    /** Volts lost on the way to the main pumps, as more resistance of their wires. */
    private Car shortOfVoltage(Car with, double rise, double volts) {
        Injection supply = with.injection();
        PumpGroup pumps = supply.pumps();
        Pump one = pumps.pumps().get(0);
        double left = Math.min(Math.max(outcome.at().voltage() - volts, one.lowestVoltage()), one.highestVoltage());
        double lost = Math.min(LARGEST_RESISTANCE, pumps.wiringResistance() + volts / one.current(rise, left));
        return with.with(new Injection(
                supply.injector(),
                supply.count(),
                new PumpGroup(pumps.name(), pumps.pumps(), pumps.arrangement(), lost),
                supply.voltage()));
    }

    private void ownSupply() {
        double band = stated(SheetPaths.NITROUS_FUEL_PRESSURE, FUEL_GAUGE);
        double base = setup.nitrousRegulator().basePressure();
        add(
                Cause.NITROUS_FUEL_PRESSURE,
                band,
                0.5 * BAR,
                0.55 * BAR - base,
                2.5 * BAR,
                1,
                (run, x) -> run.withSetup(
                        run.setup().withNitrousRegulator(higher(run.setup().nitrousRegulator(), x))));
        if (setup.nitrousRegulator().boostReference() > 0) {
            add(
                    Cause.NITROUS_FUEL_REFERENCE,
                    0,
                    0.7,
                    0,
                    1,
                    0.7,
                    (run, x) -> run.withSetup(
                            run.setup().withNitrousRegulator(lost(run.setup().nitrousRegulator(), x))));
        }
        add(Cause.NITROUS_FUEL_PUMP, 0, 2, 0, outcome.at().voltage() - LOWEST_SUPPLY, 0.6, Run::withPumpLoss);
    }

    private static Regulator higher(Regulator r, double pressure) {
        return new Regulator(r.name(), r.basePressure() + pressure, r.boostReference());
    }

    private static Regulator lost(Regulator r, double share) {
        return new Regulator(r.name(), r.basePressure(), r.boostReference() * (1 - share));
    }

    private void bottle() {
        add(Cause.BOTTLE, BOTTLE, 6, -25, 8, 1, Run::withBottle);
        add(
                Cause.BOTTLE_GAUGE,
                BOTTLE_GAUGE,
                3 * BAR,
                -12 * BAR,
                12 * BAR,
                0.4,
                (run, x) -> run.withGauges(g -> g.withBottle(x)));
    }

    private void mainFuel() {
        double mixture =
                stated("base-pull.lambda", 0) / outcome.car().basePull().lambda();
        add(Cause.LAMBDA_SENSOR, SENSOR, 0.05, -0.3, 0.3, 1, (run, x) -> run.withGauges(g -> g.withLambda(1 + x)));
        add(
                Cause.MAIN_FUEL,
                Math.hypot(METERING, mixture),
                0.06,
                -0.4,
                0.4,
                0.8,
                (run, x) -> run.times(Factor.MAIN_FUEL, 1 + x));
        double band = stated("injection.regulator.base-pressure", FUEL_GAUGE);
        double base = setup.mainRegulator().basePressure();
        mainPressure(Cause.MAIN_FUEL_PRESSURE, band, 0.5 * BAR, 0.55 * BAR - base, 2 * BAR, 0.8, Hypotheses::higher);
        if (setup.mainRegulator().boostReference() > 0) {
            mainPressure(Cause.MAIN_FUEL_REFERENCE, 0, 0.7, 0, 1, 0.6, Hypotheses::lost);
        }
        add(
                Cause.RAIL_GAUGE,
                FUEL_GAUGE,
                0.4 * BAR,
                -2 * BAR,
                2 * BAR,
                0.4,
                (run, x) -> run.withGauges(g -> g.withRail(x)));
        content();
    }

    /** With a controller that knows of the pressure and meters as before, and with one that does not. */
    private void mainPressure(
            Cause cause,
            double band,
            double fault,
            double low,
            double high,
            double odds,
            java.util.function.BiFunction<Regulator, Double, Regulator> change) {
        add(
                cause,
                band,
                fault,
                low,
                high,
                odds / 2,
                (run, x) -> run.withSetup(
                        run.setup().withMainRegulator(change.apply(run.setup().mainRegulator(), x))));
        double ambient = outcome.at().air().pressure();
        double plenum = ambient + setup.boost().armed().at(setup.arming().rpmHigh());
        double drop = setup.mainRegulator().dropIntoPlenum(ambient, plenum);
        add(cause, 0, fault, low, high, odds / 2, (run, x) -> {
            Regulator other = change.apply(run.setup().mainRegulator(), x);
            double left = Math.max(0.05 * drop, other.dropIntoPlenum(ambient, plenum));
            return run.withSetup(run.setup().withMainRegulator(other)).times(Factor.MAIN_FUEL, Math.sqrt(left / drop));
        });
    }

    /** With a controller that follows the content, and with one that goes on metering the same volume. */
    private void content() {
        if (car.fuels().blend().isEmpty()) {
            return;
        }
        Fuel now = car.fuels().with(outcome.at().ethanol()).main();
        double share =
                outcome.at().ethanol().orElse(car.fuels().blend().orElseThrow().ethanol());
        double band = stated("fuels.main.ethanol", ETHANOL);
        double temperature = car.fuels().temperature();
        double need = now.stoichiometricAirFuel() * now.density(temperature);
        add(
                Cause.FUEL_CONTENT,
                band,
                0.1,
                -share,
                1 - share,
                0.35,
                (run, x) -> run.withCase(run.at().withFuel(share + x)));
        add(Cause.FUEL_CONTENT, 0, 0.1, -share, 1 - share, 0.35, (run, x) -> {
            Fuel other = car.fuels().with(OptionalDouble.of(share + x)).main();
            double volume = other.stoichiometricAirFuel() * other.density(temperature) / need;
            return run.withCase(run.at().withFuel(share + x)).times(Factor.MAIN_FUEL, volume);
        });
    }

    private void engine(double powerReading) {
        double boost = Math.max(stated("base-pull.boost", 0), setup.boost().tolerance() / ROOT3);
        add(Cause.BOOST, boost, 0.25 * BAR, -0.9 * BAR, 0.6 * BAR, 1, Run::withBoost);
        add(
                Cause.MANIFOLD_GAUGE,
                MANIFOLD_GAUGE,
                0.1 * BAR,
                -0.6 * BAR,
                0.6 * BAR,
                0.4,
                (run, x) -> run.withGauges(g -> g.withManifold(x)));
        add(Cause.BREATHING, BREATHING, 0.08, -0.4, 0.3, 0.5, (run, x) -> run.times(Factor.BREATHING, 1 + x));
        double work = Math.max(car.basePull().uncertainty(), 0.01);
        add(Cause.ENGINE_WORK, work, 0.08, -0.5, 0.3, 1, (run, x) -> run.times(Factor.ENGINE_WORK, 1 + x));
        add(
                Cause.POWER_READING,
                Math.hypot(DYNAMOMETER, powerReading),
                0.05,
                -0.3,
                0.3,
                0.4,
                (run, x) -> run.withGauges(g -> g.withPower(1 + x)));
        double lowest = LOWEST_SUPPLY - outcome.at().voltage();
        add(
                Cause.SUPPLY_VOLTAGE,
                VOLTAGE,
                1.5,
                Math.max(-4, lowest),
                2,
                0.6,
                (run, x) -> run.withCase(run.at().withVoltage(run.at().voltage() + x)));
    }
}
