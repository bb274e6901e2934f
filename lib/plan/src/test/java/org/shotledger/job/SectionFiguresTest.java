package org.shotledger.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shotledger.car.BottleSheet;
import org.shotledger.car.BuilderLimits;
import org.shotledger.car.Chassis;
import org.shotledger.car.FuelStreams;
import org.shotledger.car.Vehicle;
import org.shotledger.engine.ChenFlynn;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.NitrousJet;
import org.shotledger.fuel.Fuel;
import org.shotledger.fuel.Fuels;
import org.shotledger.nitrous.FuelJet;
import org.shotledger.nitrous.MixtureGoal;
import org.shotledger.nitrous.NozzlePosition;
import org.shotledger.pass.RollingCar.Axle;
import org.shotledger.setup.BoostTable;
import org.shotledger.setup.Case;
import org.shotledger.setup.DaySheet;
import org.shotledger.sheet.Problem;
import org.shotledger.sheet.SheetException;
import org.shotledger.supply.Injector;
import org.shotledger.supply.PumpGroup;
import org.shotledger.wiring.Alternator;

/**
 * What a section of a sheet says, in SI by hand: an inch is 25.4 mm, a pound 0.45359237 kg, a psi 6894.757 Pa, 0 degC 273.15 K; and what
 * counts where a sheet says nothing.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SectionFiguresTest {
    private static final Path FOLDER = DemoSheetTest.DEMO.getParent();
    private static final double PSI = 6894.757293168;
    private static final double POUND = 0.45359237;

    @Test
    void what_an_engine_loses_and_gets_from_nitrous_oxide() throws IOException {
        Job plain = EditedDemo.job();
        assertEquals(ChenFlynn.TYPICAL, plain.car().friction());
        assertEquals(0.95, plain.car().model().nitrous().value());
        assertEquals(0.88, plain.car().model().nitrous().low());
        assertEquals("straight six", plain.car().engine().name());
        assertEquals(
                "engine",
                EditedDemo.job("  name: straight six\n", "").car().engine().name());
        Job told = EditedDemo.job(
                "  red-line: 8000 rpm",
                "  red-line: 8000 rpm\n  nitrous-work: 92 % +/- 3 %\n  friction: {constant: 0.5 bar, share-of-peak-pressure: 0.006,"
                        + " per-piston-speed: 8000, per-piston-speed-squared: 80}");
        assertEquals(new ChenFlynn(50e3, 0.006, 8000, 80), told.car().friction());
        assertEquals(0.92, told.car().model().nitrous().value(), 1e-12);
        assertEquals(0.89, told.car().model().nitrous().low(), 1e-12);
        assertEquals(0.95, told.car().model().nitrous().high(), 1e-12);
        // without a band it is known within 0.05, and no share is taken beyond 0.5 to 1.1
        Job bare = EditedDemo.job("  red-line: 8000 rpm", "  red-line: 8000 rpm\n  nitrous-work: 93 %");
        assertEquals(0.88, bare.car().model().nitrous().low(), 1e-12);
        assertEquals(0.98, bare.car().model().nitrous().high(), 1e-12);
        Job high = EditedDemo.job("  red-line: 8000 rpm", "  red-line: 8000 rpm\n  nitrous-work: 108 %");
        assertEquals(1.1, high.car().model().nitrous().high(), 1e-12);
        Job low = EditedDemo.job("  red-line: 8000 rpm", "  red-line: 8000 rpm\n  nitrous-work: 52 %");
        assertEquals(0.5, low.car().model().nitrous().low(), 1e-12);
    }

    @Test
    void fuels_with_their_shares() throws IOException {
        FuelStreams plain = EditedDemo.job().car().fuels();
        assertEquals(Optional.empty(), plain.ownNitrous());
        assertEquals(0.78, plain.blend().orElseThrow().ethanol(), 1e-12);
        assertEquals(0, plain.blend().orElseThrow().water());
        assertEquals(298.15, plain.temperature(), 1e-9);
        assertEquals(0.4, plain.mainEvaporated(), 1e-12);
        assertEquals(0.9, plain.warming().nitrousEvaporated());
        assertEquals(0.1, plain.warming().wallShare());
        FuelStreams told = EditedDemo.job(
                        "  temperature: 25 degC\n",
                        "  temperature: 25 degC\n  nitrous-oxide-evaporated: 95 %\n  wall-heat: 5 %\n",
                        "kind: same",
                        "kind: methanol",
                        "+/- 1 %, from: graduated cylinder and water, provenance: measured}",
                        "}\n    water: 2 %")
                .car()
                .fuels();
        assertEquals(Optional.of(Fuels.METHANOL), told.ownNitrous());
        assertEquals(0.95, told.warming().nitrousEvaporated(), 1e-12);
        assertEquals(0.05, told.warming().wallShare(), 1e-12);
        assertEquals(0.02, told.blend().orElseThrow().water(), 1e-12);
        assertEquals(
                Optional.of(Fuels.ETHANOL),
                EditedDemo.job("kind: same", "kind: ethanol").car().fuels().ownNitrous());
        Fuel usual =
                EditedDemo.job("kind: same", "kind: gasoline").car().fuels().nitrous();
        assertEquals("gasoline", usual.name());
        assertEquals(745, usual.density());
        assertEquals(43.4e6, usual.lowerHeatingValue());
        assertEquals(Optional.empty(), usual.octane());
        Fuel race = EditedDemo.job(
                        "kind: same",
                        "kind: gasoline\n    name: club\n    density: 720 kg/m3\n    lower-heating-value: 43 MJ/kg\n    research-octane:"
                                + " 110\n    motor-octane: 100")
                .car()
                .fuels()
                .nitrous();
        assertEquals("club", race.name());
        assertEquals(720, race.density());
        assertEquals(43e6, race.lowerHeatingValue(), 1e-3);
        assertEquals(110, race.octane().orElseThrow().research());
        assertEquals(100, race.octane().orElseThrow().motor());
        Job gasoline = EditedDemo.job(
                "kind: ethanol-blend\n    ethanol: {value: 78 % +/- 1 %, from: graduated cylinder and water, provenance: measured}",
                "kind: gasoline", "  ethanol: [62 %, 82 %]\n", "");
        assertEquals(Optional.empty(), gasoline.car().fuels().blend());
        assertEquals(5, gasoline.cases().size());
    }

    @Test
    void air_driveline_and_electrical_supply() throws IOException {
        Job plain = EditedDemo.job();
        assertEquals(0.35, plain.air("event").relativeHumidity(), 1e-12);
        // US Standard Atmosphere 1976 at 1250 m: 87.2 kPa
        assertEquals(87.2e3, plain.air("event").pressure(), 100);
        Job told =
                EditedDemo.job("    altitude: 1250 m\n", "    altitude: 1250 m\n    station-pressure: 880 mbar abs\n");
        assertEquals(88e3, told.air("event").pressure(), 1e-6);
        assertEquals(300.15, told.air("event").temperature(), 1e-9);
        assertEquals(0, plain.car().driveline().dragTorque());
        assertEquals(0.14, plain.car().driveline().proportionalLoss(), 1e-12);
        assertEquals("rear drive, manual", plain.car().driveline().name());
        Job drag = EditedDemo.job("layout: rear drive, manual", "layout: rear drive, manual\n  drag-torque: 8 N m");
        assertEquals(8, drag.car().driveline().dragTorque(), 1e-9);
        var electrical = plain.car().electrical().orElseThrow();
        assertEquals(Optional.of(new Alternator(62, 140, 2.7)), electrical.overSpeed());
        assertEquals(140, electrical.alternatorCurrent());
        assertEquals(70 * 3600, electrical.batteryCharge(), 1e-6);
        assertEquals(900, electrical.idleRpm());
        var bare = EditedDemo.job(
                        "  alternator-low: 62 A\n  alternator-ratio: 2.7\n  idle-speed: 900 rpm\n",
                        "  idle-speed: 850 rpm\n")
                .car()
                .electrical()
                .orElseThrow();
        assertEquals(Optional.empty(), bare.overSpeed());
        assertEquals(850, bare.idleRpm());
    }

    @Test
    void a_car_on_its_wheels() throws IOException {
        Vehicle usual = EditedDemo.job(
                        "  wheelbase: 2.71 m\n  centre-height: 0.52 m\n  driven-share: 53 %\n  launch-speed: 4500 rpm\n  shift-time: 0.25 s\n",
                        "  wheelbase: 3 m\n")
                .car()
                .vehicle()
                .orElseThrow();
        assertEquals(1540, usual.mass());
        assertEquals(0.013, usual.rollingResistance());
        assertEquals(List.of(3.71, 2.24, 1.58, 1.21, 1.00, 0.81), usual.gears());
        // a centre a fifth of the wheelbase high
        assertEquals(
                new Chassis(Axle.REAR, 0.52, 3, 0.6, Double.NaN, 2.5, 2, 0.2, 1e-4, 0.3, Double.NaN, 3500),
                rounded(usual.chassis()));
        Vehicle told = EditedDemo.job(
                        "  centre-height: 0.52 m\n",
                        "  centre-height: 20 in\n  axle: front\n  tyre-radius: 12.5 in\n  driven-inertia: 3 kg m2\n  free-inertia: 2.2 kg m2\n  engine-inertia: 0.3 kg m2\n  turbo-inertia: 0.0002 kg m2\n  shift-speed: 7700 rpm\n  rolling-resistance: 0.015\n")
                .car()
                .vehicle()
                .orElseThrow();
        assertEquals(0.015, told.rollingResistance());
        assertEquals(
                new Chassis(Axle.FRONT, 0.53, 2.71, 0.508, 0.3175, 3, 2.2, 0.3, 2e-4, 0.25, 7700, 4500),
                rounded(told.chassis()));
    }

    private static Chassis rounded(Chassis c) {
        return new Chassis(
                c.axle(),
                c.drivenShare(),
                c.wheelbase(),
                Math.round(c.centreHeight() * 1e9) / 1e9,
                Double.isNaN(c.tyreRadius()) ? Double.NaN : Math.round(c.tyreRadius() * 1e9) / 1e9,
                c.drivenInertia(),
                c.freeInertia(),
                c.engineInertia(),
                c.turboInertia(),
                c.shiftTime(),
                c.shiftRpm(),
                c.launchRpm());
    }

    /** Where the weight rests is another figure for each: common practice, no source. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rear drive, manual|REAR|0.52",
                "Front drive, manual|FRONT|0.60",
                "front-wheel drive|FRONT|0.60",
                "FWD automatic|FRONT|0.60",
                "front, six gears|FRONT|0.60",
                "all-wheel drive|ALL|1",
                "four wheels driven|ALL|1",
                "4WD|ALL|1",
                "power to all wheels|ALL|1",
                "front engine, rear drive|REAR|0.52",
                "rear drive, four-speed automatic|REAR|0.52",
                "rwd, small front tyres|REAR|0.52",
                "engine in front, rear axle driven|REAR|0.52",
                "a small sedan|REAR|0.52",
            })
    void the_driven_axle_is_taken_from_the_words_of_the_driveline(String layout, Axle axle, double share)
            throws IOException {
        Chassis chassis = EditedDemo.job(
                        "layout: rear drive, manual", "layout: " + layout, "  driven-share: 53 %\n", "")
                .car()
                .vehicle()
                .orElseThrow()
                .chassis();
        assertEquals(axle, chassis.axle());
        assertEquals(share, chassis.drivenShare());
    }

    @Test
    void injectors_and_pumps() throws IOException {
        Injector plain = EditedDemo.job().car().injection().injector();
        assertEquals(1130e-6 / 60, plain.staticFlow(), 1e-12);
        assertEquals(3e5, plain.testDrop());
        assertEquals(684, plain.testDensity());
        assertEquals(1.1e-3, plain.deadTime().at(13.5), 1e-12);
        assertEquals("injector", plain.name());
        // 100 lb/h of 684 kg/m3
        Injector mass = EditedDemo.job("flow: {value: 1130 cc/min +/- 2 %", "flow: {value: 100 lb/h")
                .car()
                .injection()
                .injector();
        assertEquals(100 * POUND / 3600 / 684, mass.staticFlow(), 1e-15);
        Job told = EditedDemo.job(
                "    dead-time-table: injector-dead-time.csv",
                "    name: long\n    dead-time: 0.9 ms",
                "    test-density: {value: 684 kg/m3, from: n-heptane at 20 C, provenance: published}\n",
                "",
                "    count: 2\n    arrangement: parallel\n    wiring-resistance: {value: 45 mohm, from: voltage drop at 12 A, provenance: measured}\n",
                "    count: 2\n    arrangement: series\n");
        assertEquals("long", told.car().injection().injector().name());
        assertEquals(684, told.car().injection().injector().testDensity());
        assertEquals(0.9e-3, told.car().injection().injector().deadTime().at(9), 1e-12);
        assertEquals(
                PumpGroup.Arrangement.SERIES, told.car().injection().pumps().arrangement());
        assertEquals(0.05, told.car().injection().pumps().wiringResistance());
        PumpGroup own = told.car().nitrous().fuel().cell().orElseThrow().pumps();
        assertEquals(PumpGroup.Arrangement.PARALLEL, own.arrangement());
        assertEquals(1, own.pumps().size());
        assertEquals(6e-3, told.car().nitrous().fuel().cell().orElseThrow().volume(), 1e-12);
    }

    @Test
    void a_turbocharger_with_its_losses() throws IOException {
        var turbo = EditedDemo.job(
                        "    name: mid-size single\n",
                        "",
                        "    name: single-scroll\n",
                        "",
                        "    mechanical-efficiency: 96 %\n",
                        "")
                .car()
                .turbo();
        assertEquals("turbine", turbo.turbine().name());
        assertEquals(0.96, turbo.turbine().mechanicalEfficiency());
        assertEquals(1350e-6, turbo.turbine().effectiveArea(), 1e-12);
        assertEquals(0.15e5, turbo.turbine().exhaustLoss().pressureLoss(), 1e-9);
        assertEquals(0.72, turbo.cooler().effectiveness(), 1e-12);
        assertEquals(0.12e5, turbo.cooler().loss().pressureLoss(), 1e-9);
        assertEquals(1500, turbo.inlet().pressureLoss(), 1e-9);
        assertEquals(1203.15, turbo.exhaustTemperature(), 1e-9);
        assertEquals(1.85e5, turbo.boostCeiling(), 1e-6);
        assertEquals(118_000, turbo.map().maximumRpm(), 1e-9);
    }

    @Test
    void the_nitrous_system() throws IOException {
        var plain = EditedDemo.job().car().nitrous();
        assertEquals(NozzlePosition.RUNNER, plain.position());
        assertEquals(1.2, plain.nitrous().valve(), 1e-12);
        assertEquals(2, plain.nitrous().filterLoss());
        assertEquals(0.012, plain.nitrous().solenoid().openingDelay(), 1e-12);
        assertEquals(1.8e-3, plain.passages().orElseThrow().nitrousBore(), 1e-12);
        assertEquals(1.2e-3, plain.passages().orElseThrow().fuelBore(), 1e-12);
        assertEquals(Edge.UNKNOWN, plain.nitrous().jet().edge());
        assertEquals(Optional.empty(), plain.nitrous().jet().measured());
        var told = EditedDemo.job(
                        "    line-length: 0.35 m\n",
                        "    line-length: 14 in\n    jet-flow-factor: 0.9 +/- 0.05\n    jet-edge: long\n    jet-length-over-bore: 2\n    jet-discharge-coefficient: 0.7\n    flow-law: long-orifice\n",
                        "    filter-loss: 2\n",
                        "",
                        "      discharge-coefficient: 0.65\n      opening-delay: 12 ms\n      closing-delay: 10 ms\n",
                        "",
                        "    jet-discharge-coefficient: 0.80\n",
                        "    jet-flow-factor: 1.1\n    jet-edge: rounded\n")
                .car()
                .nitrous();
        assertEquals(14 * 0.0254, told.nitrous().lineLength(), 1e-12);
        assertEquals(2, told.nitrous().filterLoss());
        assertEquals(0.65, told.nitrous().solenoid().dischargeCoefficient());
        assertEquals(0.012, told.nitrous().solenoid().openingDelay());
        assertEquals(0.010, told.fuel().solenoid().closingDelay());
        NitrousJet jet = told.nitrous().jet();
        assertEquals(Edge.SQUARE, jet.edge());
        assertEquals(2, jet.lengthToBore());
        assertEquals(0.7, jet.dischargeCoefficient(), 1e-12);
        assertEquals("long orifice", jet.law().name());
        // 90 % of a normal distribution lie within 1.645 deviations; a half-width of 0.05 is 0.0289 of 0.9, 3.2 %
        FlowBand band = jet.measured().orElseThrow();
        assertEquals(0.9, band.best(), 1e-12);
        assertEquals(0.9 * Math.exp(1.6449 * 0.05 / Math.sqrt(3) / 0.9), band.high(), 1e-6);
        FuelJet fuel = told.fuel().jet();
        assertEquals(Edge.ROUNDED, fuel.edge());
        assertEquals(true, Double.isNaN(fuel.stated()) && Double.isNaN(fuel.lengthToBore()));
        assertEquals(
                1.1 * Math.exp(-1.6449 * 0.03), fuel.measured().orElseThrow().low(), 1e-6);
        assertEquals(
                NozzlePosition.BEFORE_THROTTLE,
                EditedDemo.job("position: runner\n  nozzles: 6", "position: before-throttle\n  nozzles: 1")
                        .car()
                        .nitrous()
                        .position());
    }

    @Test
    void a_bottle_and_its_heater() throws IOException {
        Job plain = EditedDemo.job();
        BottleSheet bottle = plain.car().bottle();
        double air = plain.air("event").pressure();
        assertEquals(12.6e-3, bottle.vessel().waterCapacity(), 1e-12);
        assertEquals(12.4, bottle.vessel().wallMass());
        assertEquals(900, bottle.vessel().wallSpecificHeat());
        assertEquals(1800 * PSI + air, bottle.servicePressure(), 1);
        assertEquals(3000 * PSI + air, bottle.reliefPressure(), 1);
        assertEquals(303.15, bottle.heaterOff(), 1e-9);
        assertEquals(323.15, bottle.hottestSoak(), 1e-9);
        assertEquals(17 * POUND, plain.setup().bottle().charge(), 1e-9);
        assertEquals(303.15, plain.setup().bottle().startTemperature(), 1e-9);
        BottleSheet cold = EditedDemo.job(
                        "  heater-power: 350 W\n",
                        "",
                        "    bottle-heater: {part: bottle-heater, duty: 50 %, length: 4.1 m, on: waiting}\n",
                        "",
                        "  service-pressure: {value: 1800 psi gauge, from: marking on the shoulder, provenance: published}\n",
                        "",
                        "  shell-specific-heat: {value: 900 J/(kg K), from: aluminium, provenance: published}\n",
                        "",
                        "  hottest-soak: 50 degC\n",
                        "  hottest-soak: 60 degC\n")
                .car()
                .bottle();
        assertEquals(0, cold.heaterPower());
        assertTrue(Double.isNaN(cold.heaterOff()));
        assertEquals(900, cold.vessel().wallSpecificHeat());
        assertEquals(333.15, cold.hottestSoak(), 1e-9);
        // 1800 psi and a standard atmosphere
        assertEquals(1800 * PSI + 101_325, cold.servicePressure(), 0.02e5);
        // nitrous oxide boils at 293.15 K under 50.6 bar (its vapour pressure by any handbook of gases)
        Job pressure = EditedDemo.job("start-temperature: 30 degC", "start-pressure: 50.6 bar abs");
        assertEquals(293.15, pressure.setup().bottle().startTemperature(), 0.3);
    }

    /** A heater needs to be told when to turn off; without one the setting is read all the same, and means nothing. */
    @Test
    void a_heater_has_its_switch_and_a_switch_needs_no_heater() throws IOException {
        assertEquals(
                List.of("bottle.heater-off-temperature"),
                problems("  heater-off-temperature: 30 degC\n", "").stream()
                        .map(Problem::field)
                        .toList());
        String heater = "  heater-power: 350 W\n";
        String load = "    bottle-heater: {part: bottle-heater, duty: 50 %, length: 4.1 m, on: waiting}\n";
        Job neither = EditedDemo.job(heater, "", load, "", "  heater-off-temperature: 30 degC\n", "");
        assertTrue(Double.isNaN(neither.car().bottle().heaterOff()));
        for (String wrong : List.of("heater-off-temperature: 30 kg", "heater-off-pressure: 5 bar abs")) {
            List<Problem> said = problems(heater, "", load, "", "heater-off-temperature: 30 degC", wrong);
            assertEquals(
                    List.of("bottle." + wrong.replaceFirst(":.*", "")),
                    said.stream().map(Problem::field).toList());
        }
    }

    private static final String[] MAIN_RAIL = {
        "    cell-volume: 6 L #",
        "    supply: main-rail #",
        "    pumps:\n      count: 1\n      wiring-resistance: 50 mohm\n      curve: nitrous-fuel-pump.csv\n",
        "",
        "    regulator:\n      base-pressure: 3.5 bar\n      # 1 follows the boost, 0 does not; compare both\n      boost-reference: 1\n",
        "",
        "    nitrous-fuel-pump: {part: nitrous-pump, surge: 30 A, surge-time: 30 ms, length: 4.1 m, on: pass}\n",
        ""
    };

    @Test
    void on_the_main_rail_there_is_no_second_supply_and_no_second_fuel() throws IOException {
        Job rail = EditedDemo.job(MAIN_RAIL);
        assertEquals(Optional.empty(), rail.car().nitrous().fuel().cell());
        assertEquals(Optional.empty(), rail.setup().ownRegulator());
        String[] other = java.util.Arrays.copyOf(MAIN_RAIL, MAIN_RAIL.length + 2);
        other[MAIN_RAIL.length] = "kind: same";
        other[MAIN_RAIL.length + 1] = "kind: methanol";
        Problem said = problems(other).get(0);
        assertEquals("fuels.nitrous.kind", said.field());
        assertEquals(
                "\"nitrous-system.fuel.supply: main-rail\" gives the nitrous system the fuel of the tank; write \"same\" here,"
                        + " or give the nitrous fuel a cell of its own.",
                said.sentence());
    }

    private static List<Problem> problems(String... edits) {
        return assertThrows(SheetException.class, () -> EditedDemo.job(edits)).problems();
    }

    @Test
    void limits_of_the_builder() throws IOException {
        Job plain = EditedDemo.job();
        double air = plain.air("event").pressure();
        assertEquals(
                new BuilderLimits(
                        160e5,
                        900,
                        25,
                        0.7,
                        0.85,
                        0.85,
                        0.15,
                        0.1,
                        0.05,
                        700 * PSI + air,
                        1000 * PSI + air,
                        0.8,
                        0.25,
                        0.8,
                        Double.POSITIVE_INFINITY,
                        0.9),
                near(plain.car().limits(), air));
        BuilderLimits told = EditedDemo.job(
                        "  lambda-low: 0.70\n",
                        "  lambda-low: 0.70\n  piston-speed: 24 m/s\n  injector-duty: 80 %\n  pump-reserve: 20 %\n  surge-margin: 12 %\n  choke-margin: 6 %\n  solenoid-share: 70 %\n  feed-loss: 20 %\n  passage-share: 75 %\n  exhaust-temperature: 950 degC\n  relief-share: 80 %\n")
                .car()
                .limits();
        assertEquals(
                List.of(24.0, 0.8, 0.2, 0.12, 0.06),
                List.of(
                        told.pistonSpeed(),
                        told.injectorDuty(),
                        told.pumpReserve(),
                        told.surgeMargin(),
                        told.chokeMargin()));
        assertEquals(0.7, told.solenoidShare(), 1e-12);
        assertEquals(List.of(0.2, 0.75, 0.8), List.of(told.feedLoss(), told.passageShare(), told.reliefShare()));
        assertEquals(1223.15, told.exhaustTemperature(), 1e-9);
    }

    private static BuilderLimits near(BuilderLimits l, double air) {
        assertEquals(700 * PSI + air, l.bottlePressureLow(), 1e-3);
        assertEquals(1000 * PSI + air, l.bottlePressureHigh(), 1e-3);
        return new BuilderLimits(
                l.peakPressure(),
                l.crankTorque(),
                l.pistonSpeed(),
                l.lambdaLow(),
                l.lambdaHigh(),
                l.injectorDuty(),
                l.pumpReserve(),
                l.surgeMargin(),
                l.chokeMargin(),
                700 * PSI + air,
                1000 * PSI + air,
                l.solenoidShare(),
                l.feedLoss(),
                l.passageShare(),
                l.exhaustTemperature(),
                l.reliefShare());
    }

    @Test
    void what_is_set_and_what_is_asked() throws IOException {
        Job plain = EditedDemo.job();
        assertEquals(Optional.empty(), plain.setup().jets());
        assertEquals(1.85e5, plain.setup().boost().off().at(4000), 1e-6);
        assertEquals(0.05e5, plain.setup().boost().tolerance(), 1e-9);
        assertEquals(
                new MixtureGoal(MixtureGoal.Kind.TOTAL_LAMBDA, 0.78),
                plain.target().mixture());
        assertEquals(720 * 745.6998715822702, plain.target().wheelPower(), 1e-6);
        assertEquals(6, plain.setup().retard(), 1e-12);
        assertEquals(5800, plain.setup().arming().rpmLow(), 1e-9);
        assertEquals(7800, plain.setup().arming().rpmHigh(), 1e-9);
        assertEquals(
                0,
                EditedDemo.job(
                                "  nitrous-retard: {value: 6 deg, from: usual retard for a shot of this size, provenance: common practice}\n",
                                "")
                        .setup()
                        .retard());
        Job told = EditedDemo.job(
                "\ntune:\n",
                "\nsetup:\n  nitrous-jet: 40 thou\n  fuel-jet: 20 thou\n  boost: 1.2 bar gauge\n\ntune:\n",
                "nitrous-lambda: {value: 0.78",
                "nitrous-ratio: {value: 5");
        assertEquals(1.016e-3, told.setup().jets().orElseThrow().nitrousBore(), 1e-12);
        assertEquals(0.508e-3, told.setup().jets().orElseThrow().fuelBore(), 1e-12);
        assertEquals(1.2e5, told.setup().boost().armed().at(6000), 1e-6);
        assertEquals(MixtureGoal.ratio(5), told.target().mixture());
        assertEquals(
                MixtureGoal.circuit(0.8),
                EditedDemo.job("nitrous-lambda: {value: 0.78", "nitrous-circuit-lambda: {value: 0.8")
                        .target()
                        .mixture());
        String armed = "  boost-armed: {engine-speed: [4000 rpm, 6000 rpm], boost: [1.0 bar gauge, 1.4 bar gauge]}\n";
        Job one = EditedDemo.job("\ntune:\n", "\nsetup:\n" + armed + "\ntune:\n");
        assertEquals(1.2e5, one.setup().boost().off().at(5000), 1e-6);
        Job both = EditedDemo.job(
                "\ntune:\n",
                "\nsetup:\n" + armed
                        + "  boost-off: {engine-speed: [4000 rpm, 6000 rpm], boost: [0.5 bar gauge, 0.9 bar gauge]}\n  boost-tolerance: 80 mbar\n\ntune:\n");
        assertEquals(0.7e5, both.setup().boost().off().at(5000), 1e-6);
        assertEquals(BoostTable.class, both.setup().boost().armed().getClass());
        assertEquals(1.2e5, both.setup().boost().armed().at(5000), 1e-6);
        assertEquals(8e3, both.setup().boost().tolerance(), 1e-9);
    }

    @Test
    void the_cases_in_which_a_plan_must_hold() throws IOException {
        List<Case> cases = EditedDemo.job().cases();
        assertEquals(
                List.of(
                        "event",
                        "cold",
                        "hot",
                        "last second of the last pass",
                        "low voltage",
                        "least ethanol",
                        "most ethanol"),
                cases.stream().map(Case::name).toList());
        assertEquals(285.15, cases.get(1).air().temperature(), 1e-9);
        assertEquals(307.15, cases.get(2).air().temperature(), 1e-9);
        assertEquals(0.35, cases.get(1).air().relativeHumidity(), 1e-12);
        assertEquals(cases.get(0).air().pressure(), cases.get(2).air().pressure());
        assertEquals(12.8, cases.get(4).voltage());
        assertEquals(
                12,
                EditedDemo.job("  voltage: 12.8 V\n", "  voltage: 12 V\n")
                        .cases()
                        .get(4)
                        .voltage());
        assertEquals(
                12.8, EditedDemo.job("  voltage: 12.8 V\n", "").cases().get(4).voltage(), 1e-12);
        assertEquals(
                List.of("must-hold.volts"),
                problems("  voltage: 12.8 V\n", "  volts: 12 V\n").stream()
                        .map(Problem::field)
                        .toList());
        assertEquals(0.62, cases.get(5).ethanol().orElseThrow(), 1e-12);
        assertEquals(0.82, cases.get(6).ethanol().orElseThrow(), 1e-12);
        // 8 K to either side, 0.7 V less, one content
        String text = Files.readString(DemoSheetTest.DEMO).replaceAll("(?s)\nmust-hold:.*?\n\n", "\n\n");
        List<Case> usual = Job.read(text, FOLDER).cases();
        assertEquals(5, usual.size());
        assertEquals(292.15, usual.get(1).air().temperature(), 1e-9);
        assertEquals(308.15, usual.get(2).air().temperature(), 1e-9);
        assertEquals(12.8, usual.get(4).voltage(), 1e-12);
        assertEquals(13.5, usual.get(3).voltage());
        assertEquals(
                1,
                EditedDemo.job("[12 degC, 34 degC]", "[27 degC, 27 degC]").cases().stream()
                        .filter(c -> c.name().equals("cold") && Math.abs(c.air().temperature() - 300.15) < 1e-9)
                        .count());
    }

    @Test
    void a_day() throws IOException {
        DaySheet day = EditedDemo.job().day();
        assertEquals(1200, day.rest());
        assertEquals(2, day.bottles());
        assertEquals(12.5, day.voltage());
        assertEquals(OptionalDouble.empty(), day.chilledTo());
        assertEquals(POUND, day.scaleStep(), 1e-12);
        assertEquals(
                new DaySheet.Mother(0.030, 44 * POUND, 293.15), day.mother().orElseThrow());
        DaySheet told = EditedDemo.job("  scale-step: 1 lb\n", "  scale-step: 50 g\n  chilled-to: -10 degC\n")
                .day();
        assertEquals(263.15, told.chilledTo().orElseThrow(), 1e-9);
        assertEquals(0.05, told.scaleStep(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "[12 degC, 34 degC]|[34 degC, 12 degC]|must-hold.temperature: Give the lowest and the highest, in that order, as in [12 degC, 34 degC].",
                "[12 degC, 34 degC]|[12 degC]|must-hold.temperature: Give the lowest and the highest, in that order, as in [12 degC, 34 degC].",
                "    kind: ethanol-blend#    ethanol: {value: 78 % +/- 1 %, from: graduated cylinder and water, provenance: measured}|    kind: methanol|must-hold.ethanol: The main fuel is no ethanol blend, so its content cannot vary; leave this out.",
                "#tune:#|#setup:#  boost-off: {engine-speed: [4000 rpm, 6000 rpm], boost: [0.5 bar gauge, 0.9 bar gauge]}##tune:#|setup.boost-off: \"boost-off\" goes with a table \"boost-armed\", which does not stand here; add it, or write one \"boost\" for every speed.",
                "#tune:#|#setup:#  boost-tolerance: 50 mbar##tune:#|setup.boost-tolerance: \"boost-tolerance\" goes with a table \"boost-armed\", which does not stand here; add it, or write one \"boost\" for every speed.",
                "#tune:#|#setup:#  boost-armed: {engine-speed: [4000 rpm, 6000 rpm], boost: [0.5 bar gauge]}##tune:#|setup.boost-armed.boost: The table has 2 engine speeds and 1 boosts; give one boost for each speed.",
                "#tune:#|#setup:#  boost: 1 bar gauge#  boost-off: {engine-speed: [4000 rpm, 6000 rpm], boost: [0.5 bar gauge, 0.6 bar gauge]}##tune:#|setup.boost-off: \"boost\" says one boost for every speed, \"boost-off\" another; keep one of them.",
                "#tune:#|#setup:#  nitrous-jet: 40 thou##tune:#|setup.fuel-jet: \"setup.fuel-jet\" is missing; write a length from 0.1 to 10 mm.",
                "nitrous-lambda: {value: 0.78|nitrous-circuit-lambda: 0.8#  nitrous-lambda: {value: 0.78|tune.nitrous-circuit-lambda: The mixture with nitrous is asked for in more than one way; keep one of nitrous-lambda, nitrous-ratio and nitrous-circuit-lambda.",
                "nitrous-lambda: {value: 0.78|nitrous-circuit-lambda: 0.8#  nitrous-ratio: {value: 5|tune.nitrous-ratio: The mixture with nitrous is asked for in more than one way; keep one of nitrous-lambda, nitrous-ratio and nitrous-circuit-lambda.",
                "    line-length: 0.35 m#|    line-length: 0.35 m#    jet-edge: long#    jet-length-over-bore: 1.9#|nitrous-system.nitrous.jet-edge: A long jet is a square-edged one that runs full, from 2 bores of length on; state such a jet-length-over-bore, or write \"square\".",
                "    line-length: 0.35 m#|    line-length: 0.35 m#    flow-law: long-orifice#    jet-length-over-bore: 10.1#|nitrous-system.nitrous.flow-law: The law \"long-orifice\" covers jets 2 to 10 bores long; state jet-length-over-bore within it, or choose \"class\".",
                "lambda-low: 0.70|lambda-low: 0.85|limits.lambda-high: \"lambda-high\" is not above \"lambda-low\"; exchange or mend them.",
                "bottle-pressure-low: 700|bottle-pressure-low: 1000|limits.bottle-pressure-high: \"bottle-pressure-high\" is not above \"bottle-pressure-low\"; exchange or mend them.",
                "charge: 44 lb|charge: 45 lb|day.mother-bottle.charge: The mother bottle holds 45.00 lb; 49 CFR 173.304a(a)(2) allows 44.97 lb in its water capacity: weigh it and read its marking anew, this limit is not to be moved.",
                "    cell-volume: 6 L|    supply: main-rail#    cell-volume: 6 L|nitrous-system.fuel.pumps: \"pumps\" belongs to a supply of its own, but \"supply: main-rail\" stands here: the pumps of \"injection\" give both fuels and would count twice; take it out, or write \"supply: own-cell\".",
            })
    void what_cannot_be_is_told_in_a_sentence(String before, String after, String message) throws IOException {
        String text = EditedDemo.text(before.replace('#', '\n'), after.replace('#', '\n'));
        Problem first = assertThrows(SheetException.class, () -> Job.read(text, FOLDER))
                .problems()
                .get(0);
        assertEquals(message, first.field() + ": " + first.sentence());
    }

    @Test
    void a_heater_may_be_set_to_what_the_builder_allows_and_not_beyond() throws IOException {
        // 850 psi gauge allowed; the switch at 860
        List<String> said = assertThrows(
                        SheetException.class,
                        () -> EditedDemo.job(
                                "heater-off-temperature: 30 degC",
                                "heater-off-pressure: 860 psi gauge",
                                "start-temperature: 30 degC",
                                "start-temperature: 20 degC",
                                "bottle-pressure-high: 1000",
                                "bottle-pressure-high: 850"))
                .problems()
                .stream()
                .map(Problem::field)
                .toList();
        assertEquals(List.of("bottle.heater-off-pressure"), said);
        Job allowed = EditedDemo.job("heater-off-temperature: 30 degC", "heater-off-pressure: 999 psi gauge");
        assertTrue(allowed.car().bottle().heaterOff() > 303);
    }

    @Test
    void the_chain_of_contacts_in_its_order() throws IOException {
        var circuits = EditedDemo.job()
                .car()
                .wiring()
                .orElseThrow()
                .safety()
                .orElseThrow()
                .circuits();
        assertEquals(
                List.of(
                        "nitrous solenoid NITROUS_VALVE 6",
                        "fuel solenoid FUEL_VALVE 5",
                        "nitrous fuel pump FUEL_PUMP 4"),
                circuits.stream()
                        .map(c -> c.name() + " " + c.role() + " " + c.contacts().size())
                        .toList());
        assertEquals(
                List.of(
                        "master switch",
                        "valve fuse",
                        "arming switch",
                        "throttle switch",
                        "fuel pressure switch",
                        "valve driver"),
                circuits.get(0).contacts().stream().map(c -> c.name()).toList());
        assertEquals(
                Stream.of("", "pulsing output 12").toList(),
                Stream.of(0, 5)
                        .map(i -> circuits.get(0).contacts().get(i).output())
                        .toList());
    }
}
