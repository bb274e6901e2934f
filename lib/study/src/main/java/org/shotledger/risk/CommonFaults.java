package org.shotledger.risk;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.budget.BottlePlan;
import org.shotledger.budget.Budget;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.nitrous.JetPair;

/**
 * The usual faults of a wet kit. Their sizes and times of growth are examples, common practice without a source; a fault of
 * another size is one line in a notebook.
 */
public final class CommonFaults {
    private static final double WARMER = 6;
    private static final double COLDER = 15;
    private static final double SAG = 0.3;
    private static final double CREEP = 0.4e5;
    private static final double VOLTAGE_LOST = 3;
    private static final double LOWEST_RAIL = 0.5e5;
    private static final double SECOND = 1;
    /** A vessel this much above the vapour pressure has no vapour. */
    private static final double FULL = 1e-3;

    private CommonFaults() {}

    /**
     * The list for a budget's plan.
     *
     * @param budget the budget
     * @return the faults
     */
    public static List<Fault> of(Budget budget) {
        List<Fault> all = new ArrayList<>();
        bottle(budget, all);
        fuel(budget, all);
        solenoids(budget, all);
        engine(all);
        mistakes(budget, all);
        return all;
    }

    private static void bottle(Budget budget, List<Fault> all) {
        double start = budget.build().bottle().startTemperature();
        all.add(Fault.before("bottle too hot", s -> s.withBottleTemperature(start + WARMER))
                .because("thermostat stuck or sun: 6 K above plan"));
        all.add(Fault.before("bottle too cold", s -> s.withBottleTemperature(start - COLDER))
                .because("heater off: 15 K below plan"));
        if (budget.bottle().startPressure() > budget.conditions().bottleLiquid().pressure() * (1 + FULL)) {
            all.add(Fault.before("bottle full of liquid", s -> s.withBottleTemperature(start))
                    .because("no vapour left at the start temperature: the first second of the first pass"));
        }
        double seconds = budget.wish().passSeconds();
        if (seconds > 0) {
            double first = budget.conditions().bottleLiquid().pressure();
            double last = pressureAt(budget.bottle(), seconds);
            all.add(Fault.growing(
                            "bottle cools through a pass",
                            seconds,
                            (s, x) -> s.withBottlePressure(first + x * (last - first)))
                    .because("evaporation cools what is left"));
        }
        all.add(Fault.growing(
                        "bottle empty at full power",
                        0.3,
                        (s, x) -> s.withBottle(NitrousOxide.mixture(saturated(s), x)))
                .because("the siphon uncovers: vapour instead of liquid at nearly the same pressure"));
    }

    /** A full bottle may stand above its vapour pressure; once vapour flows it has fallen to it. */
    private static double saturated(Situation s) {
        return Math.min(s.conditions().bottleLiquid().temperature(), NitrousOxide.CRITICAL_TEMPERATURE - 0.1);
    }

    private static double pressureAt(BottlePlan plan, double seconds) {
        BottlePlan.Moment at = plan.history().get(0);
        for (BottlePlan.Moment moment : plan.history()) {
            at = moment.time() <= seconds ? moment : at;
        }
        return NitrousOxide.saturationPressure(at.temperature());
    }

    private static void fuel(Budget budget, List<Fault> all) {
        int nozzles = budget.build().wetKit().nozzles();
        all.add(Fault.growing(
                        "fuel pressure sags", SECOND, (s, x) -> s.withFuelPressure(s.fuelPressure() * (1 - SAG * x)))
                .because("regulator or pump loses 30 % of the set pressure"));
        all.add(Fault.growing("fuel filter clogs", SECOND, CommonFaults::clogged)
                .because("behind the regulator, until half the fuel flows"));
        all.add(Fault.growing(
                        "nitrous fuel cell empty",
                        0.5,
                        (s, x) -> s.withFuelPressure(s.fuelPressure() + x * (LOWEST_RAIL - s.fuelPressure())))
                .because("the pump draws air and the rail falls"));
        all.add(Fault.sudden("one fuel jet blocked", s -> s.withOpenJets(nozzles, nozzles - 1))
                .because(nozzles == 1 ? "the only jet" : "dirt in one of " + nozzles));
        all.add(Fault.sudden("one nitrous jet blocked", s -> s.withOpenJets(nozzles - 1, nozzles))
                .because(nozzles == 1 ? "the only jet" : "dirt or ice in one of " + nozzles));
    }

    /** Three times the circuit's own resistance more lets half the flow through at the same pressure. */
    private static Situation clogged(Situation s, double severity) {
        if (severity == 0) {
            return s;
        }
        var circuit = s.build().wetKit().fuel();
        double bore = s.jets().fuelBore();
        double jets = s.fuelOpen() * circuit.jetArea(bore);
        double whole = 1 / Math.hypot(1 / jets, 1 / circuit.solenoid().effectiveArea());
        return s.withFuelRestriction(whole / Math.sqrt(3 * severity));
    }

    private static void solenoids(Budget budget, List<Fault> all) {
        int nozzles = budget.build().wetKit().nozzles();
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
        all.add(Fault.growing(
                        "voltage falls",
                        2,
                        (s, x) -> s.withVoltage(s.conditions().voltage() - VOLTAGE_LOST * x))
                .because("alternator or ground: 3 V in two seconds"));
    }

    private static void mistakes(Budget budget, List<Fault> all) {
        all.add(Fault.before(
                        "jets swapped",
                        s -> s.withJets(new JetPair(
                                /* nitrousBore= */ s.jets().fuelBore(),
                                /* fuelBore= */ s.jets().nitrousBore())))
                .because("each jet in the other's place"));
        Fuel kit = budget.build().fuels().nitrous();
        Fuel main = budget.build().fuels().main();
        Fuel leaner = leaner(kit);
        all.add(Fault.before(leaner.name() + " in the kit's cell", s -> s.withNitrousFuel(leaner))
                .because("needs less air for the same volume: leaner"));
        if (kit.stoichiometricAirFuel() < Fuels.GASOLINE.stoichiometricAirFuel()) {
            all.add(Fault.before(Fuels.GASOLINE.name() + " in the kit's cell", s -> s.withNitrousFuel(Fuels.GASOLINE))
                    .because("needs more air for the same volume: richer, and knocks earlier"));
        }
        Fuel other = leaner(main);
        all.add(Fault.before(other.name() + " in the main tank", s -> s.withMainFuel(other))
                .because("the injectors pass the same volume"));
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
