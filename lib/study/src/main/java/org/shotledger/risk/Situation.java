package org.shotledger.risk;

import java.util.function.UnaryOperator;
import org.shotledger.budget.Budget;
import org.shotledger.budget.Conditions;
import org.shotledger.budget.Evaluator;
import org.shotledger.build.Build;
import org.shotledger.build.FuelStreams;
import org.shotledger.build.Tune;
import org.shotledger.fluid.FluidState;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Require;

/**
 * The engine with its wet kit at full throttle, as planned or disturbed. The models stay those that were calibrated on the
 * sound engine.
 *
 * @param evaluator build and calibrated models
 * @param conditions what surrounds the engine
 * @param jets jets of each nozzle
 * @param nitrousOpen nitrous jets that pass, 0 to the number of nozzles
 * @param fuelOpen fuel jets that pass, 0 to the number of nozzles
 * @param boostShift plenum pressure above what the controller's table asks for, Pa, at every engine speed
 */
public record Situation(
        Evaluator evaluator, Conditions conditions, JetPair jets, int nitrousOpen, int fuelOpen, double boostShift) {

    /** Checks the counts. */
    public Situation {
        int nozzles = evaluator.build().wetKit().nozzles();
        Require.within("number of open nitrous jets", nitrousOpen, 0, nozzles, "");
        Require.within("number of open fuel jets", fuelOpen, 0, nozzles, "");
        Require.within("change of boost", boostShift, -5e5, 5e5, "Pa");
    }

    /**
     * The plan of a budget.
     *
     * @param budget the budget
     * @return everything as planned
     */
    public static Situation of(Budget budget) {
        int nozzles = budget.build().wetKit().nozzles();
        JetPair jets = budget.peak().demand().jets().orElseThrow();
        return new Situation(budget.evaluator(), budget.conditions(), jets, nozzles, nozzles, 0);
    }

    /**
     * The build, disturbed or not.
     *
     * @return the build
     */
    public Build build() {
        return evaluator.build();
    }

    /**
     * The same with a changed build, for example {@code s.withBuild(b -> b.with("tune.lambda", "0.84"))}.
     *
     * @param change what changes
     * @return the changed situation
     */
    public Situation withBuild(UnaryOperator<Build> change) {
        return with(new Evaluator(change.apply(build()), evaluator.model()));
    }

    /**
     * The same with other jets.
     *
     * @param pair jets of each nozzle
     * @return the changed situation
     */
    public Situation withJets(JetPair pair) {
        return new Situation(evaluator, conditions, pair, nitrousOpen, fuelOpen, boostShift);
    }

    /**
     * The same with jets that do not pass.
     *
     * @param nitrous nitrous jets that pass, 0 to the number of nozzles
     * @param fuel fuel jets that pass, 0 to the number of nozzles
     * @return the changed situation
     */
    public Situation withOpenJets(int nitrous, int fuel) {
        return new Situation(evaluator, conditions, jets, nitrous, fuel, boostShift);
    }

    /**
     * The same with more or less boost than the controller's table asks for.
     *
     * @param shift change of plenum pressure, Pa, -5e5 to 5e5
     * @return the changed situation
     */
    public Situation withBoostShift(double shift) {
        return new Situation(evaluator, conditions, jets, nitrousOpen, fuelOpen, shift);
    }

    /**
     * The same with another state of the nitrous oxide at the siphon.
     *
     * @param state state at rest at the inlet of the feed path
     * @return the changed situation
     */
    public Situation withBottle(FluidState state) {
        return with(new Conditions(conditions.air(), state, conditions.voltage()));
    }

    /**
     * The same with the bottle at another pressure, its liquid saturated.
     *
     * @param pressure bottle pressure, Pa absolute, between triple and critical pressure
     * @return the changed situation
     */
    public Situation withBottlePressure(double pressure) {
        return withBottle(NitrousOxide.saturatedLiquid(NitrousOxide.saturationTemperature(pressure)));
    }

    /**
     * The same with the bottle soaked at another temperature. The charge stays in the vessel, so the liquid is saturated
     * while vapour is left and compressed when the vessel is full of liquid.
     *
     * @param temperature temperature of bottle and contents, K
     * @return the changed situation
     */
    public Situation withBottleTemperature(double temperature) {
        var bottle = build().bottle();
        return withBottle(bottle.vessel().charged(bottle.charge(), temperature).outlet());
    }

    /**
     * The same with another supply voltage.
     *
     * @param voltage V
     * @return the changed situation
     */
    public Situation withVoltage(double voltage) {
        return with(new Conditions(conditions.air(), conditions.bottleLiquid(), voltage));
    }

    /**
     * Pressure the regulator of the nitrous fuel is set to.
     *
     * @return Pa above ambient with its reference port at ambient
     */
    public double fuelPressure() {
        return build().wetKit().fuel().regulator().basePressure();
    }

    /**
     * The same with the regulator of the nitrous fuel set to another pressure.
     *
     * @param pressure Pa above ambient with its reference port at ambient, 0.5e5 to 10e5
     * @return the changed situation
     */
    public Situation withFuelPressure(double pressure) {
        Regulator old = build().wetKit().fuel().regulator();
        return withRegulator(new Regulator(old.name(), pressure, old.boostReference()));
    }

    /**
     * The same with another regulator of the nitrous fuel.
     *
     * @param regulator the regulator
     * @return the changed situation
     */
    public Situation withRegulator(Regulator regulator) {
        return withBuild(b -> Changed.regulator(b, regulator));
    }

    /**
     * The same with one more restriction in the nitrous fuel line, an orifice in series with the solenoid.
     *
     * @param effectiveArea discharge coefficient times area, m2, positive
     * @return the changed situation
     */
    public Situation withFuelRestriction(double effectiveArea) {
        Require.positive("effective area of a restriction", effectiveArea, "m2");
        Solenoid old = build().wetKit().fuel().solenoid();
        double both = 1 / Math.hypot(1 / old.effectiveArea(), 1 / effectiveArea);
        double bore = old.bore() * Math.sqrt(both / old.effectiveArea());
        Solenoid narrower = new Solenoid(bore, old.dischargeCoefficient(), old.openingDelay(), old.closingDelay());
        return withBuild(b -> Changed.fuelSolenoid(b, narrower));
    }

    /**
     * The same with another fuel in the nitrous fuel cell.
     *
     * @param fuel the fuel
     * @return the changed situation
     */
    public Situation withNitrousFuel(Fuel fuel) {
        FuelStreams f = build().fuels();
        return withBuild(b -> Changed.fuels(
                b, new FuelStreams(f.main(), fuel, f.temperature(), f.mainEvaporated(), f.nitrousEvaporated())));
    }

    /**
     * The same with another fuel in the main tank. The injectors do not know it and pass the same volume, so the mixture of
     * the engine's own fuel changes with {@code density x stoichiometric air}.
     *
     * @param fuel the fuel
     * @return the changed situation
     */
    public Situation withMainFuel(Fuel fuel) {
        FuelStreams f = build().fuels();
        double was = f.main().density(f.temperature()) * f.main().stoichiometricAirFuel();
        double is = fuel.density(f.temperature()) * fuel.stoichiometricAirFuel();
        FuelStreams changed =
                new FuelStreams(fuel, f.nitrous(), f.temperature(), f.mainEvaporated(), f.nitrousEvaporated());
        return withBuild(b -> Changed.fuels(b, changed)).withMainMixture(was / is);
    }

    /**
     * The same with the main mixture leaner or richer than tuned.
     *
     * @param factor on the lambda of air and main fuel, positive; above 1 is leaner
     * @return the changed situation
     */
    public Situation withMainMixture(double factor) {
        Tune t = build().tune();
        return withBuild(b -> Changed.tune(b, new Tune(t.lambda() * factor, t.goal(), t.nitrousRetard())));
    }

    /**
     * The same with the spark where it stands without nitrous, as when the controller believes the nitrous is off.
     *
     * @return the changed situation
     */
    public Situation withoutRetard() {
        Tune t = build().tune();
        return withBuild(b -> Changed.tune(b, new Tune(t.lambda(), t.goal(), 0)));
    }

    private Situation with(Evaluator changed) {
        return new Situation(changed, conditions, jets, nitrousOpen, fuelOpen, boostShift);
    }

    private Situation with(Conditions changed) {
        return new Situation(evaluator, changed, jets, nitrousOpen, fuelOpen, boostShift);
    }
}
