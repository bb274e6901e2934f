package org.shotledger.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.FuelStreams;
import org.shotledger.engine.ColdCharge;
import org.shotledger.engine.Intake.Warming;
import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;
import org.shotledger.fuel.Mixture;
import org.shotledger.nitrous.NozzlePosition;
import org.shotledger.units.QuantityKind;
import org.shotledger.units.UnitSystem;

/** What a cold charge does that a practitioner can see: a note and no limit, but for ice on a throttle. */
public final class ColdChargeNotes {
    /** Less liquid than this share of the fuel is what any port injection has: our choice. */
    private static final double MUCH = 0.5;

    private ColdChargeNotes() {}

    /** A point and the outcome it belongs to. */
    private record Coldest(Outcome outcome, OperatingPoint point) {}

    /**
     * Tells of the coldest charge with nitrous.
     *
     * @param outcomes the outcomes of one setup
     * @return a few sentences; empty text without nitrous, and where the charge keeps its fuel and its water as vapour
     */
    public static String of(List<Outcome> outcomes) {
        Optional<Coldest> coldest = outcomes.stream()
                .flatMap(outcome -> outcome.withNitrous().stream().map(point -> new Coldest(outcome, point)))
                .min(Comparator.comparingDouble(found -> found.point.charge().temperature()));
        return coldest.map(ColdChargeNotes::told).orElse("");
    }

    private static String told(Coldest found) {
        ColdCharge cold = ColdCharge.of(found.point.charge());
        if (cold.liquidFuel() < MUCH && cold.condensed() == 0) {
            return "";
        }
        Warming warming = found.outcome.car().fuels().warming();
        return "The charge with nitrous is coldest, " + Both.of(QuantityKind.TEMPERATURE, cold.temperature())
                + " (case '"
                + found.outcome.at().name() + "', " + QuantityKind.ROTATION.text(found.point.rpm(), UnitSystem.US)
                + "; calculated, not measured: it stands on " + share(warming.nitrousEvaporated())
                + " of the nitrous oxide evaporated before the valves and "
                + share(warming.wallShare()) + " of the drop made good by walls, usual bands "
                + share(Warming.WARM.nitrousEvaporated()) + " to " + share(Warming.NONE.nitrousEvaporated()) + " and "
                + share(Warming.NONE.wallShare()) + " to " + share(Warming.WARM.wallShare()) + ")."
                + fuel(found, cold) + water(found, cold);
    }

    private static String fuel(Coldest found, ColdCharge cold) {
        if (cold.liquidFuel() < MUCH) {
            return "";
        }
        double stated = stated(found);
        double most = 1 - cold.liquidFuel();
        return " By its vapour pressure at least " + share(cold.liquidFuel())
                + " of the fuel is still liquid there. To be seen: wet runners, cylinders that differ, a lean moment"
                + " as the shot opens and a rich one as it ends."
                + (stated > most
                        ? " The sheet allows " + share(stated)
                                + " to evaporate before the valves; no more was counted than the charge can hold."
                        : "");
    }

    /** Share of all fuel that the sheet lets evaporate before the valves. */
    private static double stated(Coldest found) {
        FuelStreams fuels = found.outcome.car().fuels();
        Mixture mix = found.point.charge().mixture();
        double all = mix.mainFlow() + mix.nitrousFuelFlow();
        return all == 0
                ? 0
                : (fuels.mainEvaporated() * mix.mainFlow() + fuels.nitrousEvaporated() * mix.nitrousFuelFlow()) / all;
    }

    private static String water(Coldest found, ColdCharge cold) {
        if (cold.condensed() == 0) {
            return "";
        }
        double seconds = found.outcome.setup().passes().seconds();
        String amount = Both.of(QuantityKind.MASS, cold.condensed() * seconds) + " of the air's water in a pass";
        if (!cold.freezes()) {
            return " " + amount + " settles as fog.";
        }
        return " " + amount + " turns to frost. To be seen: white runners and plenum after the pass"
                + (found.outcome.car().nitrous().position() == NozzlePosition.BEFORE_THROTTLE
                        ? "; with the nozzle before the throttle the plate can stick, and that is a limit."
                        : "; it lies behind the throttle and melts by itself.");
    }

    private static String share(double share) {
        return QuantityKind.FRACTION.text(share, UnitSystem.US);
    }
}
