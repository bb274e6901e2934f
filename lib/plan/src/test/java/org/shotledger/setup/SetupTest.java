package org.shotledger.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.shotledger.units.Quantities.barGauge;
import static org.shotledger.units.Quantities.degC;
import static org.shotledger.units.Quantities.metres;
import static org.shotledger.units.Quantities.mm;
import static org.shotledger.units.Quantities.thou;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.engine.MoistAir;
import org.shotledger.nitrous.ActivationWindow;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.supply.Regulator;

/** What a person sets and what the world may be: straight lines between steps, one thing changed and nothing else, refusals. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SetupTest {
    private static final BoostTable TABLE =
            BoostTable.of(new double[] {3000, 5000, 8000}, new double[] {0.4e5, 1.2e5, 0.9e5});
    private static final Regulator MAIN = new Regulator("main", 3e5, 1);
    private static final Regulator OWN = new Regulator("own", 3.5e5, 0);
    private static final Setup SETUP = new Setup(
            new BoostTarget(TABLE, TABLE.map(gauge -> gauge / 2), 0.05e5),
            Optional.of(new JetPair(1e-3, 0.5e-3)),
            MAIN,
            Optional.of(OWN),
            0.8,
            6,
            new ActivationWindow(5800, 7800),
            new BottleFill(7, 303),
            new PassPlan(3, 10));

    @ParameterizedTest
    @CsvSource({"1000, 0.4", "3000, 0.4", "3500, 0.6", "4000, 0.8", "5000, 1.2", "7000, 1.0", "8000, 0.9", "9000, 0.9"})
    void boost_is_a_straight_line_between_its_steps_and_held_beyond(double rpm, double bar) {
        assertEquals(bar * 1e5, TABLE.at(rpm), 1e-6);
    }

    @Test
    void the_highest_boost_is_that_of_the_highest_step() {
        assertEquals(1.2e5, TABLE.highest());
        assertEquals(0.6e5, SETUP.boost().armed().highest(), 1e-6);
        assertEquals(0.7e5, BoostTable.constant(0.7e5).at(6000));
        assertEquals(2.4e5, SETUP.boost().map(gauge -> 2 * gauge).off().highest());
        assertEquals(1.2e5, SETUP.boost().map(gauge -> 2 * gauge).armed().highest());
        assertEquals(0.05e5, BoostTarget.constant(1e5).tolerance());
    }

    /** With nitrous only the armed table is run; driving without it is another matter. */
    @Test
    void the_highest_boost_scales_the_table_that_is_run() {
        var half = barGauge(0.3);
        Setup armed = SETUP.withHighestBoost(half);
        assertEquals(0.3e5, armed.boost().armed().highest(), 1e-6);
        assertEquals(0.1e5, armed.boost().armed().at(3000), 1e-6);
        assertEquals(TABLE, armed.boost().off());
        Setup alone = SETUP.withoutJets().withHighestBoost(half);
        assertEquals(0.3e5, alone.boost().armed().highest(), 1e-6);
        assertEquals(0.6e5, alone.boost().off().highest(), 1e-6);
        Setup none = SETUP.withBoost(BoostTarget.constant(0)).withHighestBoost(half);
        assertEquals(0.3e5, none.boost().armed().at(4000), 1e-6);
    }

    /** Each change moves its own part: changed back, the setup is the old one. */
    @Test
    void one_thing_is_changed_and_nothing_else() {
        BottleFill fill = new BottleFill(5, 295);
        assertEquals(SETUP, SETUP.withMixture(0.9).withMixture(0.8));
        assertEquals(0.9, SETUP.withMixture(0.9).mixture());
        assertEquals(SETUP, SETUP.withRetard(2).withRetard(6));
        assertEquals(2, SETUP.withRetard(2).retard());
        assertEquals(fill, SETUP.withBottle(fill).bottle());
        assertEquals(SETUP, SETUP.withBottle(fill).withBottle(SETUP.bottle()));
        assertEquals(Optional.empty(), SETUP.withoutJets().jets());
        assertEquals(SETUP, SETUP.withoutJets().withJets(new JetPair(1e-3, 0.5e-3)));
        PassPlan once = new PassPlan(1, 5);
        assertEquals(once, SETUP.withPasses(once).passes());
        assertEquals(SETUP, SETUP.withPasses(once).withPasses(SETUP.passes()));
        ActivationWindow wide = new ActivationWindow(4000, 7800);
        assertEquals(wide, SETUP.withArming(wide).arming());
        assertEquals(SETUP, SETUP.withArming(wide).withArming(SETUP.arming()));
        Setup warmer = SETUP.withBottleTemperature(degC(20));
        assertEquals(new BottleFill(7, 293.15), warmer.bottle());
        Setup mil = SETUP.withJets(thou(40), mm(0.6));
        assertEquals(40 * 25.4e-6, mil.jets().orElseThrow().nitrousBore(), 1e-12);
        assertEquals(0.6e-3, mil.jets().orElseThrow().fuelBore(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> SETUP.withJets(degC(40), mm(0.6)));
        Setup flat = SETUP.withBoost(barGauge(0.8));
        assertEquals(0.8e5, flat.boost().off().at(7000), 1e-6);
    }

    /** One pressure before the jets: the system's own where it has a supply, else that of the rail. */
    @Test
    void the_fuel_pressure_that_is_meant_is_the_one_changed() {
        var higher = barGauge(4);
        Regulator own = SETUP.withNitrousFuelPressure(higher).nitrousRegulator();
        assertEquals(4e5, own.basePressure(), 1e-6);
        assertEquals(0, own.boostReference());
        assertEquals(MAIN, SETUP.withNitrousFuelPressure(higher).mainRegulator());
        assertEquals(OWN, SETUP.nitrousRegulator());
        assertEquals(OWN, SETUP.withMainRegulator(OWN).mainRegulator());
        Setup rail = new Setup(
                SETUP.boost(),
                SETUP.jets(),
                MAIN,
                Optional.empty(),
                0.8,
                6,
                SETUP.arming(),
                SETUP.bottle(),
                SETUP.passes());
        assertEquals(MAIN, rail.nitrousRegulator());
        assertEquals(4e5, rail.withNitrousFuelPressure(higher).mainRegulator().basePressure(), 1e-6);
        assertThrows(IllegalArgumentException.class, () -> rail.withNitrousRegulator(OWN));
    }

    @Test
    void a_case_is_changed_in_one_thing() {
        Case at = Case.of("event", new MoistAir(88e3, 300, 0.35), 13.5);
        assertEquals(at, at.named("other").named("event"));
        assertEquals("other", at.named("other").name());
        Case warm = at.withAirTemperature(degC(35));
        assertEquals(new MoistAir(88e3, 308.15, 0.35), warm.air());
        assertEquals(12.5, at.withVoltage(12.5).voltage());
        assertEquals(OptionalDouble.of(0.6), at.withFuel(0.6).ethanol());
        assertEquals(BottleState.LAST, at.withBottle(BottleState.LAST).bottle());
        Case off = at.with(Factor.KNOCK, 1.1);
        assertEquals(1.1, off.factors().of(Factor.KNOCK));
        assertEquals(1, off.factors().of(Factor.ENGINE_WORK));
        assertEquals(at, off.with(Factor.KNOCK, 1));
        assertEquals(Map.of(Factor.KNOCK, 1.1), new Factors(Map.of(Factor.KNOCK, 1.1, Factor.BREATHING, 1.0)).values());
        // ISO 2533: 1000 m, 898.75 hPa
        Case high = at.withAltitude(metres(1000));
        assertEquals(898.75e2, high.air().pressure(), 30);
        assertEquals(300, high.air().temperature());
        assertEquals(0.35, high.air().relativeHumidity());
    }

    @Test
    void a_target_is_reached_within_a_thousandth() {
        Target target = new Target("event", 500e3, 5800, 7800, 3, 10, MixtureGoal.total(0.78));
        assertTrue(target.reachedBy(500e3) && target.reachedBy(499.6e3));
        assertFalse(target.reachedBy(499.4e3));
        assertEquals(400e3, target.withWheelPower(400e3).wheelPower());
        assertEquals(target, target.withWheelPower(400e3).withWheelPower(500e3));
        assertEquals(2, target.withPasses(2, 8).passes());
        assertEquals(8, target.withPasses(2, 8).passSeconds());
        MixtureGoal rich = MixtureGoal.total(0.7);
        assertEquals(rich, target.withMixture(rich).mixture());
    }

    /** Every range of what is set: the ends are taken, a little beyond is refused with the name of the figure. */
    @Test
    void what_lies_outside_its_range_is_refused() {
        refused("spark retard", () -> SETUP.withRetard(-0.1), () -> SETUP.withRetard(30.1));
        refused("mixture", () -> SETUP.withMixture(0.49), () -> SETUP.withMixture(1.31));
        refused(
                "boost allowed above",
                () -> new BoostTarget(TABLE, TABLE, -1),
                () -> new BoostTarget(TABLE, TABLE, 100_001));
        refused("boost of a step", () -> BoostTable.constant(-0.51e5), () -> BoostTable.constant(8.1e5));
        refused("engine speed of a boost step", () -> BoostTable.of(new double[] {0}, new double[] {0}));
        refused("no step", () -> new BoostTable(List.of()));
        refused(
                "do not rise",
                () -> BoostTable.of(new double[] {4000, 4000}, new double[2]),
                () -> BoostTable.of(new double[] {4000, 3000}, new double[2]));
        refused("charge of the bottle", () -> new BottleFill(0.04, 300), () -> new BottleFill(61, 300));
        refused("temperature of the bottle at", () -> new BottleFill(5, 232), () -> new BottleFill(5, 341));
        refused("temperature of the bottle", () -> BottleState.at(182), () -> BottleState.at(310));
        refused("number of passes", () -> new PassPlan(0, 5), () -> new PassPlan(51, 5));
        refused("time under nitrous", () -> new PassPlan(1, 0.4), () -> new PassPlan(1, 301));
        MoistAir air = new MoistAir(88e3, 300, 0.35);
        refused("supply voltage", () -> Case.of("c", air, 7.9), () -> Case.of("c", air, 18.1));
        refused(
                "ethanol",
                () -> Case.of("c", air, 13).withFuel(-0.1),
                () -> Case.of("c", air, 13).withFuel(1.1));
        refused(
                "factor on the",
                () -> Factors.NONE.with(Factor.KNOCK, -0.1),
                () -> Factors.NONE.with(Factor.KNOCK, 11));
        DaySheet usual = DaySheet.USUAL;
        refused("time between", () -> day(9, 12.5, 1, 300, 0.5), () -> day(100_001, 12.5, 1, 300, 0.5));
        refused("voltage of the heater", () -> day(60, 7, 1, 300, 0.5), () -> day(60, 19, 1, 300, 0.5));
        refused("number of bottles", () -> day(60, 12, 0, 300, 0.5), () -> day(60, 12, 11, 300, 0.5));
        refused("is chilled", () -> day(60, 12, 1, 199, 0.5), () -> day(60, 12, 1, 310, 0.5));
        refused("scale table", () -> day(60, 12, 1, 300, 0.009), () -> day(60, 12, 1, 300, 11));
        refused("capacity of the mother", () -> mother(0.9e-3, 20, 293), () -> mother(1.1, 20, 293));
        refused("charge of the mother", () -> mother(30e-3, 0.4, 293), () -> mother(30e-3, 701, 293));
        refused("temperature of the mother", () -> mother(30e-3, 20, 232), () -> mother(30e-3, 20, 310));
        assertEquals(usual, day(1200, 12.5, 1, Double.NaN, 0.45359237));
    }

    private static DaySheet day(double rest, double voltage, int bottles, double chilled, double step) {
        OptionalDouble to = Double.isNaN(chilled) ? OptionalDouble.empty() : OptionalDouble.of(chilled);
        return new DaySheet(rest, voltage, bottles, Optional.empty(), to, step);
    }

    private static DaySheet.Mother mother(double capacity, double charge, double temperature) {
        return new DaySheet.Mother(capacity, charge, temperature);
    }

    private static void refused(String name, Executable... attempts) {
        Stream.of(attempts).forEach(attempt -> {
            String said = assertThrows(IllegalArgumentException.class, attempt).getMessage();
            assertTrue(said.contains(name), said);
        });
    }
}
