package org.shotledger.nitrous;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.flow.Edge;
import org.shotledger.flow.FeedElement;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowValve;
import org.shotledger.flow.LocalLoss;
import org.shotledger.flow.Manifold;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.Orifice;
import org.shotledger.flow.Tube;
import org.shotledger.fluid.FluidState;

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
 * @param jet what kind of hole a nitrous jet is: edge, length, law, flow test; its bore does not matter here
 */
public record NitrousCircuit(
        double valve,
        double hoseBore,
        double hoseLength,
        double filterLoss,
        Solenoid solenoid,
        double lineBore,
        double lineLength,
        NitrousJet jet) {

    /**
     * A circuit whose jets are plain holes of which nothing but the bore is known.
     *
     * @param valve flow coefficient Kv of the bottle valve with its siphon tube, m3/h at 1 bar, positive
     * @param hoseBore inner diameter of the hose, m, positive
     * @param hoseLength length of the hose, m, positive
     * @param filterLoss loss coefficient of the filter on the hose's velocity head, not negative
     * @param solenoid the solenoid
     * @param lineBore inner diameter of the lines behind the solenoid, m, positive
     * @param lineLength length of each line behind the solenoid, m, not negative
     * @param jetDischargeCoefficient discharge coefficient of a nitrous jet, 0.1 to 1.2; NaN for the law's own
     */
    public NitrousCircuit(
            double valve,
            double hoseBore,
            double hoseLength,
            double filterLoss,
            Solenoid solenoid,
            double lineBore,
            double lineLength,
            double jetDischargeCoefficient) {
        this(
                valve,
                hoseBore,
                hoseLength,
                filterLoss,
                solenoid,
                lineBore,
                lineLength,
                new NitrousJet("nitrous jet", 0, Double.NaN, Edge.UNKNOWN, jetDischargeCoefficient));
    }

    /**
     * The same circuit with another kind of jet, such as one that was flow-tested.
     *
     * @param other the kind of jet; its bore does not matter
     * @return new circuit
     */
    public NitrousCircuit withJet(NitrousJet other) {
        return new NitrousCircuit(valve, hoseBore, hoseLength, filterLoss, solenoid, lineBore, lineLength, other);
    }

    /**
     * The same circuit with another hose.
     *
     * @param length length, m
     * @return new circuit
     */
    public NitrousCircuit withHoseLength(double length) {
        return new NitrousCircuit(valve, hoseBore, length, filterLoss, solenoid, lineBore, lineLength, jet);
    }

    /**
     * The same circuit with part of the filter's area blocked: its loss grows with the inverse square of what is left.
     *
     * @param share blocked share of the area, 0 to below 1
     * @return new circuit
     */
    public NitrousCircuit withFilterBlocked(double share) {
        if (!(share >= 0 && share < 1)) {
            throw new IllegalArgumentException(
                    "The blocked share of the filter is " + share + "; allowed is 0 to below 1.");
        }
        double left = 1 - share;
        return new NitrousCircuit(
                valve, hoseBore, hoseLength, filterLoss / (left * left), solenoid, lineBore, lineLength, jet);
    }

    /**
     * The feed path to a number of equal jets with nothing narrow behind them.
     *
     * @param nozzles number of nozzles, at least 1
     * @param jetBore hole diameter of each nitrous jet, m
     * @return the path from the bottle's liquid to the nozzles
     */
    public FeedPath path(int nozzles, double jetBore) {
        return path(nozzles, jetBore, OptionalDouble.empty());
    }

    /**
     * The feed path to a number of equal nozzles, in each a jet and behind it, in series, the nozzle's own passage.
     *
     * @param nozzles number of nozzles, at least 1
     * @param jetBore hole diameter of each nitrous jet, m
     * @param passageBore diameter of the passage behind each jet, m; empty when it is not known
     * @return the path from the bottle's liquid to the nozzles; the last hole is the passage when there is one
     */
    public FeedPath path(int nozzles, double jetBore, OptionalDouble passageBore) {
        List<FeedElement> parts = new ArrayList<>();
        parts.add(FlowValve.open("bottle valve", valve));
        parts.add(Tube.level("hose", hoseLength, hoseBore));
        if (filterLoss > 0) {
            parts.add(new LocalLoss("filter", hoseBore, filterLoss));
        }
        parts.add(new Orifice(
                new NitrousJet(
                        "nitrous solenoid", solenoid.bore(), Double.NaN, Edge.UNKNOWN, solenoid.dischargeCoefficient()),
                lineBore));
        List<FeedElement> branch = new ArrayList<>();
        branch.add(Tube.level("line to the nozzle", lineLength, lineBore));
        if (passageBore.isPresent()) {
            branch.add(new Orifice(jet.withBore(jetBore), passageBore.getAsDouble()));
            branch.add(jet.withBore(passageBore.getAsDouble()).named("nozzle passage"));
        } else {
            branch.add(jet.withBore(jetBore));
        }
        if (nozzles == 1) {
            parts.addAll(branch);
        } else {
            parts.add(Manifold.equal("distribution block", nozzles, branch.toArray(FeedElement[]::new)));
        }
        return new FeedPath(parts);
    }

    /**
     * What the circuit passes over a factor on its jets, for a flow test of the whole circuit.
     *
     * @param nozzles number of nozzles open, at least 1
     * @param jetBore hole diameter of each nitrous jet, m
     * @param passageBore diameter of the passage behind each jet, m; empty when it is not known
     * @param bottleLiquid the bottle's liquid during the test
     * @param downstreamPressure pressure behind the nozzles, Pa; ambient for a test into the open
     * @return flow, kg/s, over the factor relative to the law's best estimate
     */
    public DoubleUnaryOperator flowOfFactor(
            int nozzles,
            double jetBore,
            OptionalDouble passageBore,
            FluidState bottleLiquid,
            double downstreamPressure) {
        return factor -> withJet(jet.at(0).withMeasured(FlowBand.EXACT.times(factor)))
                .path(nozzles, jetBore, passageBore)
                .massFlow(bottleLiquid, downstreamPressure);
    }
}
