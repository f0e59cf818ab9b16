package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;

/**
 * Numbers as a person types them, with commas, semicolons or spaces between: {@code .02, .04} or {@code 21 25 28 mm}.
 *
 * @param numbers the numbers meant, none when the text is not understood
 * @param fault what is wrong and what is expected; empty when nothing is
 */
record NumbersEntry(List<Double> numbers, String fault) {
    NumbersEntry {
        numbers = List.copyOf(numbers);
    }

    /**
     * Reads a text.
     *
     * @param unit the unit meant
     * @param expected what is expected, in words
     */
    static NumbersEntry of(String text, Unit unit, String expected) {
        List<Double> numbers = new ArrayList<>();
        String bare = text.strip().replaceAll("\\s*(" + "mm|%" + ")", "$1");
        for (String part : bare.split("[,;\\s]+")) {
            if (Entry.read(part, unit, "") instanceof Entry.Given given) {
                numbers.add(given.value());
            } else {
                return new NumbersEntry(List.of(), "“" + text.strip() + "” is not understood; expected " + expected);
            }
        }
        return new NumbersEntry(numbers.stream().distinct().sorted().toList(), "");
    }
}
