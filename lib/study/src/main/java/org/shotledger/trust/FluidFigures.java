package org.shotledger.trust;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.units.UnitFactors;

/** Saturation of nitrous oxide against other correlations and single published values. */
final class FluidFigures {
    private static final String ESDU = "ESDU 91022";

    /** From here towards the critical point, K, the two correlations drift apart. */
    private static final double WARM = 298.2;

    private FluidFigures() {}

    static List<Comparison> all(Path data) {
        List<Comparison> all = new ArrayList<>();
        Cells.of(data.resolve("published/nitrous-oxide-esdu91022.csv")).forEach(row -> correlations(row, all));
        Cells.of(data.resolve("published/nitrous-oxide-points.csv")).forEach(row -> all.add(point(row)));
        return all;
    }

    private static void correlations(List<String> row, List<Comparison> all) {
        double t = Double.parseDouble(row.get(0));
        boolean warm = t > WARM;
        double vapour = NitrousOxide.saturatedVapour(t).enthalpy();
        double heat = vapour - NitrousOxide.saturatedLiquid(t).enthalpy();
        String at = " at " + t + " K";
        add(all, "vapour pressure" + at, row.get(2), 1e5, NitrousOxide.saturationPressure(t), 0.0045);
        add(
                all,
                "liquid density" + at,
                row.get(3),
                1,
                NitrousOxide.saturatedLiquid(t).density(),
                0.012);
        add(
                all,
                "vapour density" + at,
                row.get(4),
                1,
                NitrousOxide.saturatedVapour(t).density(),
                warm ? 0.03 : 0.01);
        add(all, "heat of vaporisation" + at, row.get(7), 1e3, heat, warm ? 0.031 : 0.008);
    }

    private static void add(
            List<Comparison> all, String what, String cell, double unit, double predicted, double allowed) {
        all.add(Comparison.within(ESDU, what, unit * Double.parseDouble(cell), predicted, allowed));
    }

    private static Comparison point(List<String> row) {
        double t = Double.parseDouble(row.get(1));
        double predicted = switch (row.get(0)) {
            case "vapour pressure" -> NitrousOxide.saturationPressure(t);
            case "liquid density" -> NitrousOxide.saturatedLiquid(t).density();
            case "heat of vaporisation" ->
                NitrousOxide.saturatedVapour(t).enthalpy()
                        - NitrousOxide.saturatedLiquid(t).enthalpy();
            default -> NitrousOxide.saturationTemperature(UnitFactors.ATMOSPHERE);
        };
        double allowed = Double.parseDouble(row.get(4));
        return Comparison.within(
                row.get(5), row.get(0) + " at " + t + " K", Double.parseDouble(row.get(2)), predicted, allowed);
    }
}
