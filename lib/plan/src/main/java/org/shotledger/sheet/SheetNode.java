package org.shotledger.sheet;

import java.util.List;
import java.util.Optional;

/** A value of a sheet with the place where it stands. */
public sealed interface SheetNode {

    /**
     * Where the value begins.
     *
     * @return the place
     */
    Place at();

    /**
     * Where the value ends.
     *
     * @return index after its last character, in code points
     */
    int end();

    /**
     * A place in a text.
     *
     * @param line line from 1
     * @param column column from 1, in code points
     * @param offset index into the text, in code points from 0
     */
    record Place(int line, int column, int offset) {}

    /**
     * A single value, always text: numbers and units are read by whoever knows what is wanted.
     *
     * @param text the value without quotes
     * @param at where it begins
     * @param end index after its last character, in code points
     * @param plain whether it stands without quotes
     */
    record Scalar(String text, Place at, int end, boolean plain) implements SheetNode {}

    /**
     * A list.
     *
     * @param items its values
     * @param at where it begins
     * @param end index after its last character, in code points
     */
    record Items(List<SheetNode> items, Place at, int end) implements SheetNode {}

    /**
     * A section of named values, in the order in which they stand.
     *
     * @param entries the named values; names are unique
     * @param at where it begins
     * @param end index after its last character, in code points
     * @param flow whether it stands in braces
     */
    record Mapping(List<Entry> entries, Place at, int end, boolean flow) implements SheetNode {

        /**
         * Looks a value up.
         *
         * @param key its name
         * @return the entry, or empty
         */
        public Optional<Entry> find(String key) {
            return entries.stream().filter(e -> e.key().equals(key)).findFirst();
        }
    }

    /**
     * A named value.
     *
     * @param key the name
     * @param keyAt where the name stands
     * @param keyEnd index after the name's last character, in code points
     * @param value the value
     */
    record Entry(String key, Place keyAt, int keyEnd, SheetNode value) {}
}
