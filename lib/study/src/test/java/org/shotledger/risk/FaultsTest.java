package org.shotledger.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.fuel.Fuels;
import org.shotledger.fuel.Mixture;
import org.shotledger.limits.Limit;
import org.shotledger.limits.Verdict;
import org.shotledger.nitrous.JetPair;
import org.shotledger.plan.Plan;
import org.shotledger.risk.Detection.Answer;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.Setup;

/** Faults of the invented demo car. */
class FaultsTest {
    private static final Plan PLAN = Whimbrel.PLAN;
    private static final Faults FAULTS = Faults.of(PLAN);
    private static final double OXYGEN_IN_AIR = 0.2314;
    private static final double OXYGEN_IN_NITROUS = 15.999 / 44.013;

    @Test
    void a_blocked_fuel_jet_leans_its_cylinder_as_the_oxygen_books_say() {
        var stop = BoostLine.of(PLAN).stops().get(0);
        Scenario plan = Scenario.of(PLAN);
        Scenario blocked = plan.withOpenJets(6, 5);
        Cylinders at = Cylinders.of(
                blocked, stop.rpm(), stop.plenumPressure(), SystemFlows.nitrous(blocked, stop.plenumPressure()));
        assertEquals(2, at.groups().size());
        Cylinders.Group starved = at.groups().get(0);
        assertEquals(1, starved.count());
        Mixture m = starved.asIfAll().charge().mixture();
        assertEquals(0, m.nitrousFuelFlow());
        // its main fuel follows its own air at the tuned lambda; the oxygen of its nitrous oxide comes on top
        double own = PLAN.setup().mixture();
        double byHand = own * (1 + OXYGEN_IN_NITROUS * m.nitrous() / (OXYGEN_IN_AIR * m.dryAir()));
        assertEquals(byHand, starved.asIfAll().lambda(), 1e-6 * byHand);
        assertEquals(
                byHand,
                Simulation.run(blocked, BoostLine.at(stop.rpm(), stop.plenumPressure()))
                        .leanest(),
                1e-9);
    }

    @Test
    void fuel_of_a_blocked_jet_goes_to_the_others_as_orifices_in_series_say() {
        // one solenoid in series with n jets: m ~ 1/sqrt(1/S^2 + 1/(n J)^2), so one jet less costs less than its share
        var circuit = PLAN.car().nitrous().fuel();
        double s = circuit.solenoid().effectiveArea();
        double bore = Scenario.of(PLAN).jets().fuelBore();
        double passage = PLAN.car().nitrous().passages().orElseThrow().fuelBore();
        double j = 1 / Math.hypot(1 / circuit.jetArea(bore), 1 / circuit.jetArea(passage));
        double ratio = Math.hypot(1 / s, 1 / (6 * j)) / Math.hypot(1 / s, 1 / (5 * j));
        OperatingPoint sound = peak(Scenario.of(PLAN));
        OperatingPoint blocked = peak(Scenario.of(PLAN).withOpenJets(6, 5));
        assertEquals(
                ratio, blocked.nitrousFuel().massFlow() / sound.nitrousFuel().massFlow(), 1e-9);
    }

    @Test
    void a_sensor_in_the_collector_does_not_see_one_starved_cylinder() {
        FaultEffect one = effect("one fuel jet blocked");
        assertTrue(one.outcome().leanest() > 1, "its cylinder is lean of stoichiometric");
        assertTrue(one.outcome().lambda() < PLAN.car().limits().lambdaHigh(), "the mean looks well");
        assertEquals(Answer.UNSEEN, one.detection().answer());
        assertEquals(Verdict.BROKEN, one.verdict());
        assertTrue(one.detection().couldSee().stream().anyMatch(c -> c.channel().equals("mixture of each cylinder")));
    }

    @Test
    void cylinders_together_carry_what_the_circuits_pass() {
        var stop = BoostLine.of(PLAN).stops().get(2);
        Scenario blocked = Scenario.of(PLAN).withOpenJets(5, 4);
        Cylinders at = Cylinders.of(
                blocked, stop.rpm(), stop.plenumPressure(), SystemFlows.nitrous(blocked, stop.plenumPressure()));
        double nitrous = 0;
        double fuel = 0;
        int count = 0;
        for (Cylinders.Group group : at.groups()) {
            nitrous += group.count() * group.asIfAll().charge().mixture().nitrous() / 6;
            fuel += group.count() * group.asIfAll().charge().mixture().nitrousFuelFlow() / 6;
            count += group.count();
        }
        assertEquals(6, count);
        assertEquals(at.engine().nitrous().massFlow(), nitrous, 1e-12);
        assertEquals(at.engine().nitrousFuel().massFlow(), fuel, 1e-12);
    }

    @Test
    void nitrous_without_fuel_is_lean_fuel_without_nitrous_is_rich() {
        assertTrue(effect("fuel solenoid stays closed").outcome().lambda() > 1.05);
        assertTrue(effect("nitrous solenoid sticks open").outcome().lambda() > 1.05);
        assertTrue(effect("fuel solenoid sticks open").outcome().lambda() < 0.7);
        FaultOutcome swapped = effect("jets swapped").outcome(); // a small nitrous jet beside a large fuel jet
        assertTrue(swapped.lambda() < 0.7 || swapped.refusal().contains("lambda"), swapped.firstWords());
        assertEquals(Verdict.BROKEN, effect("jets swapped").verdict());
    }

    @Test
    void what_the_cut_off_cannot_close_it_does_not_catch() {
        Detection caught = effect("nitrous solenoid sticks open").detection();
        assertEquals(Answer.UNSTOPPABLE, caught.answer());
        assertEquals(Double.POSITIVE_INFINITY, caught.cutTime());
    }

    @Test
    void a_bottle_outside_its_gate_does_not_open() {
        assertEquals(Answer.PREVENTED, effect("bottle too hot").detection().answer());
        assertEquals("bottle pressure", effect("bottle too hot").detection().channel());
        assertEquals(Answer.PREVENTED, effect("bottle too cold").detection().answer());
    }

    @Test
    void a_full_bottle_grown_warm_stands_above_its_vapour_pressure() {
        // 677 kg/m3 is denser than the saturated liquid at 32 degC (658.7 kg/m3), so the vessel is full of liquid
        double litres = PLAN.car().bottle().vessel().waterCapacity();
        Scenario full = Scenario.of(PLAN).withSetup(s -> s.withBottle(new BottleFill(677 * litres, 303.15)));
        Scenario warm = full.withBottleTemperature(307.15);
        double vapour = org.shotledger.fluid.NitrousOxide.saturationPressure(307.15);
        assertTrue(warm.bottle().pressure() > 1.02 * vapour);
        Scenario back = full.withBottlePressure(warm.bottle().pressure());
        assertEquals(307.15, back.bottle().temperature(), 1e-6);
        Scenario cold = full.withBottlePressure(45e5);
        assertEquals(45e5, cold.bottle().pressure(), 1);
        assertTrue(cold.bottle().isSaturated());
    }

    @Test
    void without_a_fault_every_limit_is_that_of_the_stated_outcome_or_further() {
        FaultOutcome planned = FAULTS.bench().planned();
        for (Limit limit : planned.limits().all()) {
            PLAN.stated()
                    .limits()
                    .find(limit.key())
                    .filter(l -> !l.key().equals("bottle-low"))
                    .ifPresent(l -> assertTrue(limit.relativeMargin() >= l.relativeMargin() - 1e-9, limit.key()));
        }
    }

    /**
     * What the bench calls broken in a state in which the car really starts, the plan must call broken too: in every case of the job, on
     * the plan as it is and on setups that break something.
     */
    @Test
    void what_is_broken_without_a_fault_is_broken_in_the_plan() {
        Setup set = PLAN.setup();
        JetPair jets = set.jets().orElseThrow();
        List<Setup> tried = List.of(
                set,
                set.withJets(new JetPair(jets.nitrousBore(), 0.6 * jets.fuelBore())),
                set.withRetard(0),
                set.withBottle(new BottleFill(set.bottle().charge(), 307)),
                set.withBottle(new BottleFill(set.bottle().charge(), 284)),
                set.withBottle(new BottleFill(1.15 * set.bottle().charge(), 305)));
        int broken = 0;
        for (Setup setup : tried) {
            Plan plan = Plan.of(PLAN.job(), setup);
            var names = plan.limits().broken().stream().map(Limit::name).toList();
            FaultOutcome bench = Simulation.run(Scenario.of(plan), BoostLine.of(plan));
            for (Limit limit : bench.limits().broken()) {
                broken++;
                boolean known = limit.key().equals("bottle-high")
                        ? plan.limits()
                                        .find("start-pressure-high")
                                        .orElseThrow()
                                        .verdict()
                                == Verdict.BROKEN
                        : plan.limits().find(limit.key()).orElseThrow().verdict() == Verdict.BROKEN;
                assertTrue(known, limit.name() + " is broken on the bench; the plan has " + names);
            }
        }
        assertTrue(broken >= 3, "setups that break nothing show nothing: " + broken);
    }

    @Test
    void what_nothing_catches_is_listed() {
        var names =
                FAULTS.bench().uncaught().stream().map(e -> e.fault().name()).toList();
        assertEquals(FAULTS.uncaught().stream().map(e -> e.fault().name()).toList(), names);
        assertTrue(names.contains("one fuel jet blocked"), names.toString());
    }

    @Test
    void a_growing_fault_is_cut_when_gate_sensor_controller_solenoid_and_lines_have_had_their_time() {
        // a ramp of fuel pressure to 1 bar in 10 s passes the interlock at a known moment
        Interlock interlock = FAULTS.arming().find("fuel-pressure").orElseThrow();
        double set = Scenario.of(PLAN).fuelPressure();
        Fault ramp = Fault.growing("ramp", 10, (s, x) -> s.withFuelPressure(set + x * (1e5 - set)));
        Detection caught = FAULTS.bench().effect(ramp).detection();
        double passes = 10 * (set - interlock.low()) / (set - 1e5);
        double sensor = 0.03;
        assertEquals("fuel pressure before the solenoid", caught.channel());
        assertEquals(passes + sensor + CutOff.of(PLAN).time(), caught.cutTime(), 10 / 256.0);
    }

    @Test
    void lines_behind_the_solenoid_empty_in_their_content_over_the_flow() {
        // six lines of 4 mm and 0.35 m hold 26.39 cm3; the content is that volume times the density at the jets
        OperatingPoint peak = PLAN.stated().strongest().orElseThrow();
        double content =
                6 * Math.PI / 4 * 16e-6 * 0.35 * peak.nitrous().jetInlet().density();
        assertEquals(content / peak.nitrous().massFlow(), CutOff.of(PLAN).emptying(), 1e-9);
    }

    @Test
    void ones_own_fault_takes_one_line() {
        Faults more = FAULTS.and(Fault.sudden("regulator drops to 2 bar", s -> s.withFuelPressure(2e5)));
        FaultEffect own = more.effects().get(more.effects().size() - 1);
        assertTrue(
                own.outcome().lambda() > PLAN.stated().strongest().orElseThrow().lambda());
        assertEquals(FAULTS.effects().size() + 1, more.effects().size());
    }

    @Test
    void wrong_fuel_in_the_main_tank_keeps_its_volume() {
        // lambda changes by density times stoichiometric air, for the injectors meter volume
        var fuels = PLAN.car().fuels();
        Scenario wrong = Scenario.of(PLAN).withOpenJets(0, 0).withMainFuel(Fuels.METHANOL);
        double t = fuels.temperature();
        double factor = fuels.main().density(t)
                * fuels.main().stoichiometricAirFuel()
                / (Fuels.METHANOL.density(t) * Fuels.METHANOL.stoichiometricAirFuel());
        assertEquals(PLAN.setup().mixture() * factor, peak(wrong).lambda(), 1e-4);
    }

    @Test
    void every_built_in_fault_has_a_name_a_cause_and_an_answer() {
        for (FaultEffect effect : FAULTS.effects()) {
            assertTrue(!effect.fault().cause().isEmpty(), effect.fault().name());
            if (effect.detection().answer() == Answer.IN_TIME) {
                assertTrue(
                        effect.detection().cutTime() <= effect.detection().damageTime(),
                        effect.fault().name());
            }
            if (effect.detection().answer() == Answer.TOO_LATE) {
                assertTrue(
                        effect.detection().cutTime() > effect.detection().damageTime(),
                        effect.fault().name());
            }
        }
    }

    private static FaultEffect effect(String name) {
        return FAULTS.effects().stream()
                .filter(e -> e.fault().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static OperatingPoint peak(Scenario s) {
        var stop = BoostLine.of(PLAN).stops().get(2);
        return Simulation.run(s, BoostLine.at(stop.rpm(), stop.plenumPressure()))
                .peak()
                .orElseThrow();
    }
}
