package org.shotledger.document;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a reader may ask for by itself: the page to decide on, a card for each who does the work, and what stands behind them. */
public enum DocumentPart {
    /** One page to decide on. */
    DECISION,
    /** One page of tables for who sets the controller. */
    TUNER,
    /** One page of jets, lines, wires and checks for who builds. */
    MECHANIC,
    /** One page for the day: bottle, passes, weather. */
    TRACK,
    /** Why, in full. */
    REASONS,
    /** Every figure with its formula and its source. */
    LEDGER;

    /**
     * The word by which it is asked for.
     *
     * @return for example {@code "tuner"}
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether it is one page by itself. */
    boolean page() {
        return this != REASONS && this != LEDGER;
    }

    /**
     * Reads a choice.
     *
     * @param words the words of {@link #word()}, with commas between them, in any order
     * @return the parts
     * @throws IllegalArgumentException when a word is not known or none is given; the message lists the words
     */
    public static Set<DocumentPart> read(String words) {
        Set<DocumentPart> parts = EnumSet.noneOf(DocumentPart.class);
        for (String word : words.split(",", -1)) {
            parts.add(one(word.strip().toLowerCase(Locale.ROOT)));
        }
        return parts;
    }

    private static DocumentPart one(String word) {
        return Arrays.stream(values())
                .filter(part -> part.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The document has no page \"" + word
                        + "\"; choose from "
                        + Arrays.stream(values()).map(DocumentPart::word).collect(Collectors.joining(", "))
                        + ", with commas between them, or leave the choice out for all of them."));
    }
}
