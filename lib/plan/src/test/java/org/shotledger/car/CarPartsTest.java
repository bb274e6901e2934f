package org.shotledger.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.shotledger.bottle.Filling;
import org.shotledger.engine.Intake;
import org.shotledger.engine.NitrousFactor;
import org.shotledger.fuel.Fuels;
import org.shotledger.job.Job;
import org.shotledger.limits.Provenance;
import org.shotledger.sheet.Found;
import org.shotledger.units.QuantityKind;
import org.shotledger.wiring.Pin;
import org.shotledger.wiring.PinKind;

/** Parts of a car as records: what follows from them, and that one is exchanged while the others stay. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CarPartsTest {
    private static final Job JOB = Job.load(Path.of("../../data/whimbrel"));
    private static final Car CAR = JOB.car();

    @Test
    void one_part_is_exchanged_and_the_others_stay() {
        FuelStreams tanks = CAR.fuels().withMain(Fuels.METHANOL);
        Car other = CAR.with(tanks);
        assertSame(tanks, other.fuels());
        assertEquals(CAR, other.with(CAR.fuels()));
        EngineModel models = EngineModel.uncalibrated(
                CAR.engine(), CAR.friction(), new CycleTables(CAR.engine().compressionRatio()));
        assertSame(models, CAR.with(models).model());
        assertEquals(CAR, CAR.with(models).with(CAR.model()));
        assertEquals(CAR, CAR.with(CAR.turbo()));
        assertEquals(CAR, CAR.with(CAR.nitrous()));
        assertEquals(CAR, CAR.with(CAR.injection()));
        assertEquals(CAR, CAR.with(CAR.limits()));
        assertEquals(CAR, CAR.with(CAR.basePull()));
    }

    @Test
    void a_figure_is_known_as_its_place_in_the_sheet_says() {
        assertEquals(Provenance.MEASURED, CAR.provenance("engine.bore"));
        assertEquals("bore gauge", CAR.reason("engine.bore"));
        assertEquals(
                "85.3 mm +/- 0.02 mm", CAR.origin("engine.bore").orElseThrow().text());
        assertEquals(Provenance.COMMON_PRACTICE, CAR.provenance(""));
        assertEquals("common practice, no source", CAR.reason("no.such.figure"));
        assertEquals(Optional.empty(), CAR.origin("no.such.figure"));
        assertEquals("common practice, no source", CAR.reason("engine.red-line"), "stated without a reason");
        assertTrue(CAR.origin("engine.bore").orElseThrow().stated());
        assertTrue(!CAR.origin("limits.piston-speed").orElseThrow().stated());
    }

    /** Before calibration the usual values stand; each constant is exchanged alone. */
    @Test
    void one_constant_of_the_models_is_exchanged_and_the_others_stay() {
        EngineModel usual = EngineModel.uncalibrated(
                CAR.engine(), CAR.friction(), new CycleTables(CAR.engine().compressionRatio()));
        assertEquals(0.8, usual.factor().value());
        assertEquals(Optional.empty(), usual.baseKnock());
        EngineModel own = CAR.model();
        assertEquals(usual.factor(), own.with(usual.factor()).factor());
        assertEquals(own, own.with(usual.factor()).with(own.factor()));
        NitrousFactor all = new NitrousFactor(1, 0.9, 1);
        assertEquals(all, own.with(all).nitrous());
        assertEquals(own, own.with(all).with(own.nitrous()));
        assertEquals(usual.cylinder(), own.with(usual.cylinder()).cylinder());
        assertEquals(own, own.with(usual.cylinder()).with(own.cylinder()));
        EngineModel based = usual.withBase(own.probe(), own.baseKnock().orElseThrow(), 1.1);
        assertEquals(own.probe(), based.probe());
        assertEquals(1.1, based.backPressure());
        assertEquals(own.baseKnock(), based.baseKnock());
        // a table of cycles is made once for each pair of fuels
        var cycles = own.cycles();
        assertSame(cycles.of(Fuels.METHANOL, Fuels.ETHANOL), cycles.of(Fuels.METHANOL, Fuels.ETHANOL));
        assertEquals(cycles, new CycleTables(9.3));
        assertSame(cycles, CycleTables.of(9.3, Optional.of(cycles)));
        assertEquals(new CycleTables(9.4), CycleTables.of(9.4, Optional.of(cycles)));
        assertEquals(cycles, CycleTables.of(9.3, Optional.empty()));
        assertNotEquals(cycles, new CycleTables(9.4));
        assertEquals(cycles.hashCode(), new CycleTables(9.3).hashCode());
        BasePull pull = CAR.basePull();
        BasePull two = new BasePull(
                pull.air(),
                pull.fuel(),
                pull.lambda(),
                List.of(new BasePull.Point(5000, 1e5, 4e5), new BasePull.Point(6000, 1e5, 3e5)),
                0.01,
                Optional.empty());
        assertEquals(5000, two.strongest().rpm());
    }

    private static Origin origin(String text, double value, double halfWidth, String from) {
        return Origin.of(new Found(
                "engine.bore",
                text,
                QuantityKind.LENGTH,
                value,
                halfWidth,
                from,
                "",
                "job.yaml",
                41,
                Found.Meant.UNSAID));
    }

    /** A rectangular band of half width a has the standard uncertainty a/sqrt(3) (JCGM 100, 4.3.7). */
    @Test
    void a_figure_is_written_again_in_its_own_unit() {
        Origin bore = origin("85.3 mm +/- 0.02 mm", 0.0853, 0.02e-3, "");
        assertEquals(0.02e-3 / Math.sqrt(3), bore.uncertainty(), 1e-12);
        assertEquals(0.02e-3, bore.halfWidth(), 1e-12);
        assertEquals("assumed", bore.provenance());
        assertTrue(bore.written(0.086).matches("86\\.0+ mm"), bore.written(0.086));
        assertTrue(bore.means("8.53 cm") && bore.means("3.3582677165 in"));
        assertTrue(!bore.means("85.4 mm") && !bore.means("85.3 kg"));
        assertEquals("job.yaml, line 41", bore.source());
        assertEquals(
                "gauge (job.yaml, line 41)",
                origin("85.3 mm", 0.0853, 0, "gauge").source());
        assertThrows(
                IllegalArgumentException.class,
                () -> origin("usual", 0.0853, 0, "").written(0.086));
    }

    /** The next pass begins as warm as the first, but no warmer than the heater makes it; no sheet loosens what a bottle may hold. */
    @Test
    void the_bottle_is_brought_back_by_its_heater_and_held_to_the_rules() {
        BottleSheet sheet = CAR.bottle();
        assertEquals(300, sheet.reheated(300));
        assertEquals(303.15, sheet.reheated(310), 1e-9);
        BottleSheet none = new BottleSheet(
                sheet.vessel(), 0, Double.NaN, sheet.servicePressure(), sheet.reliefPressure(), sheet.hottestSoak());
        assertEquals(310, none.reheated(310));
        Filling filling = sheet.filling(7, 300, CAR.limits());
        assertEquals(0.68, filling.largestDensity());
        assertEquals(0.9, filling.discShare());
        assertEquals(303.15, filling.heaterOff(), 1e-9);
        assertEquals(7, filling.mass());
        assertTrue(Double.isNaN(none.filling(7, 300, CAR.limits()).heaterOff()));
    }

    /** Where the nitrous system burns the main fuel it gets its ethanol; a fuel of its own stays. */
    @Test
    void ethanol_reaches_the_nitrous_system_where_it_burns_the_main_fuel() {
        FuelStreams same = CAR.fuels();
        FuelStreams less = same.with(OptionalDouble.of(0.5));
        assertEquals(
                Fuels.ethanolBlend(0.5, 0, Fuels.GASOLINE).oxygenDemand(),
                less.main().oxygenDemand(),
                1e-12);
        assertEquals(less.main(), less.nitrous());
        assertSame(same, same.with(OptionalDouble.empty()));
        assertSame(same, same.with(OptionalDouble.of(0.78)));
        FuelStreams own = same.withNitrous(Fuels.METHANOL).with(OptionalDouble.of(0.5));
        assertEquals(Fuels.METHANOL, own.nitrous());
        assertNotEquals(same.main(), own.main());
        FuelStreams fixed = same.withMain(Fuels.ETHANOL);
        assertSame(fixed, fixed.with(OptionalDouble.of(0.5)));
        assertEquals(same.main(), fixed.nitrous(), "what was in the nitrous system's tank stays");
        Intake.Warming warm = new Intake.Warming(0.8, 0.1);
        assertEquals(warm, same.with(warm).warming());
        assertEquals(same, same.with(warm).with(same.warming()));
    }

    private static Controller controller(int in, int inUsed, int out, int outUsed, int pulse, int pulseUsed) {
        Controller old = CAR.controller().orElseThrow();
        return new Controller(in, inUsed, out, outUsed, pulse, pulseUsed, List.of(), List.of(), old.stage());
    }

    /** Of 16 inputs 13 and of 14 outputs 11 are used; of the 8 that pulse 7: three inputs, three outputs, one of which pulses, and a bus. */
    @Test
    void free_pins_are_what_is_not_used() {
        Controller controller = controller(16, 13, 14, 11, 8, 7);
        assertEquals(1, controller.pulsingOutputsFree());
        List<Pin> pins = controller.freePins(4);
        assertEquals(
                List.of("input 14", "input 15", "input 16", "pulsing output 12", "output 13", "output 14", "data bus"),
                pins.stream().map(Pin::name).toList());
        assertTrue(pins.get(0).kinds().contains(PinKind.ANALOGUE)
                && pins.get(3).kinds().contains(PinKind.LOW_SIDE));
        assertEquals(3, controller(16, 13, 14, 11, 8, 2).pulsingOutputsFree(), "no more than there are outputs");
        assertEquals(
                List.of("data bus"),
                controller(4, 4, 4, 4, 0, 0).freePins(4).stream().map(Pin::name).toList());
    }

    @Test
    void no_part_of_a_controller_exceeds_its_whole() {
        assertThrows(IllegalArgumentException.class, () -> controller(4, 5, 4, 4, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> controller(4, 4, 4, 5, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> controller(4, 4, 4, 4, 5, 0));
        assertThrows(IllegalArgumentException.class, () -> controller(4, 4, 4, 4, 3, 4));
        assertThrows(IllegalArgumentException.class, () -> controller(4, 4, 4, 2, 4, 3));
    }
}
