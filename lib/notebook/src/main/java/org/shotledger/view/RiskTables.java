package org.shotledger.view;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.shotledger.risk.ArmingConditions;
import org.shotledger.risk.BoostReference;
import org.shotledger.risk.Detection;
import org.shotledger.risk.DriftEdge;
import org.shotledger.risk.DriftMap;
import org.shotledger.risk.Drifting;
import org.shotledger.risk.FaultEffect;
import org.shotledger.risk.FaultOutcome;
import org.shotledger.risk.Faults;
import org.shotledger.risk.Interlock;
import org.shotledger.risk.RobustJetting;
import org.shotledger.risk.SolenoidLeak;
import org.shotledger.table.Cell;
import org.shotledger.table.Listing;
import org.shotledger.units.QuantityKind;

/** Drift, jetting jets, the arming and faults as tables. */
public final class RiskTables {
    private RiskTables() {}

    /**
     * Where the safe region ends on each side.
     *
     * @param map the map
     * @return one row a side
     */
    public static Listing of(DriftMap map) {
        Listing.Builder rows = Listing.titled("Where the safe region ends when one input strays")
                .words("Input")
                .mixed("Plan")
                .mixed("Safe to")
                .figures("Expected bands away", QuantityKind.RATIO)
                .words("Breaks beyond")
                .words("Why");
        for (DriftEdge edge : map.edges()) {
            double planned = edge.input() == Drifting.BOTTLE
                    ? map.planBottlePressure()
                    : edge.input() == Drifting.FUEL ? map.planFuelPressure() : 0;
            rows.row(
                    edge.input().words() + (edge.up() ? ", rising" : ", falling"),
                    new Cell.Figure(planned, edge.input().kind()),
                    new Cell.Figure(edge.value(), edge.input().kind()),
                    edge.distance(),
                    edge.limit().map(l -> l.name()).orElse(edge.found() ? edge.beyond() : "nothing the models cover"),
                    edge.reason());
        }
        return rows.build();
    }

    /**
     * Every point of a drift map.
     *
     * @param map the map
     * @return one row a point
     */
    public static Listing points(DriftMap map) {
        Listing.Builder rows = Listing.titled("Drift, point by point")
                .figures("Bottle pressure", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Fuel pressure", QuantityKind.GAUGE_PRESSURE)
                .figures("Leanest", QuantityKind.RATIO)
                .figures("Richest", QuantityKind.RATIO)
                .figures("Most power", QuantityKind.POWER)
                .figures("Peak pressure", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Crank torque", QuantityKind.TORQUE)
                .figures("Knock against plan", QuantityKind.RATIO)
                .figures("Least margin", QuantityKind.FRACTION)
                .words("First limit")
                .words("Verdict");
        for (int j = 0; j < map.fuelPressures().size(); j++) {
            for (int i = 0; i < map.bottlePressures().size(); i++) {
                FaultOutcome o = map.outcomes().get(j).get(i);
                rows.row(
                        map.bottlePressures().get(i),
                        map.fuelPressures().get(j),
                        o.leanest(),
                        o.richest(),
                        o.wheelPower(),
                        o.peakPressure(),
                        o.crankTorque(),
                        map.knockAgainstPlan(o),
                        finite(o.minMargin()),
                        o.firstWords(),
                        o.verdict());
            }
        }
        return rows.build();
    }

    /**
     * What boost does with and without boost reference.
     *
     * @param compared the comparison
     * @return one row a change of boost
     */
    public static Listing of(BoostReference compared) {
        Listing.Builder rows = Listing.titled(String.format(
                        Locale.ROOT, "Boost and the regulator of the nitrous fuel, at %.0f rpm", compared.rpm()))
                .figures("Boost above plan", QuantityKind.PRESSURE_DIFFERENCE)
                .figures("Nitrous", QuantityKind.MASS_FLOW)
                .figures("Fuel, referenced", QuantityKind.MASS_FLOW)
                .figures("Lambda, referenced", QuantityKind.RATIO)
                .figures("Fuel, not referenced", QuantityKind.MASS_FLOW)
                .figures("Lambda, not referenced", QuantityKind.RATIO);
        for (BoostReference.Row row : compared.rows()) {
            rows.row(
                    row.boostShift(),
                    row.nitrousFlow(),
                    row.referencedFuel(),
                    row.referencedLambda(),
                    row.unreferencedFuel(),
                    row.unreferencedLambda());
        }
        return rows.build();
    }

    /**
     * The plan, the most forgiving setting, and that of each nitrous jet.
     *
     * @param jetting the settings
     * @return one row a setting
     */
    public static Listing of(RobustJetting jetting) {
        Listing.Builder rows = Listing.titled(
                        "RobustJetting jets: what each setting bears, in half-widths of the expected bands")
                .words("Setting")
                .figures("Nitrous jet", QuantityKind.BORE)
                .figures("Fuel jet", QuantityKind.BORE)
                .figures("Fuel pressure", QuantityKind.GAUGE_PRESSURE)
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Most power", QuantityKind.POWER)
                .words("Bears, all three straying")
                .words("Bears, boost held");
        choice(rows, "the plan", jetting.plan());
        choice(rows, "most forgiving that meets the target", jetting.meeting());
        for (RobustJetting.Choice c : jetting.byNitrousJet()) {
            choice(rows, "most forgiving with this nitrous jet", c);
        }
        return rows.build();
    }

    private static void choice(Listing.Builder rows, String name, RobustJetting.Choice c) {
        rows.row(
                name,
                c.jets().nitrousBore(),
                c.jets().fuelBore(),
                c.fuelPressure(),
                c.lambda(),
                c.wheelPower(),
                bears(c.tolerance(), c.stoppedBy()),
                bears(c.boostHeld(), c.boostHeldStoppedBy()));
    }

    private static String bears(double excursion, String end) {
        return String.format(Locale.ROOT, "%.2f, then %s", excursion, end);
    }

    /**
     * The arming in which the nitrous may be on.
     *
     * @param arming the arming
     * @return one row a gate
     */
    public static Listing of(ArmingConditions arming) {
        Listing.Builder rows = Listing.titled("When the nitrous may be on: all interlocks must agree")
                .words("Interlock")
                .mixed("Closes below")
                .mixed("Plan")
                .mixed("Closes above")
                .mixed("Hysteresis")
                .words("Known as");
        for (Interlock interlock : arming.interlocks()) {
            rows.row(
                    interlock.name(),
                    new Cell.Figure(interlock.low(), interlock.kind()),
                    new Cell.Figure(interlock.planned(), interlock.kind()),
                    new Cell.Figure(interlock.high(), interlock.kind()),
                    new Cell.Figure(interlock.hysteresis(), LedgerTables.difference(interlock.kind())),
                    interlock.provenance().words());
        }
        return rows.build();
    }

    /**
     * Why each gate of the arming stands where it does.
     *
     * @param arming the arming
     * @return one row a gate
     */
    public static Listing reasons(ArmingConditions arming) {
        Listing.Builder rows = Listing.titled("Why the interlocks stand where they do")
                .words("Interlock")
                .words("Not lower, because")
                .words("Not higher, because");
        for (Interlock interlock : arming.interlocks()) {
            rows.row(interlock.name(), interlock.lowReason(), interlock.highReason());
        }
        return rows.build();
    }

    /**
     * What each fault does to mixture, power and cylinder.
     *
     * @param faults the faults
     * @return one row a fault
     */
    public static Listing effects(Faults faults) {
        Listing.Builder rows = Listing.titled("Faults: what each does")
                .words("Fault")
                .figures("Lambda", QuantityKind.RATIO)
                .figures("Leanest cylinder", QuantityKind.RATIO)
                .figures("Most power", QuantityKind.POWER)
                .figures("Peak pressure", QuantityKind.ABSOLUTE_PRESSURE)
                .figures("Knock against plan", QuantityKind.RATIO)
                .words("Verdict")
                .words("Breaks");
        for (FaultEffect e : faults.effects()) {
            rows.row(
                    e.fault().name() + ": " + e.fault().cause(),
                    e.outcome().lambda(),
                    e.outcome().leanest(),
                    e.outcome().wheelPower(),
                    e.outcome().peakPressure(),
                    e.knock(),
                    e.verdict(),
                    e.brokenWords());
        }
        return rows.build();
    }

    /**
     * What catches each fault, and whether in time.
     *
     * @param faults the faults
     * @return one row a fault
     */
    public static Listing catches(Faults faults) {
        Listing.Builder rows = Listing.titled("Faults: what detects each, and when")
                .words("Fault")
                .words("Seen by")
                .figures("Time to damage", QuantityKind.TIME)
                .figures("Nitrous ends", QuantityKind.TIME)
                .words("Answer")
                .words("Would also see it");
        for (FaultEffect e : faults.effects()) {
            rows.row(
                    e.fault().name(),
                    e.detection().channel(),
                    finite(e.detection().damageTime()),
                    finite(e.detection().cutTime()),
                    e.detection().answer().words(),
                    sights(e.detection().couldSee()));
        }
        return rows.build();
    }

    private static String sights(List<Detection.Sight> sights) {
        return sights.stream()
                .map(s -> String.format(Locale.ROOT, "%s, %.2f s", s.channel(), s.cutTime()))
                .collect(Collectors.joining("; "));
    }

    /**
     * Nitrous oxide that seeps into a standing engine.
     *
     * @param leak what gathers
     * @return one row a figure
     */
    public static Listing of(SolenoidLeak leak) {
        return Listing.titled("A solenoid that seeps with the engine off")
                .words("Figure")
                .mixed("Value")
                .row("seeps like a hole of", new Cell.Figure(leak.holeBore(), QuantityKind.BORE))
                .row("nitrous oxide that seeps", new Cell.Figure(leak.flow(), QuantityKind.MASS_FLOW))
                .row("volume of plenum and runners", new Cell.Figure(leak.intakeVolume(), QuantityKind.VOLUME))
                .row("full of nitrous oxide after", new Cell.Figure(leak.fillSeconds(), QuantityKind.TIME))
                .row("nitrous oxide it then holds", new Cell.Figure(leak.fillMass(), QuantityKind.MASS))
                .row("seeps while the car stands", new Cell.Figure(leak.seeped(), QuantityKind.MASS))
                .row("fuel that burns with a full intake", new Cell.Figure(leak.fuelMass(), QuantityKind.MASS))
                .row("heat of that fire", new Cell.Figure(leak.heat(), QuantityKind.ENERGY))
                .row(
                        "its pressure in a closed vessel, an upper bound",
                        new Cell.Figure(leak.closedPressure(), QuantityKind.ABSOLUTE_PRESSURE))
                .build();
    }

    /** A dash instead of a number without end. */
    private static double finite(double value) {
        return Double.isInfinite(value) ? Double.NaN : value;
    }
}
