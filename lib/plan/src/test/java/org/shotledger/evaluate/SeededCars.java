package org.shotledger.evaluate;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.Engine;
import org.shotledger.engine.EngineFactor;
import org.shotledger.engine.Intake;
import org.shotledger.engine.MoistAir;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.job.Job;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;

/** Makes valid cars, setups and cases at random, from a seed: engine, fuels, nitrous system, weather, bottle, boost and jets vary. */
final class SeededCars {
    private static final Job BASE = Job.load(Path.of("../../data/whimbrel"));

    private final SplittableRandom random;

    SeededCars(long seed) {
        random = new SplittableRandom(seed);
    }

    /** One draw: a car, its setup, a case, and the point of it that is asked for. */
    record Drawn(Car car, Setup setup, Case at, double rpm, double plenum) {
        OperatingPoint point() {
            return with(setup);
        }

        OperatingPoint with(Setup other) {
            return model(other, at).at(rpm, plenum, Mode.NITROUS);
        }

        OperatingPoint in(Case other) {
            return model(setup, other).at(rpm, plenum, Mode.NITROUS);
        }

        OperatingPoint at(double speed, double pressure) {
            return model(setup, at).at(speed, pressure, Mode.NITROUS);
        }

        private PointModel model(Setup other, Case when) {
            return PointModel.of(
                    car, other, when, NitrousOxide.saturatedLiquid(when.bottle().temperature()));
        }

        /** The breathing table taken as it stands. */
        Drawn withoutBackPressure() {
            var model = car.model();
            return new Drawn(
                    car.with(model.withBase(model.probe(), model.baseKnock().orElseThrow(), Double.NaN)),
                    setup,
                    at,
                    rpm,
                    plenum);
        }

        JetPair jets() {
            return setup.jets().orElseThrow();
        }
    }

    Drawn next() {
        Car car = car();
        MoistAir air = MoistAir.atAltitude(between(0, 2500), between(272, 312), between(0.1, 0.9));
        Case at = Case.of("drawn", air, between(12.5, 14)).withBottle(BottleState.at(between(278, 306)));
        int nozzles = car.nitrous().nozzles();
        JetPair jets =
                new JetPair(Math.sqrt(between(2e-6, 7e-6) / nozzles), Math.sqrt(between(0.7e-6, 2e-6) / nozzles));
        double plenum = air.pressure() + between(0.5e5, 1.5e5);
        Regulator regulator = new Regulator("nitrous fuel regulator", between(2.5e5, 4.5e5), random.nextInt(2));
        return new Drawn(
                car, BASE.setup().withJets(jets).withNitrousRegulator(regulator), at, between(5000, 7800), plenum);
    }

    private Car car() {
        Car b = BASE.car();
        Engine engine = engine(b.engine());
        Fuel main = Fuels.ethanolBlend(between(0, 1), 0, Fuels.GASOLINE);
        Fuel extra =
                List.of(main, Fuels.METHANOL, Fuels.ETHANOL, Fuels.GASOLINE).get(random.nextInt(4));
        FuelStreams fuels = new FuelStreams(
                main,
                Optional.empty(),
                Optional.of(extra),
                between(280, 310),
                between(0.2, 0.7),
                between(0.1, 0.4),
                Intake.Warming.USUAL);
        EngineModel model =
                b.model().with(new EngineFactor(between(0.75, 0.95))).with(Cylinder.of(engine));
        return new Car(
                b.name(),
                b.invented(),
                engine,
                b.friction(),
                fuels,
                b.basePull(),
                b.injection(),
                b.turbo(),
                kit(b.nitrous()),
                b.bottle(),
                b.driveline(),
                b.limits(),
                b.vehicle(),
                b.electrical(),
                b.controller(),
                b.wiring(),
                model,
                b.origins());
    }

    private Engine engine(Engine e) {
        return new Engine(
                e.name(),
                e.cylinders(),
                e.bore() * between(0.92, 1.06),
                e.stroke() * between(0.92, 1.06),
                e.rodLength(),
                between(8, 10.5),
                e.volumetricEfficiency(),
                e.redLineRpm());
    }

    private WetKit kit(WetKit k) {
        Solenoid solenoid = new Solenoid(between(2.2e-3, 4e-3), 0.65, 0.012, 0.010);
        FuelCircuit fuel = new FuelCircuit(k.fuel().cell(), solenoid, FuelJet.stated(between(0.7, 0.9)));
        return new WetKit(k.position(), 1 + random.nextInt(8), k.nitrous(), fuel, k.ladder(), Optional.empty());
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
