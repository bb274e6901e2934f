package org.shotledger.view;

import org.shotledger.evaluate.OperatingPoint;
import org.shotledger.evaluate.Outcome;

/** The power peak of an outcome, of which charts are drawn. */
final class Peak {
    private Peak() {}

    static OperatingPoint of(Outcome outcome) {
        return outcome.strongest()
                .orElseThrow(() -> new IllegalArgumentException("The models have no answer for "
                        + outcome.car().name() + " in the case '" + outcome.at().name()
                        + "' at any engine speed; check its air, boost and jets."));
    }
}
