package org.shotledger.budget;

import static org.shotledger.units.QuantityKind.ABSOLUTE_PRESSURE;
import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.TEMPERATURE;

import org.shotledger.flow.JetFlow;

/** Nitrous oxide from the bottle to the jets. */
final class NitrousEntries {
    /** The equation of state of nitrous oxide. */
    static final String FLUID = "Lemmon and Span, J. Chem. Eng. Data 51, 785-850 (2006)";

    private NitrousEntries() {}

    static void write(LedgerPen pen, LedgerSubject from) {
        Evaluation peak = from.peak();
        pen.sheet(
                "bottle-temperature",
                "bottle temperature",
                "T_b",
                TEMPERATURE,
                peak.conditions().bottleLiquid().temperature(),
                "bottle.start-temperature");
        pen.calculated(
                        "bottle-pressure",
                        "bottle pressure",
                        "p_b0",
                        ABSOLUTE_PRESSURE,
                        peak.conditions().bottleLiquid().pressure())
                .by("saturation pressure at the bottle temperature", FLUID)
                .on("bottle-temperature");
        pen.sheet(
                "nitrous-solenoid",
                "hole of the nitrous solenoid",
                "d_S",
                BORE,
                from.build().wetKit().nitrous().solenoid().bore(),
                "wet-kit.nitrous.solenoid.bore");
        pen.calculated(
                        "jet-inlet-pressure",
                        "pressure before the nitrous jet",
                        "p_j",
                        ABSOLUTE_PRESSURE,
                        peak.nitrous().jetInlet().pressure())
                .by(
                        "two-phase pressure loss along the feed path at constant stagnation enthalpy",
                        "homogeneous two-phase flow; friction after Churchill, Chem. Eng. 84 (1977); viscosity after McAdams (1942)")
                .on("bottle-pressure", "nitrous-solenoid", "nitrous-jet");
        double flow = peak.nitrous().massFlow();
        pen.calculated("nitrous-flow", "nitrous oxide flow", "m_N", MASS_FLOW, flow)
                .uncertain(flow * from.nitrousError())
                .by("feed path and jets: " + jetModel(from) + "; limited by " + limiting(from), jetSource(from))
                .on("jet-inlet-pressure", "nitrous-jet");
    }

    private static String jetModel(LedgerSubject from) {
        return from.peak().nitrous().jets().stream()
                .map(JetFlow::model)
                .findFirst()
                .orElse("none");
    }

    private static String jetSource(LedgerSubject from) {
        return from.peak().nitrous().jets().stream()
                .map(JetFlow::source)
                .findFirst()
                .orElse("definition");
    }

    private static String limiting(LedgerSubject from) {
        return from.peak().nitrous().choked()
                ? from.peak().nitrous().chokingElement() + " (choked)"
                : "no choking part";
    }
}
