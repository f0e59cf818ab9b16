package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.Locale;

/**
 * What a person typed into a search box: words that must all occur, in any order and without regard to case.
 *
 * @param words the words, in lower case
 */
record SearchWords(List<String> words) {
    SearchWords {
        words = List.copyOf(words);
    }

    /** The words of a text. */
    static SearchWords of(String text) {
        String folded = fold(text).strip();
        return new SearchWords(folded.isEmpty() ? List.of() : List.of(folded.split("\\s+")));
    }

    /** A text as it must be for {@link #in}: in lower case. */
    static String fold(String text) {
        return text.toLowerCase(Locale.ROOT);
    }

    /** Whether every word occurs in a folded text. */
    boolean in(String folded) {
        for (String word : words) {
            if (!folded.contains(word)) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing was typed. */
    boolean none() {
        return words.isEmpty();
    }
}
