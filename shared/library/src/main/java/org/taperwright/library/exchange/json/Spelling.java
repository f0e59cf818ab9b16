package org.taperwright.library.exchange.json;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known word that was probably meant. */
public final class Spelling {
    private Spelling() {}

    /** The nearest known word, when at most a third of it is wrong. */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (word.length() > 100) {
            return Optional.empty();
        }
        return known.stream()
                .filter(candidate -> distance(word, candidate) <= Math.max(1, candidate.length() / 3))
                .min(Comparator.<String>comparingInt(candidate -> distance(word, candidate))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** Least number of letters inserted, left out or replaced (Levenshtein 1966), case apart. */
    private static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
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
