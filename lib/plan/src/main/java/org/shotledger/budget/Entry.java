package org.shotledger.budget;

import java.util.List;
import java.util.Optional;
import org.shotledger.build.Origin;
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
 * @param standing how well the figure is known
 * @param origin the figure's place in the build sheet, for those that stand there
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
        Standing standing,
        Optional<Origin> origin) {

    /** Copies the inputs, so that an entry never changes. */
    public Entry {
        inputs = List.copyOf(inputs);
    }

    /**
     * A figure that does not stand in the sheet.
     *
     * @param key stable name
     * @param name the figure in words
     * @param symbol its symbol, may be empty
     * @param kind what it measures
     * @param value the figure, SI
     * @param uncertainty standard uncertainty, SI; NaN when it is not known
     * @param basis the equation or table in words
     * @param source where that comes from
     * @param inputs keys of the entries this one was made from
     * @param standing how well the figure is known
     */
    public Entry(
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
        this(key, name, symbol, kind, value, uncertainty, basis, source, inputs, standing, Optional.empty());
    }
}
