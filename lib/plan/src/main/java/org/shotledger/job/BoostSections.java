package org.shotledger.job;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.AREA;
import static org.shotledger.units.QuantityKind.DENSITY;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.GAUGE_PRESSURE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.ROTATION;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import java.util.Optional;
import org.shotledger.boost.ChargeCooler;
import org.shotledger.boost.CompressorMap;
import org.shotledger.boost.FlowLoss;
import org.shotledger.boost.MapReference;
import org.shotledger.boost.Turbine;
import org.shotledger.car.Turbo;
import org.shotledger.sheet.CsvTable;
import org.shotledger.sheet.SheetSection;

/** Reads turbocharger and charge cooling. */
final class BoostSections {
    private BoostSections() {}

    static Turbo turbo(SheetSection s) {
        CompressorMap map = compressor(s.section("compressor"));
        Turbine turbine = turbine(s.section("turbine"));
        FlowLoss inlet = loss(s.section("inlet-loss"), "inlet");
        ChargeCooler cooler = cooler(s.section("charge-cooler"));
        double exhaust = s.figure("exhaust-temperature", TEMPERATURE, 700, 1500);
        double ceiling = s.figure("boost-ceiling", GAUGE_PRESSURE, 0, 6e5);
        return s.make(() -> new Turbo(map, turbine, inlet, cooler, exhaust, ceiling));
    }

    private static CompressorMap compressor(SheetSection s) {
        String name = s.textOr("name", "compressor");
        double temperature = s.figure("reference-temperature", TEMPERATURE, 250, 330);
        double pressure = s.figure("reference-pressure", ABSOLUTE_PRESSURE, 80e3, 110e3);
        double maximum = s.figure("max-speed", ROTATION, 10_000, 400_000);
        Optional<CsvTable> table = s.table("map", Tables.COMPRESSOR_MAP);
        return s.make(() ->
                Tables.compressorMap(name, table.orElseThrow(), new MapReference(temperature, pressure), maximum));
    }

    private static Turbine turbine(SheetSection s) {
        String name = s.textOr("name", "turbine");
        double area = s.figure("effective-area", AREA, 1e-5, 1e-2);
        double efficiency = s.figure("efficiency", FRACTION, 0.3, 0.85);
        double mechanical = s.figureOr("mechanical-efficiency", FRACTION, 0.8, 1, 0.96, "common practice, no source");
        FlowLoss exhaust = loss(s.section("exhaust-loss"), "exhaust");
        return s.make(() -> new Turbine(name, area, efficiency, mechanical, exhaust));
    }

    private static ChargeCooler cooler(SheetSection s) {
        double effectiveness = s.figure("effectiveness", FRACTION, 0, 1);
        FlowLoss loss = loss(s.section("loss"), "charge cooler");
        return s.make(() -> new ChargeCooler("charge cooler", effectiveness, loss));
    }

    private static FlowLoss loss(SheetSection s, String name) {
        double loss = s.figure("pressure", PRESSURE_DIFFERENCE, 0, 1e5);
        double flow = s.figure("at-flow", MASS_FLOW, 1e-3, 10);
        double density = s.figure("at-density", DENSITY, 0.3, 6);
        return s.make(() -> new FlowLoss(name, loss, flow, density));
    }
}
