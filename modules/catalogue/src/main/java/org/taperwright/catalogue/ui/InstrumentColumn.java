package org.taperwright.catalogue.ui;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.taperwright.shaping.instrument.Window;

/** The columns of the instruments table, in the order shown. */
enum InstrumentColumn {
    SIZE("Size", "Size and colour by ISO 3630-1", row -> row.designation().size()),
    TAPER("Taper", "Taper next to the tip, mm/mm", row -> row.designation().taper()),
    COURSE(
            "Course",
            "How the taper goes on towards the handle",
            row -> row.designation().course().word()),
    NAME("Name", "What people call it", row -> row.instrument().name()),
    TYPE("Type", "The trade's type", row -> row.instrument().type()),
    LENGTH(
            "Length (mm)",
            "From the tip to the handle, mm",
            row -> row.instrument().design().lengthMm()),
    SECTION("Section", "The section next to the tip", InstrumentRow::section),
    ALLOY("Alloy", "What it is made of", InstrumentRow::alloy),
    MOTION(
            "Motion",
            "The motion it is meant for",
            row -> row.instrument().design().motion().word()),
    DRIVE(
            "Drive",
            "Held by hand or driven by a motor",
            row -> row.instrument().drive().word()),
    DESIGN(
            "Design",
            "Whether the design is known or assumed from the type",
            row -> row.instrument().designAssumed() ? "assumed" : "known"),
    SPEED(
            "Speed (rpm)",
            "Speed window of the maker, revolutions per minute",
            row -> range(row.instrument().speedRpm(), 1, "%.0f")),
    TORQUE(
            "Torque (N·cm)",
            "Torque window of the maker, N·cm",
            row -> range(row.instrument().torqueNmm(), 10, "%.1f")),
    USES(
            "Uses",
            "Uses the maker allows",
            row -> row.instrument().usesAllowed() == 0
                    ? ""
                    : Integer.toString(row.instrument().usesAllowed())),
    MAKER("Maker", "Who makes it", row -> row.instrument().maker()),
    LINE("Line", "The maker's line", row -> row.instrument().line());

    private final String title;
    private final String explanation;
    private final Function<InstrumentRow, Comparable<?>> value;

    InstrumentColumn(String title, String explanation, Function<InstrumentRow, Comparable<?>> value) {
        this.title = title;
        this.explanation = explanation;
        this.value = value;
    }

    /** Heading, with the unit. */
    String title() {
        return title;
    }

    /** One clause for the tooltip. */
    String explanation() {
        return explanation;
    }

    /** What stands in the column: a number, or text. */
    Comparable<?> value(InstrumentRow row) {
        return value.apply(row);
    }

    /** Whether it holds numbers. */
    boolean numeric() {
        return this == SIZE || this == TAPER || this == LENGTH;
    }

    /** What rows are ordered by: a number or a text in plain order; windows by their lower end. */
    Comparable<?> key(InstrumentRow row) {
        if (numeric()) {
            return ((Number) value(row)).doubleValue();
        }
        return switch (this) {
            case NAME -> row.nameKey();
            case SPEED -> least(row.instrument().speedRpm());
            case TORQUE -> least(row.instrument().torqueNmm());
            case USES -> (double) row.instrument().usesAllowed();
            default -> NaturalOrder.key((String) value(row));
        };
    }

    private static double least(Optional<Window> window) {
        return window.map(Window::least).orElse(Double.NEGATIVE_INFINITY);
    }

    private static String range(Optional<Window> window, double divisor, String format) {
        return window.map(w -> {
                    String least = String.format(Locale.ROOT, format, w.least() / divisor);
                    String most = String.format(Locale.ROOT, format, w.most() / divisor);
                    return least.equals(most) ? least : least + "–" + most;
                })
                .orElse("");
    }
}
