package org.taperwright.library.exchange.form;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.taperwright.mechanics.design.ThingId;

/** The forms of plain values. */
public final class Forms {
    private static final int NAME = 200;
    private static final int NOTE = 20_000;

    private Forms() {}

    /** A finite number from least to most, with its unit for people. */
    public static Form<Double> number(double least, double most, String unit) {
        return new NumberForm(least, most, unit);
    }

    /** A whole number from least to most. */
    public static Form<Integer> whole(int least, int most) {
        return new WholeNumberForm(least, most);
    }

    /** True or false. */
    public static Form<Boolean> flag() {
        return new FlagForm();
    }

    /** What a thing is called: 1 to 200 characters. */
    public static Form<String> name() {
        return new TextForm(1, NAME);
    }

    /** A short line of text, at most 200 characters. */
    public static Form<String> line() {
        return new TextForm(0, NAME);
    }

    /** Free text, at most 20,000 characters. */
    public static Form<String> note() {
        return new TextForm(0, NOTE);
    }

    /** The identifier of a thing. */
    public static Form<ThingId> thing() {
        return new IdentifierForm<>(ThingId::new, ThingId::value);
    }

    /** An identifier of something outside the library, such as an alloy or a section family. */
    public static Form<String> identifier() {
        return new IdentifierForm<>(Function.identity(), Function.identity());
    }

    /** One of a few words. */
    public static <T> Form<T> word(T[] choices, Function<T, String> word) {
        return new WordForm<>(List.of(choices), word);
    }

    /** A list. */
    public static <T> Form<List<T>> list(Form<T> item, int fewest, int most) {
        return new ListForm<>(item, fewest, most);
    }

    /** Numbers by name. */
    public static Form<Map<String, Double>> numbersByName(Form<Double> number, int most) {
        return new NumbersByNameForm(number, most);
    }
}
