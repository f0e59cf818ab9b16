package org.taperwright.mechanics.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit of show and entry. Its factor turns a number in it into the base unit of its kind: mm, degree, plain number,
 * N·mm, rpm, N, MPa. The gram-centimetre is by standard gravity, 9.80665 m/s² (definition).
 */
public enum Unit {
    MILLIMETRE(Kind.LENGTH, "mm", 1, "millimetre", "millimetres"),
    DEGREE(Kind.ANGLE, "°", 1, "deg", "degree", "degrees"),
    NONE(Kind.RATIO, "", 1),
    PERCENT(Kind.RATIO, "%", 0.01, "percent", "per cent"),
    NEWTON_MILLIMETRE(Kind.TORQUE, "N·mm", 1, "nmm"),
    NEWTON_CENTIMETRE(Kind.TORQUE, "N·cm", 10, "ncm"),
    GRAM_CENTIMETRE(Kind.TORQUE, "g·cm", 0.0980665, "gcm"),
    RPM(Kind.SPEED, "rpm", 1, "rev/min", "r/min", "min⁻¹"),
    NEWTON(Kind.FORCE, "N", 1),
    MEGAPASCAL(Kind.STRESS, "MPa", 1);

    /** What a unit measures; only units of one kind turn into each other. */
    public enum Kind {
        LENGTH,
        ANGLE,
        RATIO,
        TORQUE,
        SPEED,
        FORCE,
        STRESS
    }

    private final Kind kind;
    private final String symbol;
    private final double factor;
    private final List<String> spellings;

    Unit(Kind kind, String symbol, double factor, String... spellings) {
        this.kind = kind;
        this.symbol = symbol;
        this.factor = factor;
        this.spellings = List.of(spellings);
    }

    /** What it measures. */
    public Kind kind() {
        return kind;
    }

    /** The symbol written after a number; empty for a plain number. */
    public String symbol() {
        return symbol;
    }

    /** A number in this unit, in another unit of the same kind. */
    public double in(Unit other, double value) {
        if (kind != other.kind) {
            throw new IllegalArgumentException(this + " does not turn into " + other);
        }
        return this == other ? value : value * factor / other.factor;
    }

    /** The unit that people mean by a spelling: {@code N·cm}, {@code N cm}, {@code Ncm}. */
    static Optional<Unit> spelled(String text) {
        String bare = bare(text);
        for (Unit unit : values()) {
            boolean known = bare(unit.symbol).equals(bare)
                    || unit.spellings.stream().map(Unit::bare).anyMatch(bare::equals);
            if (known) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s.·⋅*]", "");
    }
}
