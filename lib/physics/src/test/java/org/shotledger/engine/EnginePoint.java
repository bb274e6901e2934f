package org.shotledger.engine;

import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Oxidisers;

/**
 * One operating point for the tests, in the order in which an evaluation asks the models.
 *
 * @param charge what is breathed
 * @param trapped what is in the cylinder
 * @param base the cycle with the base pull's burning
 * @param indicated gross indicated power, W
 * @param brake power at the flywheel, W
 * @param cycle the closed cycle with the point's own burning
 */
record EnginePoint(Charge charge, TrappedCharge trapped, CycleInput base, double indicated, double brake, Cycle cycle) {
    static final double PLENUM = 2.4e5;
    static final double EXHAUST = 2.6e5;
    static final double WALL = 450;

    /**
     * What may differ between points.
     *
     * @param fuel both fuels
     * @param rpm crankshaft speed
     * @param lambda total, held by the nitrous circuit's fuel too
     * @param nitrous kg/s
     * @param airTemperature after the charge cooler, K
     * @param humidityRatio kg/kg
     * @param retard deg
     * @param share of the nitrous work that arrives
     */
    record Setting(
            Fuel fuel,
            double rpm,
            double lambda,
            double nitrous,
            double airTemperature,
            double humidityRatio,
            double retard,
            double share) {
        static Setting of(Fuel fuel, double rpm, double lambda, double nitrous) {
            return new Setting(fuel, rpm, lambda, nitrous, 320, 0.008, 0, 1);
        }

        Setting retarded(double deg) {
            return new Setting(fuel, rpm, lambda, nitrous, airTemperature, humidityRatio, deg, share);
        }

        Setting sharing(double newShare) {
            return new Setting(fuel, rpm, lambda, nitrous, airTemperature, humidityRatio, retard, newShare);
        }

        Setting in(double newTemperature, double newHumidity) {
            return new Setting(fuel, rpm, lambda, nitrous, newTemperature, newHumidity, retard, share);
        }
    }

    static EnginePoint at(Engine engine, CycleTable table, EngineFactor factor, Setting s) {
        var supplied = new Intake.FuelSupplied(s.fuel, 298.15, 0.3);
        double extra = s.nitrous * Oxidisers.OXYGEN_IN_NITROUS_OXIDE / (s.lambda * s.fuel.oxygenDemand());
        double enthalpy = NitrousOxide.saturatedLiquid(293.15).enthalpy();
        Intake intake = new Intake(
                PLENUM,
                s.airTemperature,
                s.humidityRatio,
                s.nitrous,
                enthalpy,
                supplied,
                s.lambda,
                supplied,
                extra,
                Intake.Warming.USUAL);
        Charge charge = ChargeMixing.mix(intake, engine.breathedVolume(s.rpm));
        var inside = new TrappedCharge.Inside(EXHAUST, 1150, 0.5);
        TrappedCharge trapped = TrappedCharge.reacting(engine, s.rpm, charge, inside);
        CycleInput base = trapped.cycle(s.rpm, BurnPhasing.USUAL.burning(0, 1), WALL, EXHAUST, 95);
        Wiebe burning = BurnPhasing.USUAL.burning(s.retard, 1);
        Cylinder cylinder = Cylinder.of(engine);
        Cycle cycle = cylinder.run(base.withBurning(burning));
        double ideal = new NitrousFactor(s.share, s.share, s.share)
                .work(
                        table.power(charge.mixture(), trapped.temperature(), PLENUM),
                        table.airPower(charge.mixture(), trapped.temperature(), PLENUM));
        double indicated = factor.value()
                * trapped.heatLeft()
                * ideal
                * (cylinder.run(base.withBurning(burning)).work()
                        / cylinder.run(base).work());
        double friction = ChenFlynn.TYPICAL.meanEffectivePressure(cycle.peakPressure(), engine.meanPistonSpeed(s.rpm));
        double brake = indicated - (friction + EXHAUST - PLENUM) * engine.displacementRate(s.rpm);
        return new EnginePoint(charge, trapped, base, indicated, brake, cycle);
    }
}
