package org.shotledger.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name a writer probably meant. */
public final class NearestName {
    private NearestName() {}

    /**
     * The nearest of the allowed names by edit distance (V. I. Levenshtein, Sov. Phys. Dokl. 10 (1966) 707-710), letter
     * case ignored.
     *
     * @param found the name that was written
     * @param allowed the names that exist
     * @return the nearest, or empty when none is within a third of its length, at least one letter
     */
    public static Optional<String> of(String found, Collection<String> allowed) {
        if (found.length() > 60) {
            return Optional.empty();
        }
        String best = null;
        int bestDistance = Integer.MAX_VALUE;
        for (String name : allowed) {
            int distance = distance(fold(found), fold(name));
            if (distance < bestDistance && distance <= Math.max(1, name.length() / 3)) {
                best = name;
                bestDistance = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static String fold(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
