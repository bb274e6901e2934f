package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.nitrous.JetPair;
import org.shotledger.supply.Regulator;

/**
 * The usual faults of a wet nitrous system. Their sizes and times of growth are examples, common practice without a source; a fault of
 * another size is one line in a notebook.
 */
public final class CommonFaults {
    /** K: our choice, a thermostat that sticks. */
    private static final double WARMER = 6;
    /** K: our choice, a bottle that was not heated. */
    private static final double COLDER = 15;
    /** Share of the fuel pressure that a weak pump may lose: our choice. */
    private static final double SAG = 0.3;
    /** Pa: our choice, a wastegate's hose that leaks. */
    private static final double CREEP = 0.4e5;
    /** V: our choice, an alternator that no longer charges. */
    private static final double VOLTAGE_LOST = 3;
    /** Pa: our choice, what is left of a pressure that is gone. */
    private static final double LOWEST_RAIL = 0.5e5;
    /** How long a fault takes to grow where nothing better is known, s: our choice. */
    private static final double SECOND = 1;
    /** Flow goes with the root of the drop: three quarters of it gone leave half. */
    private static final double DROP_FOR_HALF = 0.75;

    private CommonFaults() {}

    /**
     * The list for a plan. A state in which the car really starts, such as a bottle as it was charged, is no fault: the plan is worked
     * out in it.
     *
     * @param sound the scenario as planned
     * @return the faults
     */
    public static List<Fault> of(Scenario sound) {
        List<Fault> all = new ArrayList<>();
        bottle(sound, all);
        fuel(sound, all);
        solenoids(sound, all);
        engine(all);
        mistakes(sound, all);
        return all;
    }

    private static void bottle(Scenario sound, List<Fault> all) {
        double start = sound.bottle().temperature();
        all.add(Fault.before("bottle too hot", s -> s.withBottleTemperature(start + WARMER))
                .because("thermostat stuck or sun: 6 K above plan"));
        all.add(Fault.before("bottle too cold", s -> s.withBottleTemperature(start - COLDER))
                .because("heater off: 15 K below plan"));
        all.add(Fault.growing("bottle empty at full power", 0.3, CommonFaults::emptied)
                .because("the siphon uncovers: vapour instead of liquid at nearly the same pressure"));
    }

    /** A full bottle may stand above its vapour pressure; once vapour flows it has fallen to it. */
    private static Scenario emptied(Scenario s, double severity) {
        double temperature = Math.min(s.bottle().temperature(), NitrousOxide.CRITICAL_TEMPERATURE - 0.1);
        return severity == 0 ? s : s.withBottle(NitrousOxide.mixture(temperature, severity));
    }

    private static void fuel(Scenario sound, List<Fault> all) {
        int nozzles = sound.car().nitrous().nozzles();
        all.add(Fault.growing(
                        "fuel pressure sags", SECOND, (s, x) -> s.withFuelPressure(s.fuelPressure() * (1 - SAG * x)))
                .because("regulator or pump loses 30 % of the set pressure"));
        all.add(Fault.growing("fuel filter clogs", SECOND, CommonFaults::clogged)
                .because(
                        sound.onMainRail()
                                ? "in the branch to the nozzles, until half of their fuel flows"
                                : "behind the regulator, until half the fuel flows"));
        if (sound.onMainRail()) {
            rail(sound, all);
        } else {
            all.add(Fault.growing("nitrous fuel cell empty", 0.5, CommonFaults::drawsAir)
                    .because("the pump draws air and the rail falls"));
        }
        all.add(Fault.sudden("one fuel jet blocked", s -> s.withOpenJets(nozzles, nozzles - 1))
                .because(nozzles == 1 ? "the only jet" : "dirt in one of " + nozzles));
        all.add(Fault.sudden("one nitrous jet blocked", s -> s.withOpenJets(nozzles - 1, nozzles))
                .because(nozzles == 1 ? "the only jet" : "dirt or ice in one of " + nozzles));
    }

    private static Scenario drawsAir(Scenario s, double severity) {
        return s.withFuelPressure(s.fuelPressure() + severity * (LOWEST_RAIL - s.fuelPressure()));
    }

    /** What takes pressure from both fuels at once. */
    private static void rail(Scenario sound, List<Fault> all) {
        all.add(Fault.growing("main tank empty at the pickup", 0.5, CommonFaults::drawsAir)
                .because("the pumps draw air and the rail falls for injectors and nozzles"));
        all.add(
                Fault.growing(
                                "main fuel filter clogs",
                                SECOND,
                                (s, x) -> s.withFuelPressure(
                                        Math.max(LOWEST_RAIL, s.fuelPressure() * (1 - DROP_FOR_HALF * x))))
                        .because(
                                "before the rail: a quarter of the set pressure is left, half of both flows where it follows the boost"));
        if (sound.setup().mainRegulator().boostReference() > 0) {
            all.add(Fault.sudden(
                            "rail loses its boost reference",
                            s -> s.withRegulator(
                                    new Regulator(s.setup().mainRegulator().name(), s.fuelPressure(), 0)))
                    .because("hose off: the boost stands against injectors and nozzles"));
        }
    }

    /** Three times the circuit's own resistance more lets half the flow through at the same pressure. */
    private static Scenario clogged(Scenario s, double severity) {
        if (severity == 0) {
            return s;
        }
        var circuit = s.car().nitrous().fuel();
        double jets = s.fuelOpen() * circuit.jetArea(s.jets().fuelBore());
        double passages = s.car()
                .nitrous()
                .passages()
                .map(p -> s.fuelOpen() * circuit.jetArea(p.fuelBore()))
                .orElse(Double.POSITIVE_INFINITY);
        double behind = 1 / Math.hypot(1 / jets, 1 / passages);
        double whole = 1 / Math.hypot(1 / behind, 1 / circuit.solenoid().effectiveArea());
        return s.withFuelRestriction(whole / Math.sqrt(3 * severity));
    }

    private static void solenoids(Scenario sound, List<Fault> all) {
        int nozzles = sound.car().nitrous().nozzles();
        all.add(Fault.sudden(
                        "nitrous solenoid sticks open",
                        s -> s.withOpenJets(nozzles, 0).withoutRetard())
                .because("at the cut fuel and retard go, the nitrous stays")
                .thatClosingDoesNotEnd());
        all.add(Fault.sudden("fuel solenoid stays closed", s -> s.withOpenJets(nozzles, 0))
                .because("wire, relay or coil: nitrous without its fuel"));
        all.add(Fault.sudden("fuel solenoid sticks open", s -> s.withOpenJets(0, nozzles))
                .because("after the cut fuel still flows")
                .thatClosingDoesNotEnd());
    }

    private static void engine(List<Fault> all) {
        all.add(Fault.growing("boost creeps", 0.5, (s, x) -> s.withBoostShift(CREEP * x))
                .because("wastegate or its hose: 0.4 bar in half a second"));
        all.add(Fault.growing("voltage falls", 2, (s, x) -> s.withVoltage(s.at().voltage() - VOLTAGE_LOST * x))
                .because("alternator or ground: 3 V in two seconds"));
    }

    private static void mistakes(Scenario sound, List<Fault> all) {
        all.add(Fault.before(
                        "jets swapped",
                        s -> s.withJets(new JetPair(
                                /* nitrousBore= */ s.jets().fuelBore(),
                                /* fuelBore= */ s.jets().nitrousBore())))
                .because("each jet in the other's place"));
        Fuel main = sound.fuels().main();
        if (!sound.onMainRail()) {
            inTheCell(sound.fuels().nitrous(), all);
        }
        Fuel other = leaner(main);
        all.add(Fault.before(other.name() + " in the main tank", s -> s.withMainFuel(other))
                .because(
                        sound.onMainRail()
                                ? "injectors and nozzles pass the same volume"
                                : "the injectors pass the same volume"));
    }

    private static void inTheCell(Fuel cell, List<Fault> all) {
        Fuel leaner = leaner(cell);
        all.add(Fault.before(leaner.name() + " in the nitrous fuel cell", s -> s.withNitrousFuel(leaner))
                .because("needs less air for the same volume: leaner"));
        if (cell.stoichiometricAirFuel() < Fuels.GASOLINE.stoichiometricAirFuel()) {
            all.add(Fault.before(
                            Fuels.GASOLINE.name() + " in the nitrous fuel cell", s -> s.withNitrousFuel(Fuels.GASOLINE))
                    .because("needs more air for the same volume: richer, and knocks earlier"));
        }
    }

    /** The next fuel at hand that needs less air. */
    private static Fuel leaner(Fuel fuel) {
        double air = fuel.stoichiometricAirFuel();
        if (air > 1.1 * Fuels.ethanolBlend(0.85).stoichiometricAirFuel()) {
            return Fuels.ethanolBlend(0.85);
        }
        return air > 1.01 * Fuels.ETHANOL.stoichiometricAirFuel() ? Fuels.ETHANOL : Fuels.METHANOL;
    }
}
