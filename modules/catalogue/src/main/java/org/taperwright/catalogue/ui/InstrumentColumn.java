package org.taperwright.catalogue.ui;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.taperwright.shaping.instrument.Price;
import org.taperwright.shaping.instrument.Reciprocation;
import org.taperwright.shaping.instrument.Window;

/** The columns that the instruments table can have, in the order first shown. */
enum InstrumentColumn {
    SIZE("Size", "Size and colour by ISO 3630-1", true, row -> row.designation().size()),
    TAPER(
            "Taper",
            "Taper next to the tip, mm/mm",
            true,
            row -> row.designation().taper()),
    COURSE(
            "Course",
            "How the taper goes on towards the handle",
            false,
            row -> row.designation().course().word()),
    NAME("Name", "What people call it", true, row -> row.instrument().name()),
    TYPE("Type", "The trade's type", true, row -> row.instrument().type()),
    LENGTH(
            "Length (mm)",
            "From the tip to the handle, mm",
            true,
            row -> row.instrument().design().lengthMm()),
    WORKING_PART(
            "Working part (mm)",
            "Length of the working part, mm",
            false,
            row -> row.instrument().design().workingPartMm()),
    SECTION("Section", "The section next to the tip", true, InstrumentRow::section),
    ALLOY("Alloy", "What it is made of", true, InstrumentRow::alloy),
    MOTION(
            "Motion",
            "The motion it is meant for",
            true,
            row -> row.instrument().design().motion().word()),
    DRIVE(
            "Drive",
            "Held by hand (handle) or driven by a motor (latch)",
            true,
            row -> row.instrument().drive().word()),
    DESIGN(
            "Design",
            "Whether the design is known or assumed from the type, which makes the bands of its values wider",
            true,
            row -> row.instrument().designAssumed() ? "assumed by type" : "known"),
    STOCK(
            "Stock",
            "Unused pieces in stock",
            true,
            row -> row.instrument().supply().stock()),
    REORDER(
            "Reorder level",
            "Fewest that should be in stock",
            false,
            row -> blankZero(row.instrument().supply().reorderLevel())),
    USES(
            "Uses",
            "Uses the maker allows",
            true,
            row -> blankZero(row.instrument().usesAllowed())),
    SPEED(
            "Speed (rpm)",
            "Speed window of the maker, revolutions per minute",
            true,
            row -> range(row.instrument().speedRpm(), 1, "%.0f")),
    TORQUE(
            "Torque (N·cm)",
            "Torque window of the maker, N·cm",
            true,
            row -> range(row.instrument().torqueNmm(), 10, "%.1f")),
    ANGLES(
            "Angles (°)",
            "Cutting and releasing angles the maker allows, degrees",
            false,
            row -> row.instrument()
                    .reciprocation()
                    .map(InstrumentColumn::angles)
                    .orElse("")),
    MAKER("Maker", "Who makes it", true, row -> row.instrument().maker()),
    LINE("Line", "The maker's line", true, row -> row.instrument().line()),
    SUPPLIER("Supplier", "Who sells it", false, row -> row.instrument().supply().supplier()),
    LOT("Lot", "Lot of those in stock", false, row -> row.instrument().supply().lot()),
    EXPIRY(
            "Expiry",
            "Last day on which those in stock may be used",
            false,
            row -> row.instrument().supply().expiry().map(LocalDate::toString).orElse("")),
    PRICE(
            "Price",
            "Price of one piece",
            false,
            row -> row.instrument().supply().price().map(Price::text).orElse(""));

    private final String title;
    private final String explanation;
    private final boolean atFirst;
    private final Function<InstrumentRow, Comparable<?>> value;

    InstrumentColumn(String title, String explanation, boolean atFirst, Function<InstrumentRow, Comparable<?>> value) {
        this.title = title;
        this.explanation = explanation;
        this.atFirst = atFirst;
        this.value = value;
    }

    /** The columns shown until a person chooses others. */
    static List<InstrumentColumn> atFirst() {
        return Arrays.stream(values()).filter(column -> column.atFirst).toList();
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
        return switch (this) {
            case SIZE, TAPER, LENGTH, WORKING_PART, STOCK -> true;
            default -> false;
        };
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
            case ANGLES -> least(row.instrument().reciprocation().map(Reciprocation::cuttingDeg));
            case USES -> (double) row.instrument().usesAllowed();
            case REORDER -> (double) row.instrument().supply().reorderLevel();
            case PRICE ->
                row.instrument()
                        .supply()
                        .price()
                        .map(price -> price.amount().doubleValue())
                        .orElse(Double.NEGATIVE_INFINITY);
            case EXPIRY -> (String) value(row);
            default -> NaturalOrder.key((String) value(row));
        };
    }

    private static String blankZero(int count) {
        return count == 0 ? "" : Integer.toString(count);
    }

    private static double least(Optional<Window> window) {
        return window.map(Window::least).orElse(Double.NEGATIVE_INFINITY);
    }

    private static String angles(Reciprocation angles) {
        return range(Optional.of(angles.cuttingDeg()), 1, "%.0f") + " / "
                + range(Optional.of(angles.releasingDeg()), 1, "%.0f");
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
