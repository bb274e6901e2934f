package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.TEMPERATURE;
import static org.shotledger.units.QuantityKind.TIME;
import static org.shotledger.units.QuantityKind.VOLUME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.shotledger.car.FuelStreams;
import org.shotledger.engine.MoistAir;
import org.shotledger.flow.FlowTest;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.nitrous.FlowTestRig;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.TestBottle;
import org.shotledger.nitrous.TestInstruments;
import org.shotledger.nitrous.WetKit;
import org.shotledger.sheet.SheetSection;
import org.shotledger.units.UnitFactors;
import org.shotledger.units.UnitSystem;

/**
 * Reads the flow tests of the car's own jets and gives the wet kit what they found, one after the other.
 *
 * <p>Nitrous: the bottle is weighed before and after a timed discharge of liquid through the jets into the open. Fuel: so much fuel or water
 * in a measured time at a flowing pressure read at the rail. Half-widths after {@code +/-} are the errors; without them the
 * usual ones below count (common practice, no source).
 */
final class FlowTestSections {
    /** Errors where the sheet states none. */
    private static final TestInstruments USUAL = TestInstruments.USUAL;

    /** A pressure that fell below this share of the first one is that of a bottle whose liquid was gone. */
    private static final double LIQUID_LASTED = 0.7;

    private static final Map<String, JetSide> KINDS = kinds();
    private static final Map<String, Boolean> LIQUIDS = liquids();

    private final FuelStreams fuels;
    private final Map<String, MoistAir> places;
    private final String usualPlace;

    FlowTestSections(FuelStreams fuels, Map<String, MoistAir> places, String usualPlace) {
        this.fuels = fuels;
        this.places = places;
        this.usualPlace = usualPlace;
    }

    /** One test as it was read, and what it tells of a kit. */
    private record Pending(SheetSection s, Function<WetKit, FlowTested> told) {}

    /** Reads all tests of the section; what they tell of a kit is asked of the result, once there is one. */
    UnaryOperator<WetKit> tests(SheetSection s) {
        List<Pending> all = new ArrayList<>();
        s.namedSections().forEach((name, test) -> all.add(new Pending(test, test(name, test))));
        s.make(() -> s);
        return kit -> after(all, kit);
    }

    private static WetKit after(List<Pending> tests, WetKit untested) {
        WetKit kit = untested;
        for (Pending test : tests) {
            try {
                kit = kit.after(test.told.apply(kit));
            } catch (IllegalArgumentException refused) {
                test.s.report("seconds", refused.getMessage());
            }
        }
        return kit;
    }

    private Function<WetKit, FlowTested> test(String name, SheetSection s) {
        JetSide side = s.choice("kind", KINDS);
        double bore = s.figure("jets", BORE, 1e-4, 0.01);
        OptionalInt nozzles = s.has("nozzles") ? OptionalInt.of(s.count("nozzles", 1, 16)) : OptionalInt.empty();
        double ambient = ambient(s);
        double seconds = s.figure("seconds", TIME, 0.5, 600);
        Setting at = new Setting(name, s, bore, nozzles, ambient, seconds, error(s, "seconds", USUAL.stopwatch()));
        return side == JetSide.NITROUS ? nitrous(at) : fuel(at);
    }

    /** What both kinds of test have. */
    private record Setting(
            String name,
            SheetSection s,
            double bore,
            OptionalInt nozzles,
            double ambient,
            double seconds,
            double watch) {
        int open(WetKit kit) {
            return nozzles.orElse(kit.nozzles());
        }
    }

    private double ambient(SheetSection s) {
        String where = s.has("conditions") ? EngineSections.conditions(s, places.keySet()) : usualPlace;
        MoistAir air = places.get(where);
        return air == null ? Double.NaN : air.pressure();
    }

    private static Function<WetKit, FlowTested> nitrous(Setting at) {
        SheetSection s = at.s;
        double before = s.figure("before", MASS, 0.1, 300);
        double after = s.figure("after", MASS, 0.1, 300);
        if (after >= before) {
            s.report(
                    "after",
                    "The bottle weighs no less after the discharge than before it; exchange or mend \"before\" and"
                            + " \"after\".");
        }
        double scale = Math.hypot(error(s, "before", USUAL.scale()), error(s, "after", USUAL.scale()));
        TestBottle bottle = bottle(s, at.ambient);
        return s.make(() -> kit -> FlowTestRig.nitrous(kit, at.open(kit), at.bore, bottle, at.ambient)
                .told(at.name, new FlowTest(before - after, scale, at.seconds, at.watch)));
    }

    /** The bottle during the discharge: mean pressure, its standard deviation, and the temperature where it was read. */
    private static TestBottle bottle(SheetSection s, double ambient) {
        double hottest = NitrousOxide.CRITICAL_TEMPERATURE - 1;
        double temperature =
                s.has("bottle-temperature") ? s.figure("bottle-temperature", TEMPERATURE, 233.15, hottest) : Double.NaN;
        double boiling = Double.isNaN(temperature) ? Double.NaN : NitrousOxide.saturationPressure(temperature);
        boolean read = s.has("bottle-pressure") || !s.has("bottle-temperature");
        // a bottle full of liquid may stand above its boiling pressure, one with vapour in it may not
        double most = Double.isNaN(boiling) ? 0.97 * NitrousOxide.CRITICAL_PRESSURE : 150e5;
        double first = read ? s.pressure("bottle-pressure", 10e5, most, ambient) : boiling;
        double last = s.has("bottle-pressure-after") ? s.pressure("bottle-pressure-after", 5e5, most, ambient) : first;
        if (first < boiling * (1 - TestBottle.AGREE)) {
            s.report(
                    "bottle-pressure",
                    "At " + TEMPERATURE.text(temperature, UnitSystem.SI) + " a bottle with liquid in it has "
                            + ABSOLUTE_PRESSURE.text(boiling, UnitSystem.SI)
                            + ", more than the pressure stated; one of the two is read wrong, or there was no liquid.");
        }
        if (last < LIQUID_LASTED * first) {
            s.report(
                    "bottle-pressure-after",
                    "The bottle lost more than 30 % of its pressure: its liquid was gone before the end and vapour came"
                            + " out; test again with a fuller bottle or fewer seconds.");
        }
        double gauge = read && !Double.isNaN(s.uncertainty("bottle-pressure"))
                ? s.uncertainty("bottle-pressure")
                : TestInstruments.deviation(USUAL.gauge() * first);
        return new TestBottle((first + last) / 2, Math.hypot(gauge, (first - last) / Math.sqrt(12)), temperature);
    }

    private Function<WetKit, FlowTested> fuel(Setting at) {
        SheetSection s = at.s;
        boolean water = s.choice("liquid", LIQUIDS);
        double usual = water || fuels == null ? 293.15 : fuels.temperature();
        double temperature = s.figureOr("temperature", TEMPERATURE, 268.15, 328.15, usual, "not measured");
        double volume = s.figure("volume", VOLUME, 1e-5, 0.2);
        double cylinder = error(s, "volume", USUAL.cylinder());
        double pressure = s.pressure("flowing-pressure", at.ambient + 0.1e5, at.ambient + 30e5, at.ambient);
        double drop = pressure - at.ambient;
        double gauge = error(s, "flowing-pressure", USUAL.gauge() * drop);
        return s.make(() -> kit -> {
            double density = water ? water(temperature) : fuels.nitrous().density(temperature);
            return FlowTestRig.fuel(kit, at.open(kit), at.bore, density, drop, gauge, at.ambient)
                    .told(at.name, FlowTest.ofLiquid(volume, cylinder, density, at.seconds, at.watch));
        });
    }

    /** Density of water, 0 to 40 degC, kg/m3. Source: Tanaka et al., Metrologia 38 (2001) 301-309, from memory. */
    private static double water(double temperature) {
        double t = temperature - UnitFactors.ICE_POINT;
        double from = t - 3.983035;
        return 999.974950 * (1 - from * from * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }

    /** Standard deviation of a figure: that of its own band, or of the usual half-width. */
    private static double error(SheetSection s, String key, double usualHalfWidth) {
        double own = s.uncertainty(key);
        return Double.isNaN(own) ? TestInstruments.deviation(usualHalfWidth) : own;
    }

    private static Map<String, Boolean> liquids() {
        Map<String, Boolean> liquids = new LinkedHashMap<>();
        liquids.put("fuel", false);
        liquids.put("water", true);
        return liquids;
    }

    private static Map<String, JetSide> kinds() {
        Map<String, JetSide> kinds = new LinkedHashMap<>();
        kinds.put("nitrous", JetSide.NITROUS);
        kinds.put("fuel", JetSide.FUEL);
        return kinds;
    }
}
