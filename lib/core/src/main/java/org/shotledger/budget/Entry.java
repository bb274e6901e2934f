package org.shotledger.budget;

import java.util.List;
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
 * @param source publication, standard, file and line, or {@code "common practice, no source"}
 * @param inputs keys of the entries this one was made from
 * @param standing how well the figure is known
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
        Standing standing) {

    /** Copies the inputs, so that an entry never changes. */
    public Entry {
        inputs = List.copyOf(inputs);
    }
}
