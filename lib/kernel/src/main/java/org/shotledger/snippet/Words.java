package org.shotledger.snippet;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What a product adds to completion.
 *
 * @param preferred names to list first, such as the job's verbs
 * @param inTexts what a text in a cell can name beside files, such as the fields of a form; asked for when somebody completes one
 */
public record Words(Set<String> preferred, Supplier<List<String>> inTexts) {

    /** No words beyond those of Java. */
    public static final Words NONE = new Words(Set.of(), List::of);

    public Words {
        preferred = Set.copyOf(preferred);
    }
}
