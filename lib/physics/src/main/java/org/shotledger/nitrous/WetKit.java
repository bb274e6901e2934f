package org.shotledger.nitrous;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.shotledger.flow.FeedPath;
import org.shotledger.flow.FlowBand;
import org.shotledger.flow.FlowFactor;
import org.shotledger.flow.NitrousJet;
import org.shotledger.flow.OrificeLaw;
import org.shotledger.fluid.FluidState;
import org.shotledger.supply.Regulator;

/**
 * A nitrous system without its jets.
 *
 * @param position where the nozzles spray
 * @param nozzles number of nozzles, 1 to 16; each carries one pair of jets
 * @param nitrous the nitrous side
 * @param fuel the fuel side
 * @param ladder the jets that can be had
 * @param passages the passages inside each nozzle; empty when the sheet does not state them
 * @param tests flow tests of its jets in the order in which they were made; what they found stands in both circuits' jets
 */
public record WetKit(
        NozzlePosition position,
        int nozzles,
        NitrousCircuit nitrous,
        FuelCircuit fuel,
        JetLadder ladder,
        Optional<NozzlePassages> passages,
        List<FlowTested> tests) {

    public WetKit {
        tests = List.copyOf(tests);
        if (nozzles < 1 || nozzles > 16) {
            throw new IllegalArgumentException("The nitrous system has " + nozzles + " nozzles; allowed is 1 to 16.");
        }
    }

    /**
     * A system whose jets nobody has tested.
     *
     * @param position where the nozzles spray
     * @param nozzles number of nozzles, 1 to 16; each carries one pair of jets
     * @param nitrous the nitrous side
     * @param fuel the fuel side
     * @param ladder the jets that can be had
     * @param passages the passages inside each nozzle; empty when the sheet does not state them
     */
    public WetKit(
            NozzlePosition position,
            int nozzles,
            NitrousCircuit nitrous,
            FuelCircuit fuel,
            JetLadder ladder,
            Optional<NozzlePassages> passages) {
        this(position, nozzles, nitrous, fuel, ladder, passages, List.of());
    }

    /**
     * The nitrous feed path with a pair of jets, the nozzles' passages in series when they are known.
     *
     * @param jets the pair in every nozzle
     * @return the path from the bottle's liquid to the nozzles
     */
    public FeedPath nitrousPath(JetPair jets) {
        return suited(jets).nitrous.path(nozzles, jets.nitrousBore(), nitrousPassage());
    }

    /**
     * What all nozzles pass with another coefficient of their nitrous jets.
     *
     * @param bore hole diameter of each jet, m
     * @param liquid state at the bottle
     * @param downstream pressure behind the nozzles, Pa absolute
     * @return flow, kg/s, over the factor on the jets
     */
    public DoubleUnaryOperator nitrousFlowOfFactor(double bore, FluidState liquid, double downstream) {
        return nitrous.flowOfFactor(nozzles, bore, nitrousPassage(), liquid, downstream);
    }

    private OptionalDouble nitrousPassage() {
        return passages.map(p -> OptionalDouble.of(p.nitrousBore())).orElse(OptionalDouble.empty());
    }

    /**
     * What the fuel circuit passes with a pair of jets, the nozzles' passages in series when they are known.
     *
     * @param density fuel density, kg/m3
     * @param jets the pair in every nozzle
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @param voltage supply voltage at the pump's wiring, V
     * @return the flow; zero when the rail is not above the nozzle; on the main rail that with the regulated pressure held
     */
    public FuelCircuit.FuelFlow fuelFlow(
            double density, JetPair jets, FuelCircuit.Pressures at, Regulator regulator, double voltage) {
        return fuel.flow(density, fuelJets(jets.fuelBore()), at, regulator, voltage);
    }

    /**
     * The fuel jet that passes a wanted flow.
     *
     * @param massFlow fuel through all jets, kg/s, positive
     * @param density fuel density, kg/m3
     * @param at the pressures around the circuit
     * @param regulator its regulator as it is set
     * @return hole diameter of each jet, m
     * @throws IllegalArgumentException when solenoid and passages alone let less pass
     */
    public double fuelBoreFor(double massFlow, double density, FuelCircuit.Pressures at, Regulator regulator) {
        return fuel.boreFor(massFlow, density, fuelJets(0), at, regulator);
    }

    /**
     * The same system with some of its nozzles only, as when others are blocked.
     *
     * @param open number of nozzles, 1 to 16
     * @return the changed system
     */
    public WetKit withNozzles(int open) {
        return new WetKit(position, open, nitrous, fuel, ladder, passages, tests);
    }

    /**
     * The same system with another fuel side.
     *
     * @param circuit the fuel side
     * @return the changed system
     */
    public WetKit withFuel(FuelCircuit circuit) {
        return new WetKit(position, nozzles, nitrous, circuit, ladder, passages, tests);
    }

    /**
     * The same system with another nitrous side.
     *
     * @param circuit the nitrous side
     * @return the changed system
     */
    public WetKit withNitrous(NitrousCircuit circuit) {
        return new WetKit(position, nozzles, circuit, fuel, ladder, passages, tests);
    }

    /**
     * The same system whose nitrous jets follow another law; a factor that a flow test found was relative to the old one and goes.
     *
     * @param law the law
     * @return the changed system
     * @throws IllegalArgumentException when the law does not cover these jets
     */
    public WetKit withFlowLaw(OrificeLaw law) {
        NitrousJet jet = nitrous.jet();
        if (law == OrificeLaw.LONG_ORIFICE && !(jet.lengthToBore() >= 2 && jet.lengthToBore() <= 10)) {
            throw new IllegalArgumentException("The law \"" + law.name()
                    + "\" covers jets 2 to 10 bores long, these are "
                    + (Double.isNaN(jet.lengthToBore()) ? "of a length not stated" : jet.lengthToBore() + " bores long")
                    + "; state their length in the sheet or choose \"" + OrificeLaw.CLASS.name() + "\".");
        }
        NitrousJet other = new NitrousJet(
                jet.name(),
                jet.bore(),
                jet.lengthToBore(),
                jet.edge(),
                jet.dischargeCoefficient(),
                law,
                Optional.empty(),
                jet.place());
        List<FlowTested> left =
                tests.stream().filter(test -> test.side() != JetSide.NITROUS).toList();
        return new WetKit(position, nozzles, nitrous.withJet(other), fuel, ladder, passages, left);
    }

    /**
     * The same system after one more flow test.
     *
     * @param tested the test and what it told
     * @return the changed system
     */
    public WetKit after(FlowTested tested) {
        List<FlowTested> all = new ArrayList<>(tests);
        all.add(tested);
        FlowBand band = tested.after().band();
        boolean own = tested.side() == JetSide.NITROUS;
        return new WetKit(
                position,
                nozzles,
                own ? nitrous.withJet(nitrous.jet().withMeasured(band)) : nitrous,
                own ? fuel : fuel.withJet(fuel.jet().withMeasured(band)),
                ladder,
                passages,
                all);
    }

    /**
     * The last flow test of one side.
     *
     * @param side which jets
     * @return the test; empty when nobody has tested them
     */
    public Optional<FlowTested> lastTest(JetSide side) {
        return tests.stream().filter(t -> t.side() == side).reduce((first, second) -> second);
    }

    /**
     * What flow tests tell of jets of some size.
     *
     * @param side which jets
     * @param bore their hole, m
     * @return the factor after the last test, less sure by the whole width of the class where that was of jets of another size; empty
     *     when nobody has tested this side
     */
    public Optional<FlowFactor> known(JetSide side, double bore) {
        return lastTest(side)
                .map(last -> last.isFarFrom(bore) ? last.after().lessSure(ofTheClass(side)) : last.after());
    }

    /** What was not known before the first test. */
    private double ofTheClass(JetSide side) {
        return tests.stream()
                .filter(test -> test.side() == side)
                .findFirst()
                .orElseThrow()
                .before()
                .deviation();
    }

    /**
     * The same system with the bands that its flow tests leave for a pair of jets: those of another size than the tested are less well
     * known.
     *
     * @param jets the pair in every nozzle
     * @return the changed system; this one where nobody has tested its jets, or jets of these sizes
     */
    public WetKit suited(JetPair jets) {
        WetKit kit = this;
        if (isFar(JetSide.NITROUS, jets.nitrousBore())
                && nitrous.jet().measured().isPresent()) {
            FlowBand band = widened(nitrous.jet().measured().get(), JetSide.NITROUS, jets.nitrousBore());
            kit = kit.withNitrous(nitrous.withJet(nitrous.jet().withMeasured(band)));
        }
        if (isFar(JetSide.FUEL, jets.fuelBore()) && fuel.jet().measured().isPresent()) {
            FlowBand band = widened(fuel.jet().measured().get(), JetSide.FUEL, jets.fuelBore());
            kit = kit.withFuel(fuel.withJet(fuel.jet().withMeasured(band)));
        }
        return kit;
    }

    private boolean isFar(JetSide side, double bore) {
        return lastTest(side).map(last -> last.isFarFrom(bore)).orElse(false);
    }

    private FlowBand widened(FlowBand measured, JetSide side, double bore) {
        return FlowBand.around(
                measured.best(), known(side, bore).orElseThrow().band().logarithmicDeviation());
    }

    FuelCircuit.Jets fuelJets(double bore) {
        return new FuelCircuit.Jets(
                nozzles, bore, passages.map(NozzlePassages::fuelBore).orElse(Double.POSITIVE_INFINITY));
    }
}
