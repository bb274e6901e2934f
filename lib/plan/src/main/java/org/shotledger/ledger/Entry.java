package org.shotledger.ledger;

import java.util.List;
import java.util.Optional;
import org.shotledger.car.Origin;
import org.shotledger.limits.Provenance;
import org.shotledger.units.QuantityKind;

/**
 * One figure with its reasoning.
 *
 * @param key stable name, unique in its ledger, for example {@code "nitrous-flow"}
 * @param name the figure in words
 * @param symbol the symbol of the trade or the standard, may be empty
 * @param kind what the figure measures
 * @param value the figure, SI
 * @param uncertainty standard uncertainty, SI (JCGM 100); NaN when it is not known
 * @param basis the equation or table the figure comes from, in words
 * @param source publication or standard with its year, law, file and line, or {@code "common practice, no source"}; several
 *     are parted by a semicolon
 * @param inputs keys of the entries this one was made from
 * @param provenance how well the figure is known
 * @param origin the figure's place in the sheet, for those that stand there
 * @param formula makes the figure from its inputs; empty for a figure that is given
 * @param tolerance relative difference within which the formula gives the value again: that of the solver where there is one
 */
public record Entry(
        String key,
        String name,
        String symbol,
        QuantityKind kind,
        double value,
        double uncertainty,
        String basis,
        String source,
        List<String> inputs,
        Provenance provenance,
        Optional<Origin> origin,
        Optional<Formula> formula,
        double tolerance) {
    /** Tolerance of a figure that needs no solver: rounding. */
    public static final double ROUNDING = 1e-9;

    public Entry {
        inputs = List.copyOf(inputs);
    }
}
