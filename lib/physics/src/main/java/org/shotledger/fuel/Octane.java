package org.shotledger.fuel;

import java.util.Optional;
import org.shotledger.units.Require;

/**
 * Octane numbers of a fuel. Those of pure alcohols lie outside the design range of the test methods (ASTM D2699 and
 * D2700) and the printed values differ by several numbers.
 *
 * @param research research octane number RON, 0 to 140
 * @param motor motor octane number MON, 0 to 140
 */
public record Octane(double research, double motor) {
    public Octane {
        Require.within("research octane number", research, 0, 140, "");
        Require.within("motor octane number", motor, 0, 140, "");
    }

    /**
     * Octane numbers of both fuel streams of a mixture together, by moles as in a blend (Anderson et al., Energy and Fuels 24
     * (2010) 6576).
     *
     * @param mixture what flows in
     * @return the octane numbers; empty where a fuel that flows does not know its own, or none flows
     */
    public static Optional<Octane> of(Mixture mixture) {
        double main = mixture.mainFlow() / mixture.mainFuel().molarMass();
        double extra = mixture.nitrousFuelFlow() / mixture.nitrousFuel().molarMass();
        if (extra == 0) {
            return main == 0 ? Optional.empty() : mixture.mainFuel().octane();
        }
        if (main == 0) {
            return mixture.nitrousFuel().octane();
        }
        double share = extra / (main + extra);
        return mixture.mainFuel()
                .octane()
                .flatMap(a -> mixture.nitrousFuel()
                        .octane()
                        .map(b -> new Octane(
                                a.research + share * (b.research - a.research),
                                a.motor + share * (b.motor - a.motor))));
    }

    /**
     * The mean of both methods, the number on pumps in some countries.
     *
     * @return (RON + MON) / 2
     */
    public double antiKnockIndex() {
        return (research + motor) / 2;
    }

    /**
     * The octane index after Kalghatgi, SAE 2001-01-3584: {@code OI = RON - K (RON - MON)}; K is negative in boosted
     * engines.
     *
     * @param k the engine's K, from -2 to 1
     * @return the octane index
     */
    public double index(double k) {
        Require.within("K of the octane index", k, -2, 1, "");
        return research - k * (research - motor);
    }
}
