package org.shotledger.budget;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.shotledger.build.Build;
import org.shotledger.build.FuelStreams;
import org.shotledger.engine.Cylinder;
import org.shotledger.engine.Engine;
import org.shotledger.engine.MoistAir;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.supply.Regulator;

/** Makes valid builds and operating points at random, from a seed: engine, fuels, kit, weather, bottle, boost and jets vary. */
final class SeededBuilds {
    private static final Build BASE = Build.load(Path.of("../../data/heron/build.yaml"));
    private static final EngineModel MODEL = Calibration.of(BASE).model();

    private final SplittableRandom random;

    SeededBuilds(long seed) {
        random = new SplittableRandom(seed);
    }

    /** One case: an evaluator of a build, and what is asked of it. */
    record Case(Evaluator evaluator, Conditions at, double rpm, Demand demand) {
        Evaluation evaluate() {
            return evaluator.at(at, rpm, demand);
        }
    }

    Case next() {
        Build build = build();
        EngineModel model = new EngineModel(
                MODEL.combustion(),
                MODEL.efficiency().withFraction(between(0.75, 0.95)),
                MODEL.friction(),
                Cylinder.of(build.engine()),
                MODEL.timing(),
                MODEL.nitrousEffectiveness());
        MoistAir air = MoistAir.atAltitude(between(0, 2500), between(272, 312), between(0.1, 0.9));
        Conditions at = new Conditions(air, NitrousOxide.saturatedLiquid(between(278, 306)), between(12.5, 14));
        int nozzles = build.wetKit().nozzles();
        JetPair jets =
                new JetPair(Math.sqrt(between(2e-6, 7e-6) / nozzles), Math.sqrt(between(0.7e-6, 2e-6) / nozzles));
        Demand demand = Demand.boost(air.pressure() + between(0.5e5, 1.5e5)).with(jets);
        return new Case(new Evaluator(build, model), at, between(5000, 7800), demand);
    }

    private Build build() {
        Engine e = BASE.engine();
        Engine engine = new Engine(
                e.name(),
                e.cylinders(),
                e.bore() * between(0.92, 1.06),
                e.stroke() * between(0.92, 1.06),
                e.rodLength(),
                between(8, 10.5),
                e.volumetricEfficiency(),
                e.redLineRpm());
        Fuel main = Fuels.ethanolBlend(between(0, 1), 0, Fuels.GASOLINE);
        Fuel extra =
                List.of(main, Fuels.METHANOL, Fuels.ETHANOL, Fuels.GASOLINE).get(random.nextInt(4));
        FuelStreams fuels = new FuelStreams(main, extra, between(280, 310), between(0.2, 0.7), between(0.1, 0.4));
        Build b = BASE.withParts(fuels, BASE.tune(), kit());
        return new Build(
                b.name(),
                b.invented(),
                b.conditions(),
                b.target(),
                engine,
                b.fuels(),
                b.tune(),
                b.basePull(),
                b.injection(),
                b.turbo(),
                b.wetKit(),
                b.bottle(),
                b.driveline(),
                b.limits(),
                b.friction(),
                b.vehicle(),
                b.electrical(),
                b.controller(),
                b.wiring(),
                b.origins(),
                b.source());
    }

    private WetKit kit() {
        WetKit k = BASE.wetKit();
        FuelCircuit f = k.fuel();
        Solenoid solenoid = new Solenoid(between(2.2e-3, 4e-3), 0.65, 0.012, 0.010);
        Regulator regulator = new Regulator("nitrous fuel regulator", between(2.5e5, 4.5e5), random.nextInt(2));
        FuelCircuit fuel = new FuelCircuit(f.pumps(), regulator, solenoid, between(0.7, 0.9), f.cellVolume());
        return new WetKit(
                k.position(), 1 + random.nextInt(8), k.nitrous(), fuel, k.ladder(), k.window(), Optional.empty());
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }
}
