package org.shotledger.ledger;

import org.shotledger.bottle.Charge;
import org.shotledger.car.Car;
import org.shotledger.car.FuelStreams;
import org.shotledger.engine.EngineFactor;
import org.shotledger.engine.MoistAir;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.evaluate.BottleOutcome;
import org.shotledger.evaluate.Bottles;
import org.shotledger.evaluate.Evaluate;
import org.shotledger.evaluate.Mode;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FuelCircuit.FuelFlow;
import org.shotledger.nitrous.NitrousCircuit;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.nitrous.WetKit;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * What a ledger is written about: the operating point of most power of an outcome.
 *
 * @param outcome the outcome
 * @param point its point of most power
 * @param model the models of the outcome
 * @param offPower wheel power at the same speed and boost with the nitrous closed, W
 */
record Subject(Outcome outcome, OperatingPoint point, PointModel model, double offPower) {
    /** Pressure above that of saturation by this share is that of a bottle full of liquid. */
    private static final double COMPRESSED = 1e-7;

    static Subject of(Outcome outcome, OperatingPoint point) {
        PointModel model = Evaluate.model(outcome.car(), outcome.setup(), outcome.at());
        double off = point.mode().nitrousFlows()
                ? model.at(point.rpm(), point.plenumPressure(), Mode.ARMED).wheelPower()
                : point.wheelPower();
        return new Subject(outcome, point, model, off);
    }

    Car car() {
        return outcome.car();
    }

    Setup setup() {
        return outcome.setup();
    }

    Case at() {
        return outcome.at();
    }

    boolean nitrous() {
        return point.mode().nitrousFlows();
    }

    FuelStreams fuels() {
        return car().fuels().with(at().ethanol());
    }

    double factor(Factor which) {
        return at().factors().of(which);
    }

    String byCase() {
        return "the case '" + at().name() + "'";
    }

    double added() {
        return point.wheelPower() - offPower;
    }

    /** Superheated liquid has flashed to the bottle's pressure where it enters the siphon. */
    boolean wet() {
        return point.bottle().isTwoPhase();
    }

    /** What enters the siphon: by the bottle's temperature and the share of vapour where it is wet, else its pressure. */
    FluidState entering(double temperature, double vapourOrPressure) {
        return wet() ? NitrousOxide.mixture(temperature, vapourOrPressure) : liquid(temperature, vapourOrPressure);
    }

    /** Liquid at a temperature: saturated, or under more pressure than that. */
    private static FluidState liquid(double temperature, double pressure) {
        boolean compressed = pressure > NitrousOxide.saturationPressure(temperature) * (1 + COMPRESSED);
        return compressed
                ? NitrousOxide.atTemperaturePressure(temperature, pressure)
                : NitrousOxide.saturatedLiquid(temperature);
    }

    FluidState charged(double charge, double temperature) {
        Charge full = car().bottle().vessel().charged(charge, temperature);
        return full.outlet();
    }

    /** What enters the siphon in the last moment of the last pass with another filling; without jets nothing is drawn. */
    FluidState left(double charge, double temperature) {
        Setup filled = setup().withBottle(new BottleFill(charge, temperature));
        return Evaluate.bottle(new Bottles(), car(), filled, at())
                .map(BottleOutcome::end)
                .orElseGet(() -> charged(charge, temperature));
    }

    /** The models with another filling, jets and weather of the case left as they are. */
    Outcome filled(double charge, double temperature) {
        return Evaluate.of(car(), setup().withBottle(new BottleFill(charge, temperature)), at());
    }

    /** The inputs of {@link #again}: a point made anew by the models, as they are coupled. */
    static final String[] RUN = {
        "engine-speed",
        "plenum-pressure",
        "ambient-pressure",
        "ambient-temperature",
        "humidity",
        "lambda-main",
        "nitrous-flow",
        "nitrous-fuel-flow",
        "spark-retard"
    };

    OperatingPoint again(double... x) {
        return run(car(), x);
    }

    /** The same with another share of the cycle and of the nitrous work. */
    OperatingPoint again(double share, double nitrousShare, double... x) {
        NitrousFactor band = car().model().nitrous();
        return run(
                car().with(car().model()
                        .with(new EngineFactor(share))
                        .with(new NitrousFactor(nitrousShare, band.low(), band.high()))),
                x);
    }

    private OperatingPoint run(Car with, double... x) {
        Setup set = setup().withMixture(x[5]);
        PointModel made = PointModel.of(
                with,
                nitrous() ? set.withRetard(x[8]) : set,
                at().withAir(new MoistAir(x[2], x[3], x[4])),
                point.bottle());
        FeedFlow feed = x[6] == point.nitrous().massFlow()
                ? point.nitrous()
                : point.nitrous().times(x[6] / point.nitrous().massFlow());
        FuelFlow fuel = x[7] == point.nitrousFuel().massFlow()
                ? point.nitrousFuel()
                : point.nitrousFuel().times(x[7] / point.nitrousFuel().massFlow());
        return made.at(x[0], x[1], point.mode(), feed, fuel);
    }

    /** The car with another hole of its nitrous solenoid. */
    Car withSolenoid(double bore) {
        WetKit kit = car().nitrous();
        NitrousCircuit n = kit.nitrous();
        Solenoid s = n.solenoid();
        NitrousCircuit changed = new NitrousCircuit(
                n.valve(),
                n.hoseBore(),
                n.hoseLength(),
                n.filterLoss(),
                new Solenoid(bore, s.dischargeCoefficient(), s.openingDelay(), s.closingDelay()),
                n.lineBore(),
                n.lineLength(),
                n.jet());
        return car().with(kit.withNitrous(changed));
    }
}
