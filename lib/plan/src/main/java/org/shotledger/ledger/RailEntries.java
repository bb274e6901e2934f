package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.PRESSURE_DIFFERENCE;
import static org.shotledger.units.QuantityKind.RATIO;

import org.shotledger.car.SheetPaths;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.nitrous.SharedRail;
import org.shotledger.supply.Regulator;

/** The main fuel's pressure, which is that of the nitrous fuel too where both come from one rail. */
final class RailEntries {
    private static final String[] REGULATED = {"ambient-pressure", "main-pressure", "main-reference", "plenum-pressure"
    };

    private static final double SETTLED = 1e-5;

    private RailEntries() {}

    static void write(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        Regulator set = from.setup().mainRegulator();
        pen.given(
                        "main-pressure",
                        "set pressure of the main fuel",
                        "",
                        PRESSURE_DIFFERENCE,
                        set.basePressure(),
                        SheetPaths.MAIN_PRESSURE,
                        "this setup")
                .enter();
        pen.given(
                        "main-reference",
                        "boost reference of its regulator",
                        "",
                        RATIO,
                        set.boostReference(),
                        SheetPaths.MAIN_REFERENCE,
                        "this setup")
                .enter();
        var rail = pen.calculated(
                "main-rail",
                onRail(from) ? "pressure at the main fuel rail, for both fuels" : "pressure at the main fuel rail",
                "p_r",
                ABSOLUTE_PRESSURE,
                p.main().railPressure());
        if (!fallen(from)) {
            rail.by("p_a + set pressure + reference (p_m - p_a)", "definition")
                    .on(REGULATED)
                    .from(RailEntries::regulated);
            return;
        }
        rail.by(
                        "the pressure at which the main pumps give what injectors and nitrous fuel jets pass; the regulator's is not"
                                + " held",
                        "pump curve")
                .enter();
        pen.calculated(
                        "injector-share",
                        "share of the fuel asked for that the injectors pass",
                        "",
                        FRACTION,
                        share(from))
                .by("sqrt((p_r - p_m) / (p_a + set pressure + reference (p_m - p_a) - p_m))", "Bernoulli")
                .on("ambient-pressure", "main-pressure", "main-reference", "plenum-pressure", "main-rail")
                .from(x -> SharedRail.share(x[4], regulated(x), x[3]));
    }

    private static double regulated(double... x) {
        return x[0] + x[1] + x[2] * (x[3] - x[0]);
    }

    static boolean onRail(Subject from) {
        return from.nitrous() && from.car().nitrous().fuel().onMainRail();
    }

    /** Whether the shot has pulled the rail below what its regulator holds. */
    static boolean fallen(Subject from) {
        return onRail(from) && from.point().nitrousFuel().pumpLimited();
    }

    /** How well the figures are made again: a fallen rail settles with the flows within a pascal, of some bar. */
    static double tolerance(Subject from) {
        return fallen(from) ? SETTLED : Entry.ROUNDING;
    }

    /** What a fallen rail leaves of the main fuel. */
    static double share(Subject from) {
        if (!fallen(from)) {
            return 1;
        }
        OperatingPoint p = from.point();
        double plenum = p.plenumPressure();
        double regulated = from.setup().mainRegulator().railPressure(p.air().pressure(), plenum);
        return SharedRail.share(p.main().railPressure(), regulated, plenum);
    }
}
