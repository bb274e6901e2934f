package org.shotledger.evaluate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shotledger.boost.ExhaustGas;
import org.shotledger.boost.ShaftBalance;
import org.shotledger.car.Car;
import org.shotledger.car.EngineModel;
import org.shotledger.car.OnMainRail;
import org.shotledger.engine.BackPressure;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.job.Job;
import org.shotledger.nitrous.JetPair;
import org.shotledger.setup.BoostTarget;
import org.shotledger.setup.BottleState;
import org.shotledger.setup.Case;
import org.shotledger.setup.Factor;
import org.shotledger.setup.Setup;

/**
 * The figures of one operating point, each worked out again by the formula of its part with the figures of the demonstration car's sheet, and
 * the factors of a case, each of which moves its own figure.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class PointFiguresTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();
    private static final Setup SETUP =
            JOB.setup().withBoost(BoostTarget.constant(1.3e5)).withJets(new JetPair(1.0e-3, 0.56e-3));
    private static final Case AT = JOB.stated().withBottle(BottleState.at(298));
    private static final double AMBIENT = AT.air().pressure();
    private static final double PLENUM = AMBIENT + 1.3e5;
    private static final double RPM = 7000;
    /** Bore and stroke of the sheet, six cylinders. */
    private static final double DISPLACEMENT = 6 * Math.PI / 4 * 85.3e-3 * 85.3e-3 * 84.6e-3;

    private static OperatingPoint on(Case at) {
        return model(at).at(RPM, PLENUM, Mode.NITROUS);
    }

    private static PointModel model(Case at) {
        return Evaluate.model(CAR, SETUP, at);
    }

    private static OperatingPoint off() {
        return model(AT).at(RPM, PLENUM, Mode.BOOST_ALONE);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void power_is_what_the_gas_does_less_gas_exchange_and_friction(boolean nitrous) {
        OperatingPoint p = nitrous ? on(AT) : off();
        double rate = DISPLACEMENT * RPM / 120;
        assertEquals(
                (p.shaft().exhaustPressure() - PLENUM) * rate,
                p.power().pumping(),
                1e-6 * Math.abs(p.power().pumping()));
        // Chen and Flynn with 0.4 bar, 0.005, 0.09 bar per m/s, 0.0009 bar per (m/s)2
        double speed = 2 * 84.6e-3 * RPM / 60;
        double fmep = 40e3 + 0.005 * p.cylinder().peakPressure() + 9e3 * speed + 90 * speed * speed;
        assertEquals(fmep * rate, p.power().friction(), 1e-6 * fmep * rate);
        double brake = p.power().indicated() - p.power().pumping() - p.power().friction();
        assertEquals(0.86 * brake, p.wheelPower(), 1e-9 * brake, "14 % are lost on the way to the wheels");
        assertEquals(brake / (2 * Math.PI * RPM / 60), p.crankTorque(), 1e-6);
        assertEquals(1.3e5, p.gaugePressure(), 1e-6);
    }

    /** Losses grow with the square of the flow and fall with the density: 15 mbar at 0.5 kg/s and 1.15, 0.12 bar at 0.5 kg/s and 3.0 kg/m3. */
    @Test
    void air_loses_pressure_before_the_compressor_and_heat_behind_it() {
        OperatingPoint p = on(AT);
        double air = p.charge().mixture().dryAir() + p.charge().mixture().waterVapour();
        double density = AT.air().density();
        double share = air / 0.5 * air / 0.5;
        double inlet = AMBIENT - 1500 * share * 1.15 / density;
        double outlet = PLENUM + 12e3 * share * 3.0 / (density * PLENUM / AMBIENT);
        assertEquals(outlet, p.compressor().outletPressure(), 1e-6 * outlet);
        assertEquals(outlet / inlet, p.compressor().place().pressureRatio(), 1e-6);
        double hot = p.compressor().outletTemperature();
        assertEquals(hot - 0.72 * (hot - AT.air().temperature()), p.airAfterCooler(), 1e-6);
    }

    /** 1130 cc/min of n-heptane, 684 kg/m3, at 3 bar; dead time 1.1 ms at 13.5 V; the regulator keeps 3 bar above the plenum. */
    @Test
    void injectors_are_open_for_the_fuel_and_their_dead_time() {
        OperatingPoint p = on(AT);
        double density = CAR.fuels().main().density(298.15);
        double open = 684 * 1130e-6 / 60 * Math.sqrt(density / 684);
        double cycles = RPM / 120;
        double each = p.charge().mixture().mainFlow() / 6 / cycles;
        assertEquals((each / open + 1.1e-3) * cycles, p.main().duty(), 1e-6);
        assertEquals(PLENUM + 3e5, p.main().railPressure(), 1e-6);
        assertEquals(p.charge().mixture().mainFlow(), p.main().massFlow());
        assertEquals(p.main().massFlow(), p.main().pumped());
        double capacity = density * CAR.injection().pumps().capacity(3e5 + 1.3e5, 13.5);
        assertEquals(capacity, p.main().pumpCapacity(), 1e-9 * capacity);
    }

    /** A factor of 1.1 on one model moves its own figure by a tenth. */
    @Test
    void a_factor_moves_its_own_figure() {
        moved(Factor.ENGINE_WORK, p -> p.power().indicated(), 1.1, 1e-9);
        moved(Factor.PEAK_PRESSURE, p -> p.cylinder().peakPressure(), 1.1, 1e-9);
        moved(Factor.EXHAUST_TEMPERATURE, OperatingPoint::exhaustTemperature, 1.1, 1e-9);
        moved(Factor.KNOCK, p -> p.cylinder().knock(), 1.1, 1e-9);
        moved(Factor.NITROUS_FLOW, p -> p.nitrous().massFlow(), 1.1, 1e-9);
        moved(Factor.FUEL_JET_FLOW, p -> p.nitrousFuel().massFlow(), 1.1, 1e-9);
        moved(
                Factor.MAIN_FUEL,
                p -> p.charge().mixture().mainFlow() / p.charge().mixture().dryAir(),
                1.1,
                1e-9);
        // more air makes the compressor's air warmer, and the back pressure higher
        moved(Factor.BREATHING, p -> p.charge().mixture().dryAir(), 1.1, 0.04);
    }

    private static void moved(Factor factor, ToDoubleFunction<OperatingPoint> figure, double ratio, double tolerance) {
        double before = figure.applyAsDouble(on(AT));
        double after = figure.applyAsDouble(on(AT.with(factor, 1.1)));
        assertEquals(ratio, after / before, tolerance, factor.name());
    }

    /** Half of what the nitrous adds is half way; none of it is the work of the air alone, still more than without nitrous: it is cooled. */
    @Test
    void the_work_of_the_nitrous_arrives_in_proportion() {
        double none = on(AT.with(Factor.NITROUS_WORK, 0)).power().indicated();
        double half = on(AT.with(Factor.NITROUS_WORK, 0.5)).power().indicated();
        double whole = on(AT).power().indicated();
        assertEquals((none + whole) / 2, half, 1e-9 * half);
        assertTrue(whole > 1.1 * none, none + " to " + whole);
        // the builder's own timing: the air's part is that of the engine without nitrous, a little denser
        OperatingPoint builder = Evaluate.model(CAR, SETUP.withRetard(0), AT.with(Factor.NITROUS_WORK, 0))
                .at(RPM, PLENUM, Mode.NITROUS);
        double air =
                builder.charge().mixture().dryAir() / off().charge().mixture().dryAir();
        assertEquals(air, builder.power().indicated() / off().power().indicated(), 0.06);
    }

    /** What arrives of the nitrous work is the share of the car times that of the case. */
    @Test
    void the_share_of_the_car_and_of_the_case_are_one_product() {
        EngineModel m = CAR.model();
        NitrousFactor own = m.nitrous();
        Car all = CAR.with(m.with(new NitrousFactor(1, own.low(), 1)));
        double whole = Evaluate.model(all, SETUP, AT.with(Factor.NITROUS_WORK, own.value()))
                .at(RPM, PLENUM, Mode.NITROUS)
                .power()
                .indicated();
        assertEquals(whole, on(AT).power().indicated(), 1e-9 * whole);
    }

    /** A charge at lambda 0.8 has oxygen for four fifths of its fuel, and some of that burns to carbon monoxide only. */
    @Test
    void the_heat_is_a_good_part_of_what_the_fuel_holds() {
        OperatingPoint p = off();
        double fuel = p.charge().mixture().fuelPower();
        assertTrue(p.heat() > 0.6 * fuel && p.heat() < 0.95 * fuel, p.heat() + " of " + fuel);
        assertTrue(p.power().indicated() > 0.25 * p.heat() && p.power().indicated() < 0.6 * p.heat());
    }

    private static PointModel rail(double free) {
        return Evaluate.model(OnMainRail.car(CAR, free), OnMainRail.setup(SETUP), AT);
    }

    /** A strong pump holds the rail; a weak one lets it fall until it gives what both fuels take, and both run lean alike. */
    @Test
    void on_the_main_rail_one_pump_gives_both_fuels() {
        double density = CAR.fuels().main().density(298.15);
        OperatingPoint held = rail(5e-4).at(RPM, PLENUM, Mode.NITROUS);
        assertEquals(PLENUM + 3e5, held.main().railPressure(), 1);
        assertEquals(
                held.main().massFlow() + held.nitrousFuel().massFlow(),
                held.main().pumped(),
                1e-12);
        assertEquals(density * 5e-4 * (1 - 4.3 / 9), held.main().pumpCapacity(), 1e-6);
        double free = 0.9 * held.main().pumped() / density / (1 - 4.3 / 9);
        OperatingPoint weak = rail(free).at(RPM, PLENUM, Mode.NITROUS);
        double rise = weak.main().railPressure() - AMBIENT;
        assertTrue(rise < 4.2e5 && rise > 2e5, "rail " + rise);
        assertEquals(
                density * free * (1 - rise / 9e5),
                weak.main().pumped(),
                1e-4 * weak.main().pumped());
        double share = Math.sqrt((weak.main().railPressure() - PLENUM) / 3e5);
        assertEquals(share, weak.nitrousFuel().massFlow() / held.nitrousFuel().massFlow(), 1e-4);
        double metered = weak.main().massFlow() / weak.charge().mixture().dryAir();
        assertEquals(
                share,
                metered / (held.main().massFlow() / held.charge().mixture().dryAir()),
                1e-4);
        // closed, the solenoid holds the pressure of the rail, and the pump serves the injectors alone
        OperatingPoint closed = rail(5e-4).at(RPM, PLENUM, Mode.ARMED);
        assertEquals(PLENUM + 3e5, closed.nitrousFuel().railPressure(), 1e-6);
        assertEquals(0, closed.nitrousFuel().massFlow());
        assertEquals(closed.main().massFlow(), closed.main().pumped());
        assertEquals(AMBIENT, off().nitrousFuel().railPressure(), "a circuit of its own is not under pressure");
    }

    @Test
    void a_setup_for_another_fuel_supply_is_refused() {
        String said = assertThrows(
                        IllegalArgumentException.class, () -> Evaluate.model(CAR, OnMainRail.setup(SETUP), AT))
                .getMessage();
        assertTrue(said.contains("has no regulator for it"), said);
    }

    /** Flow from jet bore and back again, alone and of the whole circuit. */
    @Test
    void jets_and_flows_are_inverse() {
        PointModel model = model(AT);
        double flow = model.nitrousFuel(PLENUM, 0.56e-3).massFlow();
        assertEquals(0.56e-3, model.fuelBore(PLENUM, flow), 1e-7);
        assertEquals(flow, model.nitrousFuel(PLENUM).massFlow());
        for (Case at : new Case[] {AT, AT.with(Factor.NITROUS_FLOW, 0.9)}) {
            PointModel other = model(at);
            double oxide = other.feed(PLENUM).massFlow();
            assertEquals(oxide, other.nitrousFlow(PLENUM, 1.0e-3), 1e-3 * oxide);
            assertEquals(oxide, other.feed(PLENUM, 1.0e-3).massFlow(), 1e-9 * oxide);
            assertEquals(oxide, on(at).nitrous().massFlow(), 1e-9 * oxide);
        }
        // choked: no boost changes it, not even beyond the highest of the setup
        assertEquals(model.feed(PLENUM).massFlow(), model.feed(AMBIENT).massFlow());
        assertEquals(model.feed(PLENUM).massFlow(), model.feed(PLENUM + 0.3e5).massFlow(), 1e-6);
        assertEquals(CAR.fuels().nitrous().density(298.15), model.nitrousFuelDensity());
        assertEquals(AMBIENT, model.pressures(PLENUM).ambient());
        assertEquals(PLENUM, model.pressures(PLENUM).nozzle());
        PointModel none = Evaluate.model(CAR, SETUP.withoutJets(), AT);
        assertEquals(0, none.feed(PLENUM).massFlow());
        assertEquals(0, none.nitrousFuel(PLENUM).massFlow());
    }

    /** A bottle so empty that the jets do not choke: less flows against more boost. */
    @Test
    void against_a_flow_that_is_not_choked_boost_counts() {
        PointModel cold = model(AT).withBottle(NitrousOxide.saturatedLiquid(205));
        double little = cold.feed(AMBIENT).massFlow();
        assertTrue(cold.feed(PLENUM).massFlow() < little, "205 K boils at 4 bar");
        assertTrue(cold.feed(PLENUM + 0.5e5).massFlow() < cold.feed(PLENUM).massFlow());
    }

    @Test
    void another_spark_is_another_point_and_nothing_else() {
        PointModel model = model(AT);
        OperatingPoint p = on(AT);
        var bySpark = model.bySpark(RPM, PLENUM, Mode.NITROUS, p.nitrous(), p.nitrousFuel());
        for (double retard : new double[] {0, 12}) {
            OperatingPoint set =
                    Evaluate.model(CAR, SETUP.withRetard(retard), AT).at(RPM, PLENUM, Mode.NITROUS);
            OperatingPoint asked = bySpark.apply(retard);
            assertEquals(set.wheelPower(), asked.wheelPower(), 1e-9 * set.wheelPower());
            assertEquals(retard, asked.cylinder().retard());
            // the work is that of the cycle with that spark
            double work = model.cycle(p, retard).work() / model.cycle(p, 6).work();
            assertEquals(work, set.power().indicated() / p.power().indicated(), 1e-6);
        }
        assertTrue(bySpark.apply(12).cylinder().peakPressure() < p.cylinder().peakPressure());
        assertTrue(bySpark.apply(12).exhaustTemperature() > p.exhaustTemperature());
        assertTrue(bySpark.apply(12).cylinder().peakAngle() > p.cylinder().peakAngle());
        // without nitrous the builder's own timing stands
        assertEquals(0, off().cylinder().retard());
    }

    /** Nitrous burns in nine tenths of the usual time; the picture shows the pressure that the point holds. */
    @Test
    void the_trace_has_the_peak_of_the_point() {
        PointModel model = model(AT);
        for (OperatingPoint p : new OperatingPoint[] {on(AT), off()}) {
            double peak = Arrays.stream(model.trace(p).pressure()).max().orElseThrow();
            // the picture has steps
            assertEquals(p.cylinder().peakPressure(), peak, 0.005 * peak);
            var own = model.cycle(p, p.cylinder().retard());
            assertEquals(p.cylinder().peakPressure(), own.peakPressure(), 1e-9 * peak);
            double duration = p.mode().nitrousFlows() ? 0.9 : 1;
            EngineModel engine = CAR.model();
            var burning = engine.phasing().burning(p.cylinder().retard(), duration);
            var again = engine.cylinder().run(p.cylinder().base().withBurning(burning));
            assertEquals(again.peakPressure(), own.peakPressure(), 1e-9 * peak);
        }
    }

    /** Gas constant 290 J/(kg K) and 1.30 as in the model; what is left of the turbine's power when all of the exhaust passes. */
    @Test
    void the_shaft_gains_what_the_turbine_gives_beyond_the_compressor() {
        PointModel model = model(AT);
        for (OperatingPoint p : new OperatingPoint[] {on(AT), off()}) {
            var turbine = CAR.turbo().turbine();
            ExhaustGas gas = new ExhaustGas(p.charge().mixture().totalFlow(), p.exhaustTemperature(), 290, 1.30);
            double density = AMBIENT / (290 * p.exhaustTemperature());
            double share = gas.flow() / 0.55 * gas.flow() / 0.55;
            double back = AMBIENT + 15e3 * share * 0.35 / density;
            double ratio = ShaftBalance.swallowingRatio(turbine, gas, back);
            double fall = 0.68 * (1 - Math.pow(ratio, -0.3 / 1.3));
            double heat = 290 * 1.3 / 0.3 * gas.flow() * p.exhaustTemperature();
            double surplus = 0.96 * heat * fall - p.compressor().power();
            assertEquals(surplus, model.shaftSurplus(p), 1e-6 * heat);
            assertEquals(p.shaft().holdsBoost(), surplus >= 0);
            assertEquals(p.shaft().expansionRatio() * back, p.shaft().exhaustPressure(), 1e-6 * back);
        }
    }

    /** The breathing table holds at the back pressure of the base pull; against more the engine breathes less, as ideal residual gas says. */
    @ParameterizedTest
    @CsvSource({"0.7", "1.3"})
    void back_pressure_changes_the_breathing(double pull) {
        EngineModel m = CAR.model();
        var knock = m.baseKnock().orElseThrow();
        Car none = CAR.with(m.withBase(m.probe(), knock, Double.NaN));
        Car other = CAR.with(m.withBase(m.probe(), knock, pull));
        OperatingPoint plain = Evaluate.model(none, SETUP, AT).at(RPM, PLENUM, Mode.BOOST_ALONE);
        OperatingPoint with = Evaluate.model(other, SETUP, AT).at(RPM, PLENUM, Mode.BOOST_ALONE);
        // the exhaust as hot as on the base pull
        ExhaustGas gas =
                new ExhaustGas(plain.charge().mixture().totalFlow(), CAR.turbo().exhaustTemperature(), 290, 1.30);
        double density = AMBIENT / (290 * gas.temperature());
        double share = gas.flow() / 0.55 * gas.flow() / 0.55;
        double back = AMBIENT + 15e3 * share * 0.35 / density;
        double exhaust = ShaftBalance.solve(
                        CAR.turbo().turbine(), gas, plain.compressor().power(), back)
                .exhaustPressure();
        double factor = BackPressure.factor(pull, exhaust / PLENUM, 9.3, 1.30);
        double air = with.charge().mixture().dryAir() / plain.charge().mixture().dryAir();
        // the air is a little warmer where there is more of it
        assertEquals(factor - 1, air - 1, 0.2 * Math.abs(factor - 1));
    }

    /** Stoichiometric mass of air: near 14.6 for petrol, 9.0 for ethanol (handbook figures): more ethanol is more fuel at one lambda. */
    @Test
    void ethanol_of_a_case_is_the_fuel_that_burns() {
        OperatingPoint less = on(AT.withFuel(0.5));
        OperatingPoint more = on(AT.withFuel(0.9));
        assertTrue(more.main().massFlow() > 1.1 * less.main().massFlow());
    }
}
