package org.taperwright.library.exchange.bench;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Entry;
import org.taperwright.mechanics.quantity.Unit;

/** What a column of measurements may hold. A heading is the quantity's name and, if not the usual unit, its unit. */
enum BenchColumn {
    ANGLE("angle", Unit.DEGREE),
    TORQUE("torque", Unit.NEWTON_MILLIMETRE),
    MOMENT("moment", Unit.NEWTON_MILLIMETRE),
    RADIUS("radius", Unit.MILLIMETRE),
    LEVEL("level", Unit.MILLIMETRE),
    CYCLES("cycles", Unit.NONE);

    private final String word;
    private final Unit unit;

    BenchColumn(String word, Unit unit) {
        this.word = word;
        this.unit = unit;
    }

    String word() {
        return word;
    }

    /** The heading that this reader would write. */
    String usual() {
        return unit == Unit.NONE ? word : word + " (" + unit.symbol() + ")";
    }

    /** A column by its heading, such as {@code torque (N·cm)}, {@code torqueNcm}, {@code angle}. */
    static Optional<Found> of(String heading) {
        String text = heading.strip();
        return Arrays.stream(values())
                .filter(column -> text.toLowerCase(Locale.ROOT).startsWith(column.word))
                .findFirst()
                .flatMap(column -> column.found(text.substring(column.word.length())));
    }

    private Optional<Found> found(String rest) {
        String spelling = rest.replaceAll("[()\\[\\],/]", " ").strip();
        return Entry.read("1 " + spelling, unit, word) instanceof Entry.Given factor
                ? Optional.of(new Found(this, factor.value()))
                : Optional.empty();
    }

    /** A column found, and what its numbers are multiplied by. */
    record Found(BenchColumn column, double factor) {}
}
