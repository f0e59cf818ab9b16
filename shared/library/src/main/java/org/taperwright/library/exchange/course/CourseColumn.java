package org.taperwright.library.exchange.course;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;

/** What a column of a canal's table may hold. A heading is the quantity's name and, if not the usual unit, its unit. */
enum CourseColumn {
    X("x", Unit.MILLIMETRE),
    Y("y", Unit.MILLIMETRE),
    Z("z", Unit.MILLIMETRE),
    DIAMETER("diameter", Unit.MILLIMETRE),
    WIDE("wide", Unit.MILLIMETRE),
    NARROW("narrow", Unit.MILLIMETRE),
    AZIMUTH("azimuth", Unit.DEGREE),
    ROOT_WIDE("root wide", Unit.MILLIMETRE),
    ROOT_NARROW("root narrow", Unit.MILLIMETRE),
    ROOT_AZIMUTH("root azimuth", Unit.DEGREE);

    private final String word;
    private final Unit unit;

    CourseColumn(String word, Unit unit) {
        this.word = word;
        this.unit = unit;
    }

    String word() {
        return word;
    }

    /** Whether each row needs it. */
    boolean place() {
        return this == X || this == Y || this == Z;
    }

    /** A column by its heading, such as {@code x (mm)}, {@code root wide}, {@code azimuth (°)}. */
    static Optional<Found> of(String heading) {
        String text = heading.strip();
        return Arrays.stream(values())
                .filter(column -> text.toLowerCase(Locale.ROOT).startsWith(column.word))
                .max(Comparator.comparingInt(column -> column.word.length()))
                .flatMap(column -> column.found(text.substring(column.word.length())));
    }

    private Optional<Found> found(String rest) {
        String spelling = rest.replaceAll("[()\\[\\],/]", " ").strip();
        return Entry.read("1 " + spelling, unit, word) instanceof Entry.Given factor
                ? Optional.of(new Found(this, factor.value()))
                : Optional.empty();
    }

    /** A column found, and what its numbers are multiplied by. */
    record Found(CourseColumn column, double factor) {}
}
