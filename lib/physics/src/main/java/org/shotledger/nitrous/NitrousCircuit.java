package org.shotledger.nitrous;

import java.util.ArrayList;
import java.util.List;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FeedElement;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowValve;
import org.shotledger.flow.LocalLoss;
import org.shotledger.flow.Manifold;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.Orifice;
import org.shotledger.flow.Tube;

/**
 * The nitrous side of a wet kit between bottle and jets: valve, hose, filter, solenoid, distribution.
 *
 * @param valve flow coefficient Kv of the bottle valve with its siphon tube, m3/h at 1 bar, positive
 * @param hoseBore inner diameter of the hose, m, positive
 * @param hoseLength length of the hose, m, positive
 * @param filterLoss loss coefficient of the filter on the hose's velocity head, not negative
 * @param solenoid the solenoid
 * @param lineBore inner diameter of the lines behind the solenoid, m, positive
 * @param lineLength length of each line behind the solenoid, m, not negative
 * @param jetDischargeCoefficient discharge coefficient of a nitrous jet, 0.1 to 1.2; NaN for the flow model's own
 */
public record NitrousCircuit(
        double valve,
        double hoseBore,
        double hoseLength,
        double filterLoss,
        Solenoid solenoid,
        double lineBore,
        double lineLength,
        double jetDischargeCoefficient) {

    /** Length of a solenoid's seat hole over its bore: common practice, no source. */
    private static final double SEAT_LENGTH = 2;

    /**
     * The feed path to a number of equal jets.
     *
     * @param nozzles number of nozzles, at least 1
     * @param jetBore hole diameter of each nitrous jet, m
     * @return the path from the bottle's liquid to the nozzles
     */
    public FeedPath path(int nozzles, double jetBore) {
        List<FeedElement> parts = new ArrayList<>();
        parts.add(FlowValve.open("bottle valve", valve));
        parts.add(Tube.level("hose", hoseLength, hoseBore));
        if (filterLoss > 0) {
            parts.add(new LocalLoss("filter", hoseBore, filterLoss));
        }
        parts.add(new Orifice(
                new NitrousJet(
                        "nitrous solenoid", solenoid.bore(), SEAT_LENGTH, Edge.SQUARE, solenoid.dischargeCoefficient()),
                lineBore));
        NitrousJet jet =
                new NitrousJet("nitrous jet", jetBore, NitrousJet.USUAL_LENGTH, Edge.ROUNDED, jetDischargeCoefficient);
        FeedElement line = Tube.level("line to the nozzle", lineLength, lineBore);
        if (nozzles == 1) {
            parts.add(line);
            parts.add(jet);
        } else {
            parts.add(Manifold.equal("distribution block", nozzles, line, jet));
        }
        return new FeedPath(parts);
    }
}
