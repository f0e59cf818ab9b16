package org.taperwright.catalogue.ui.entry;

import java.util.Optional;
import java.util.function.Function;
import javax.swing.JTextField;
import org.taperwright.shaping.instrument.FieldChange;
import org.taperwright.workbench.ui.Written;

/**
 * A field for many instruments at once: left empty it changes nothing, the word {@code none} clears.
 *
 * @param label in people's words
 * @param field the text
 * @param reading the change that a text means; empty when it means none
 * @param expected what is expected, in words
 */
record ManyField(String label, JTextField field, Function<String, Optional<FieldChange>> reading, String expected) {
    private static final String CLEAR = "none";

    /** A field for words. */
    static ManyField words(String label, Function<String, FieldChange> change) {
        return new ManyField(
                label,
                field(label),
                text -> Optional.of(change.apply(text.equals(CLEAR) ? "" : text)),
                "words; " + CLEAR + " to clear");
    }

    /** A field for a value written in some way. */
    static <T> ManyField written(String label, Written<T> written, Function<T, FieldChange> change) {
        return new ManyField(
                label,
                field(label),
                text -> written.reading().apply(text.equals(CLEAR) ? "" : text).map(change),
                written.expected());
    }

    /** A field for one of some words. */
    static <T> ManyField word(String label, T[] choices, Function<T, String> word, Function<T, FieldChange> change) {
        return new ManyField(
                label,
                field(label),
                text -> {
                    for (T choice : choices) {
                        if (word.apply(choice).equalsIgnoreCase(text)) {
                            return Optional.of(change.apply(choice));
                        }
                    }
                    return Optional.empty();
                },
                "one of "
                        + String.join(
                                ", ", java.util.Arrays.stream(choices).map(word).toList()));
    }

    private static JTextField field(String label) {
        JTextField field = new JTextField();
        field.setName("many." + label.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        field.getAccessibleContext().setAccessibleName(label);
        field.putClientProperty("JTextField.placeholderText", "as they are");
        return field;
    }

    /** Whether something is entered. */
    boolean used() {
        return !field.getText().isBlank();
    }

    /** The change entered; empty when the text is not understood. */
    Optional<FieldChange> change() {
        return reading.apply(field.getText().strip());
    }

    /** What is wrong with the text. */
    String fault() {
        return label + ": “" + field.getText().strip() + "” is not understood; expected " + expected;
    }
}
