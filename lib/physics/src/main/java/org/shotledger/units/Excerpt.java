package org.shotledger.units;

import java.util.regex.Pattern;

/** What someone wrote, short and harmless enough to stand in a sentence. */
public final class Excerpt {
    private static final int LONGEST = 60;
    private static final Pattern HARMFUL = Pattern.compile("[\\p{Cntrl}\u0085\u2028\u2029]");

    private Excerpt() {}

    /**
     * Shortens a text and replaces what would break a line.
     *
     * @param text what was written
     * @return at most 60 characters without control characters
     */
    public static String of(String text) {
        return of(text, LONGEST);
    }

    /**
     * Shortens a text and replaces what would break a line.
     *
     * @param text what was written
     * @param longest greatest length, above 3
     * @return at most so many characters without control characters
     */
    public static String of(String text, int longest) {
        String shown = text.length() > longest ? text.substring(0, longest - 3) + "..." : text;
        return HARMFUL.matcher(shown).replaceAll("?");
    }

    /**
     * The same in quotation marks.
     *
     * @param text what was written
     * @return for example {@code "84.5 mm"} with its marks
     */
    public static String quoted(String text) {
        return "\"" + of(text) + "\"";
    }

    /**
     * Words as the beginning of a sentence.
     *
     * @param words at least one character
     * @return the same with a capital letter
     */
    public static String beginning(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
