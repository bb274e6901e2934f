package org.shotledger.evaluate;

import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.FuelStreams;
import org.shotledger.engine.Charge;
import org.shotledger.engine.Cycle;
import org.shotledger.engine.CycleInput;
import org.shotledger.engine.CycleTable;
import org.shotledger.engine.CycleTrace;
import org.shotledger.engine.EndGas;
import org.shotledger.engine.Intake;
import org.shotledger.engine.TrappedCharge;
import org.shotledger.fuel.Mixture;

/** From a charge to work, pressure, exhaust and knock of the cylinders. */
final class CylinderModel {
    /** Residual gas under full load: common practice, no source. */
    private static final double RESIDUAL_TEMPERATURE = 1150;
    /** Half of the fuel that arrives liquid takes its heat from the gas before it burns: common practice, no source. */
    private static final double LATE_EVAPORATION = 0.5;
    /** Mean of piston, head and liner under full load: common practice, no source. */
    private static final double WALL_TEMPERATURE = 450;
    /** Only a place holder: the knock index takes the octane number of the end gas. */
    private static final double ANY_OCTANE = 95;

    private final Car car;
    private final EngineModel model;
    private final CycleTable table;

    CylinderModel(Car car, FuelStreams fuels) {
        this.car = car;
        this.model = car.model();
        this.table = model.cycles().of(fuels.main(), fuels.nitrous());
    }

    /**
     * What a charge is before the spark.
     *
     * @param trapped what the cylinders hold
     * @param gas what may knock
     * @param base the cycle's input with the burning of the base pull
     * @param nitrous whether it burns as with nitrous
     * @param baseWork with nitrous the work of the base cycle, J
     * @param work gross indicated power of a charge that burns as in the base pull, W, without what is lost to late evaporation
     */
    record Ready(TrappedCharge trapped, EndGas gas, CycleInput base, boolean nitrous, double baseWork, double work) {}

    /**
     * What a charge does.
     *
     * @param indicated gross indicated power of all cylinders, W, before the factors of a case
     * @param cycle the closed cycle of one cylinder with its own burning
     * @param knock knock index over that of the base pull at the same speed; NaN before calibration
     * @param index knock index
     * @param heat released in all cylinders, W
     * @param base the cycle's input with the burning of the base pull
     */
    record Burned(double indicated, Cycle cycle, double knock, double index, double heat, CycleInput base) {}

    /** @param nitrous whether it burns as with nitrous */
    Ready ready(double rpm, Intake intake, Charge charge, double exhaustPressure, boolean nitrous, double nitrousWork) {
        TrappedCharge.Inside inside = new TrappedCharge.Inside(exhaustPressure, RESIDUAL_TEMPERATURE, LATE_EVAPORATION);
        TrappedCharge trapped = TrappedCharge.reacting(car.engine(), rpm, charge, inside);
        CycleInput base =
                trapped.cycle(rpm, model.phasing().burning(0, 1), WALL_TEMPERATURE, exhaustPressure, ANY_OCTANE);
        Mixture mixture = charge.mixture();
        double ideal = table.power(mixture, trapped.temperature(), charge.pressure());
        return new Ready(
                trapped,
                EndGas.of(intake, charge, trapped),
                base,
                nitrous,
                nitrous ? model.cylinder().run(base).work() : 0,
                mixture.nitrous() > 0 ? withNitrous(mixture, trapped, charge, ideal, nitrousWork) : ideal);
    }

    /** @param retard spark later than the builder's own, crank degrees; only with nitrous */
    Burned burn(double rpm, Ready ready, double retard) {
        CycleInput own = ready.nitrous
                ? ready.base.withBurning(model.phasing().burning(retard, EngineModel.NITROUS_DURATION))
                : ready.base;
        Cycle cycle = model.knock().cycle(model.cylinder(), ready.gas, own);
        double ratio = ready.nitrous ? cycle.work() / ready.baseWork : 1;
        double index = model.knock().index(model.cylinder(), ready.gas, own, cycle);
        double cycles = car.engine().cylinders() * rpm / 120;
        return new Burned(
                model.factor().value() * ratio * ready.trapped.heatLeft() * ready.work,
                cycle,
                model.baseKnock().map(pull -> index / pull.clamped(rpm)).orElse(Double.NaN),
                index,
                ready.trapped.heat() * cycles,
                ready.base);
    }

    /** What arrives of the work; a case may have the share of the nitrous off by a factor. */
    private double withNitrous(
            Mixture mixture, TrappedCharge trapped, Charge charge, double ideal, double nitrousWork) {
        double air = table.airPower(mixture, trapped.temperature(), charge.pressure());
        return air + nitrousWork * (model.nitrous().work(ideal, air) - air);
    }

    CycleTrace trace(CycleInput input, double retard, boolean nitrous) {
        return model.cylinder()
                .trace(input.withBurning(model.phasing().burning(retard, nitrous ? EngineModel.NITROUS_DURATION : 1)));
    }

    Cycle run(CycleInput input, double retard, boolean nitrous) {
        return model.cylinder()
                .run(input.withBurning(model.phasing().burning(retard, nitrous ? EngineModel.NITROUS_DURATION : 1)));
    }
}
