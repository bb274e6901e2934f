package org.shotledger.ledger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Every figure of an outcome with its reasoning, in the order in which the reasoning goes. */
public final class Ledger {
    private final Map<String, Entry> entries;

    private Ledger(Map<String, Entry> entries) {
        this.entries = entries;
    }

    /**
     * Makes a ledger.
     *
     * @param entries the figures, inputs before what is made from them
     * @return the ledger
     * @throws IllegalArgumentException when a key stands twice, or an entry names an input that does not stand before it
     */
    public static Ledger of(List<Entry> entries) {
        Map<String, Entry> byKey = new LinkedHashMap<>();
        for (Entry entry : entries) {
            for (String input : entry.inputs()) {
                if (!byKey.containsKey(input)) {
                    throw new IllegalArgumentException("Ledger entry '" + entry.key() + "' rests on '" + input
                            + "', which does not stand before it; enter the input first.");
                }
            }
            if (byKey.put(entry.key(), entry) != null) {
                throw new IllegalArgumentException(
                        "Ledger entry '" + entry.key() + "' stands twice; give each figure its own key.");
            }
        }
        return new Ledger(byKey);
    }

    /**
     * All entries in order.
     *
     * @return an unmodifiable view
     */
    public Collection<Entry> entries() {
        return java.util.Collections.unmodifiableCollection(entries.values());
    }

    /**
     * Looks a figure up.
     *
     * @param key its key
     * @return the entry, or empty when there is none
     */
    public Optional<Entry> find(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    /**
     * The figures an entry rests on, down to the inputs, each once, the entry itself first.
     *
     * @param key the key of the figure asked about
     * @return the entries in the order in which the question "why this number?" meets them
     * @throws IllegalArgumentException when there is no such entry; the message lists the keys
     */
    public List<Entry> why(String key) {
        if (!entries.containsKey(key)) {
            throw new IllegalArgumentException(
                    "The ledger has no entry '" + key + "'; it has " + entries.keySet() + ".");
        }
        Set<String> met = new LinkedHashSet<>();
        walk(key, met);
        List<Entry> chain = new ArrayList<>();
        met.forEach(k -> chain.add(entries.get(k)));
        return chain;
    }

    /**
     * Makes a figure again from nothing but the figures it names.
     *
     * @param key its key
     * @return the figure, SI; empty for one that is given and not made
     * @throws IllegalArgumentException when there is no such entry; the message lists the keys
     */
    public OptionalDouble recomputed(String key) {
        Entry entry = why(key).get(0);
        double[] inputs = entry.inputs().stream()
                .mapToDouble(input -> entries.get(input).value())
                .toArray();
        return entry.formula().stream()
                .mapToDouble(formula -> formula.of(inputs))
                .findFirst();
    }

    private void walk(String key, Set<String> met) {
        if (met.add(key)) {
            entries.get(key).inputs().forEach(input -> walk(input, met));
        }
    }
}
