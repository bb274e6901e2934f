package org.shotledger.risk;

import java.util.function.UnaryOperator;
import org.shotledger.car.Car;
import org.shotledger.car.FuelStreams;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fluid.FluidState;
import org.shotledger.fuel.Fuel;
import org.shotledger.nitrous.FuelCircuit;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.Solenoid;
import org.shotledger.plan.Plan;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;
import org.shotledger.supply.Regulator;
import org.shotledger.units.Require;

/**
 * The engine with its nitrous system at full throttle, as planned or disturbed. A disturbance is a changed car, setup or case;
 * the models stay those that were calibrated on the sound engine, and the boost line stays that of the plan.
 *
 * @param car what is built
 * @param setup what is set, with jets
 * @param at what the world is
 * @param bottle state at rest of what enters the siphon
 * @param nitrousOpen nitrous jets that pass, 0 to the number of nozzles
 * @param fuelOpen fuel jets that pass, 0 to the number of nozzles
 * @param boostShift plenum pressure above the planned line, Pa, at every engine speed, -5e5 to 5e5
 * @param tuned main regulator as it stood when the injectors' times were made; a disturbed one stands in the setup, and where the nitrous
 *     fuel comes from the main rail both fuels follow it
 */
public record Scenario(
        Car car,
        Setup setup,
        Case at,
        FluidState bottle,
        int nitrousOpen,
        int fuelOpen,
        double boostShift,
        Regulator tuned) {

    public Scenario {
        int nozzles = car.nitrous().nozzles();
        Require.within("number of open nitrous jets", nitrousOpen, 0, nozzles, "");
        Require.within("number of open fuel jets", fuelOpen, 0, nozzles, "");
        Require.within("change of boost", boostShift, -5e5, 5e5, "Pa");
    }

    /**
     * A plan in the case of its target.
     *
     * @param plan the plan
     * @return everything as planned, the bottle as the stated outcome has it
     * @throws IllegalArgumentException when the plan has no operating point with nitrous
     */
    public static Scenario of(Plan plan) {
        FluidState bottle = plan.stated().withNitrous().stream()
                .map(OperatingPoint::bottle)
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("The plan of " + plan.job().name()
                                + " has no operating point with nitrous; faults and drift need one: choose jets, or a target"
                                + " that boost alone does not reach."));
        int nozzles = plan.car().nitrous().nozzles();
        return new Scenario(
                plan.car(),
                plan.setup(),
                plan.stated().at(),
                bottle,
                nozzles,
                nozzles,
                0,
                plan.setup().mainRegulator());
    }

    /**
     * The jets of each nozzle.
     *
     * @return the pair
     */
    public JetPair jets() {
        return setup.jets().orElseThrow();
    }

    /**
     * Whether any nitrous flows.
     *
     * @return true while a nitrous jet is open
     */
    public boolean flows() {
        return nitrousOpen > 0;
    }

    /**
     * The same with a changed setup, for example {@code s.withSetup(x -> x.withRetard(0))}.
     *
     * @param change what changes
     * @return the changed scenario
     */
    public Scenario withSetup(UnaryOperator<Setup> change) {
        return new Scenario(car, change.apply(setup), at, bottle, nitrousOpen, fuelOpen, boostShift, tuned);
    }

    /**
     * The same with a changed car.
     *
     * @param change what changes
     * @return the changed scenario
     */
    public Scenario withCar(UnaryOperator<Car> change) {
        return new Scenario(change.apply(car), setup, at, bottle, nitrousOpen, fuelOpen, boostShift, tuned);
    }

    /**
     * The same in a changed case; the state of the bottle stays, see {@link #withBottle}.
     *
     * @param change what changes
     * @return the changed scenario
     */
    public Scenario withCase(UnaryOperator<Case> change) {
        return new Scenario(car, setup, change.apply(at), bottle, nitrousOpen, fuelOpen, boostShift, tuned);
    }

    /**
     * The same with other jets.
     *
     * @param pair jets of each nozzle
     * @return the changed scenario
     */
    public Scenario withJets(JetPair pair) {
        return withSetup(s -> s.withJets(pair));
    }

    /**
     * The same with jets that do not pass.
     *
     * @param nitrous nitrous jets that pass, 0 to the number of nozzles
     * @param fuel fuel jets that pass, 0 to the number of nozzles
     * @return the changed scenario
     */
    public Scenario withOpenJets(int nitrous, int fuel) {
        return new Scenario(car, setup, at, bottle, nitrous, fuel, boostShift, tuned);
    }

    /**
     * The same with more or less boost than the controller's table asks for.
     *
     * @param shift change of plenum pressure, Pa, -5e5 to 5e5
     * @return the changed scenario
     */
    public Scenario withBoostShift(double shift) {
        return new Scenario(car, setup, at, bottle, nitrousOpen, fuelOpen, shift, tuned);
    }

    /**
     * The same with another state of the nitrous oxide at the siphon.
     *
     * @param state state at rest at the inlet of the feed path
     * @return the changed scenario
     */
    public Scenario withBottle(FluidState state) {
        return new Scenario(car, setup, at, state, nitrousOpen, fuelOpen, boostShift, tuned);
    }

    /**
     * The same with the bottle at another pressure because it is warmer or colder.
     *
     * @param pressure bottle pressure, Pa absolute
     * @return the changed scenario
     * @throws IllegalArgumentException when no temperature that the models cover gives that pressure
     */
    public Scenario withBottlePressure(double pressure) {
        return pressure == bottle.pressure() ? this : withBottle(new SoakedBottle(this).atPressure(pressure));
    }

    /**
     * The same with the bottle soaked at another temperature. A bottle as charged keeps its charge: its liquid is saturated while
     * vapour is left, and compressed when liquid fills the vessel. A bottle that has been drawn from holds liquid and vapour.
     *
     * @param temperature temperature of bottle and contents, K
     * @return the changed scenario
     */
    public Scenario withBottleTemperature(double temperature) {
        return withBottle(new SoakedBottle(this).atTemperature(temperature));
    }

    /**
     * The same with another supply voltage.
     *
     * @param voltage V, 8 to 18
     * @return the changed scenario
     */
    public Scenario withVoltage(double voltage) {
        return withCase(c -> c.withVoltage(voltage));
    }

    /**
     * Pressure the regulator of the nitrous fuel is set to.
     *
     * @return Pa above ambient with its reference port at ambient
     */
    public double fuelPressure() {
        return setup.nitrousRegulator().basePressure();
    }

    /**
     * The same with the regulator of the nitrous fuel set to another pressure.
     *
     * @param pressure Pa above ambient with its reference port at ambient, 0.5e5 to 10e5
     * @return the changed scenario
     */
    public Scenario withFuelPressure(double pressure) {
        Regulator old = setup.nitrousRegulator();
        return withRegulator(new Regulator(old.name(), pressure, old.boostReference()));
    }

    /**
     * The same with another regulator of the nitrous fuel; where that comes from the main rail, of both fuels.
     *
     * @param regulator the regulator
     * @return the changed scenario
     */
    public Scenario withRegulator(Regulator regulator) {
        return withSetup(s -> onMainRail() ? s.withMainRegulator(regulator) : s.withNitrousRegulator(regulator));
    }

    /**
     * Whether the nitrous fuel comes from the main rail.
     *
     * @return true when injectors and nitrous fuel share pressure and pumps
     */
    public boolean onMainRail() {
        return car.nitrous().fuel().onMainRail();
    }

    /**
     * The same with one more restriction in the nitrous fuel line, an orifice in series with the solenoid.
     *
     * @param effectiveArea discharge coefficient times area, m2, positive
     * @return the changed scenario
     */
    public Scenario withFuelRestriction(double effectiveArea) {
        Require.positive("effective area of a restriction", effectiveArea, "m2");
        FuelCircuit circuit = car.nitrous().fuel();
        Solenoid old = circuit.solenoid();
        double both = 1 / Math.hypot(1 / old.effectiveArea(), 1 / effectiveArea);
        double bore = old.bore() * Math.sqrt(both / old.effectiveArea());
        Solenoid narrower = new Solenoid(bore, old.dischargeCoefficient(), old.openingDelay(), old.closingDelay());
        return withCar(c -> c.with(c.nitrous().withFuel(circuit.withSolenoid(narrower))));
    }

    /**
     * The fuels of this scenario.
     *
     * @return those of the car with the ethanol content of the case
     */
    public FuelStreams fuels() {
        return car.fuels().with(at.ethanol());
    }

    /**
     * The same with another fuel in the nitrous fuel cell.
     *
     * @param fuel the fuel
     * @return the changed scenario
     */
    public Scenario withNitrousFuel(Fuel fuel) {
        return withCar(c -> c.with(fuels().withNitrous(fuel)));
    }

    /**
     * The same with another fuel in the main tank, which is that of the nitrous system too where it draws from the main rail. The
     * injectors do not know it and pass the same volume, so the mixture of
     * the engine's own fuel changes with {@code density x stoichiometric air}.
     *
     * @param fuel the fuel
     * @return the changed scenario
     */
    public Scenario withMainFuel(Fuel fuel) {
        FuelStreams f = fuels();
        double was = f.main().density(f.temperature()) * f.main().stoichiometricAirFuel();
        double is = fuel.density(f.temperature()) * fuel.stoichiometricAirFuel();
        FuelStreams filled = onMainRail() ? f.withMain(fuel).withNitrous(fuel) : f.withMain(fuel);
        return withCar(c -> c.with(filled)).withMainMixture(was / is);
    }

    /**
     * The same with the main mixture leaner or richer than metered for.
     *
     * @param factor on the lambda of air and main fuel, 0.1 or more; above 1 is leaner
     * @return the changed scenario
     */
    public Scenario withMainMixture(double factor) {
        return withCase(c -> c.with(Factor.MAIN_FUEL, c.factors().of(Factor.MAIN_FUEL) / factor));
    }

    /**
     * The same with the spark where it stands without nitrous, as when the controller believes the nitrous is off.
     *
     * @return the changed scenario
     */
    public Scenario withoutRetard() {
        return withSetup(s -> s.withRetard(0));
    }
}
