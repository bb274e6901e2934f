package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.COUNT;
import static org.shotledger.units.QuantityKind.FRACTION;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.SPECIFIC_ENERGY;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import java.util.List;
import org.shotledger.car.Car;
import org.shotledger.car.SheetPaths;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.PointModel;
import org.shotledger.flow.FeedFlow;
import org.shotledger.flow.JetFlow;
import org.shotledger.fluid.NitrousOxide;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.JetPair;
import org.shotledger.nitrous.JetSide;
import org.shotledger.setup.BottleFill;
import org.shotledger.setup.BottleState;

/** Nitrous oxide from the bottle to the jets. */
final class NitrousEntries {
    /** The equation of state of nitrous oxide. */
    static final String FLUID = "Lemmon and Span, J. Chem. Eng. Data 51, 785-850 (2006)";

    /** Tolerance of the state at the siphon, which passes through temperature and pressure. */
    private static final double STATE = 1e-6;

    private NitrousEntries() {}

    static void write(LedgerPen pen, Subject from) {
        bottle(pen, from);
        if (!from.nitrous()) {
            pen.given("nitrous-flow", "nitrous oxide flow", "m_N", MASS_FLOW, 0, "", "the nitrous is not on")
                    .enter();
            return;
        }
        path(pen, from);
    }

    private static void bottle(LedgerPen pen, Subject from) {
        OperatingPoint p = from.point();
        BottleFill fill = from.setup().bottle();
        pen.given(
                        "charge",
                        "nitrous oxide in the full bottle",
                        "M",
                        MASS,
                        fill.charge(),
                        SheetPaths.CHARGE,
                        "this setup")
                .enter();
        boolean byPressure = from.car().origin(SheetPaths.BOTTLE_PRESSURE).isPresent();
        pen.given(
                        "start-temperature",
                        "bottle temperature at the start of a pass",
                        "T_0",
                        TEMPERATURE,
                        fill.startTemperature(),
                        SheetPaths.BOTTLE_TEMPERATURE,
                        byPressure ? "the sheet's pressure at the start, or this setup" : "this setup")
                .enter();
        temperature(pen, from, p.bottle().temperature());
        boolean full = from.at().bottle().moment() == BottleState.Moment.FIRST_OPENING;
        var pressure = pen.calculated(
                "bottle-pressure",
                "bottle pressure",
                "p_b0",
                ABSOLUTE_PRESSURE,
                p.bottle().pressure());
        if (full) {
            pressure.by("charge and temperature in the bottle's volume", FLUID)
                    .on("charge", "bottle-temperature")
                    .within(STATE)
                    .from(x -> from.charged(x[0], x[1]).pressure());
        } else {
            pressure.by("saturation pressure at the bottle temperature", FLUID)
                    .on("bottle-temperature")
                    .within(STATE)
                    .from(x -> NitrousOxide.saturationPressure(x[0]));
        }
        if (from.wet()) {
            pen.calculated(
                            "siphon-vapour",
                            "vapour in what enters the siphon",
                            "x_b",
                            FRACTION,
                            p.bottle().quality())
                    .by(
                            "the liquid is warmer than it boils at the bottle's pressure and flashes at constant energy and flow work",
                            "first law; " + FLUID)
                    .on("charge", "start-temperature")
                    .within(STATE)
                    .from(x -> from.left(x[0], x[1]).quality());
        }
        pen.calculated(
                        "nitrous-enthalpy",
                        "enthalpy of what enters the siphon",
                        "h",
                        SPECIFIC_ENERGY,
                        p.bottle().enthalpy())
                .by("equation of state; zero for the saturated liquid at 101325 Pa", FLUID)
                .on("bottle-temperature", entering(from))
                .within(STATE)
                .from(x -> from.entering(x[0], x[1]).enthalpy());
    }

    /** What tells, beside the temperature, what enters the siphon. */
    private static String entering(Subject from) {
        return from.wet() ? "siphon-vapour" : "bottle-pressure";
    }

    private static void temperature(LedgerPen pen, Subject from, double value) {
        BottleState.Moment moment = from.at().bottle().moment();
        var entry = pen.calculated("bottle-temperature", "bottle temperature", "T_b", TEMPERATURE, value);
        switch (moment) {
            case GIVEN -> entry.by("given", from.byCase()).enter();
            case FIRST_OPENING ->
                entry.by("as at the start: " + moment.words(), "definition")
                        .on("charge", "start-temperature")
                        .within(STATE)
                        .from(x -> from.charged(x[0], x[1]).temperature());
            case END_OF_LAST_PASS ->
                entry.by(moment.words() + ": energy balance of liquid, vapour and shell", "first law; " + FLUID)
                        .on("charge", "start-temperature")
                        .within(STATE)
                        .from(x -> from.left(x[0], x[1]).temperature());
        }
    }

    private static void path(LedgerPen pen, Subject from) {
        FeedFlow feed = from.point().nitrous();
        double hole = from.car().nitrous().nitrous().solenoid().bore();
        pen.sheet("nozzles", "nozzles", "n", COUNT, from.car().nitrous().nozzles(), SheetPaths.NOZZLES);
        pen.sheet("nitrous-solenoid", "hole of the nitrous solenoid", "d_S", BORE, hole, SheetPaths.NITROUS_SOLENOID);
        String[] inputs = JetFactorEntries.write(
                pen,
                from,
                JetSide.NITROUS,
                "bottle-temperature",
                entering(from),
                "nitrous-solenoid",
                "nitrous-jet",
                "plenum-pressure");
        double inlet = feed.jetInlet().pressure();
        pen.calculated("jet-inlet-pressure", "pressure before the nitrous jet", "p_j", ABSOLUTE_PRESSURE, inlet)
                .by(
                        "two-phase pressure loss along the feed path at constant stagnation enthalpy",
                        "homogeneous two-phase flow; friction after Churchill, Chem. Eng. 84 (1977); viscosity after McAdams (1942)")
                .on(inputs)
                .within(STATE)
                .from(x -> feed(from, x).jetInlet().pressure());
        pen.calculated("nitrous-flow", "nitrous oxide flow", "m_N", MASS_FLOW, feed.massFlow())
                .uncertain(feed.massFlow() * PowerUncertainty.nitrousFlow(from.point()))
                .by(
                        "feed path and jets: " + law(from, feed) + "; limited by " + limiting(feed)
                                + JetFactorEntries.outside(from, JetSide.NITROUS),
                        source(feed))
                .provenance(feed.measured() ? Provenance.MEASURED : Provenance.CALCULATED)
                .on(inputs)
                .within(STATE)
                .from(x -> feed(from, x).massFlow());
    }

    private static FeedFlow feed(Subject from, double... x) {
        double fuelBore = from.setup().jets().orElseThrow().fuelBore();
        Car car = from.withSolenoid(x[2]);
        PointModel model = PointModel.of(
                x.length > JetFactorEntries.AT
                        ? JetFactorEntries.with(car, JetSide.NITROUS, x[JetFactorEntries.AT])
                        : car,
                from.setup().withJets(new JetPair(x[3], fuelBore)),
                from.at(),
                from.entering(x[0], x[1]));
        return model.feed(x[4]);
    }

    /** The law that acted, and why it is not the one that was chosen. */
    private static String law(Subject from, FeedFlow feed) {
        String chosen = from.car().nitrous().nitrous().jet().law().name();
        String acted = first(feed.jets().stream().map(JetFlow::model).toList(), chosen);
        return "law \"" + acted + "\""
                + (acted.equals(chosen) ? "" : ", since \"" + chosen + "\" does not cover what stands before the jets");
    }

    private static String source(FeedFlow feed) {
        return first(feed.jets().stream().map(JetFlow::source).toList(), "definition");
    }

    private static String first(List<String> words, String none) {
        return words.isEmpty() ? none : words.get(0);
    }

    private static String limiting(FeedFlow feed) {
        return feed.choked() ? feed.chokingElement() + " (choked)" : "no choking part";
    }
}
