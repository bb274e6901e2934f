package org.shotledger.ledger;

import static org.shotledger.units.QuantityKind.BORE;
import static org.shotledger.units.QuantityKind.MASS;
import static org.shotledger.units.QuantityKind.MASS_FLOW;
import static org.shotledger.units.QuantityKind.RATIO;
import static org.shotledger.units.QuantityKind.TIME;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.shotledger.car.Car;
import org.shotledger.car.Origin;
import org.shotledger.flow.FlowBand;
import org.shotledger.limits.Provenance;
import org.shotledger.nitrous.FlowTested;
import org.shotledger.nitrous.JetSide;
import org.shotledger.nitrous.WetKit;
import org.shotledger.units.UnitSystem;

/** What flow tests found of the jets, and what of the jets lies outside what was measured. */
final class JetFactorEntries {
    /** Place of the factor among the inputs of the nitrous flow. */
    static final int AT = 5;

    private static final String SOURCE =
            "conjugate normal prior and test, Gelman et al., Bayesian Data Analysis (2013), chapter 2";

    private JetFactorEntries() {}

    /** Writes the factor of a side that was tested; gives the inputs of its flow, the factor the last of them. */
    static String[] write(LedgerPen pen, Subject from, JetSide side, String... inputs) {
        Optional<FlowTested> last = from.car().nitrous().lastTest(side);
        if (last.isEmpty() || measured(from.car().nitrous(), side).isEmpty()) {
            return inputs;
        }
        boolean nitrous = side == JetSide.NITROUS;
        WetKit kit = from.car().nitrous();
        FlowBand band = measured(from.outcome().setup().jets().map(kit::suited).orElse(kit), side)
                .get();
        String key = nitrous ? "nitrous-jet-factor" : "fuel-jet-factor";
        pen.calculated(key, "flow of the " + side.words() + " over that of their class", "f", RATIO, band.best())
                .uncertain(band.best() * band.logarithmicDeviation())
                .by(told(last.get()), SOURCE + "; " + place(from.car(), last.get()))
                .provenance(Provenance.MEASURED)
                .enter();
        String[] more = Arrays.copyOf(inputs, inputs.length + 1);
        more[inputs.length] = key;
        return more;
    }

    private static String told(FlowTested test) {
        String often = test.after().tests() > 1 ? " and " + (test.after().tests() - 1) + " before it" : "";
        return "flow test \"" + test.name() + "\"" + often + ": "
                + MASS.text(test.test().mass(), UnitSystem.SI) + " in "
                + TIME.text(test.test().seconds(), UnitSystem.SI) + " through " + test.nozzles() + " of "
                + BORE.text(test.bore(), UnitSystem.US) + ", "
                + MASS_FLOW.text(test.test().flow(), UnitSystem.SI) + " where "
                + MASS_FLOW.text(test.expected(), UnitSystem.SI) + " was expected"
                + (test.isSurprising()
                        ? "; further from what was known than two standard deviations, so check the test and the sheet"
                        : "");
    }

    private static String place(Car car, FlowTested test) {
        return car.origin("flow-tests." + test.name() + ".seconds")
                .map(Origin::source)
                .orElse("a test that is not in the sheet");
    }

    private static Optional<FlowBand> measured(WetKit kit, JetSide side) {
        return side == JetSide.NITROUS
                ? kit.nitrous().jet().measured()
                : kit.fuel().jet().measured();
    }

    /** The car with another factor on the jets of a side. */
    static Car with(Car car, JetSide side, double factor) {
        WetKit kit = car.nitrous();
        FlowBand band = measured(kit, side).orElseThrow();
        FlowBand other = band.times(factor / band.best());
        return car.with(
                side == JetSide.NITROUS
                        ? kit.withNitrous(
                                kit.nitrous().withJet(kit.nitrous().jet().withMeasured(other)))
                        : kit.withFuel(kit.fuel().withJet(kit.fuel().jet().withMeasured(other))));
    }

    /** Words for the end of a basis; empty where everything lies inside what was measured. */
    static String outside(Subject from, JetSide side) {
        List<String> found = from.outcome().outside(side);
        return found.isEmpty() ? "" : "; outside what was measured: " + String.join(" ", found);
    }
}
