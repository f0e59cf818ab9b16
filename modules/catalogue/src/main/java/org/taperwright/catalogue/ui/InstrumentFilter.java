package org.taperwright.catalogue.ui;

import java.util.Optional;
import java.util.function.Predicate;
import org.taperwright.library.store.Snapshot;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.MotorFits;

/**
 * Which instruments the table lets through; what is empty does not matter.
 *
 * @param text words that must all occur in a row
 * @param leastSize smallest size, hundredths of a millimetre
 * @param mostSize greatest size
 * @param taper taper next to the tip, mm/mm
 * @param lengthMm from tip to handle
 * @param section the section next to the tip, in words
 * @param alloy the alloy, in words
 * @param motion the motion it is meant for
 * @param stock what is asked of the stock
 * @param motor the motor that must be able to drive it
 */
record InstrumentFilter(
        String text,
        Optional<Integer> leastSize,
        Optional<Integer> mostSize,
        Optional<Double> taper,
        Optional<Double> lengthMm,
        Optional<String> section,
        Optional<String> alloy,
        Optional<Motion> motion,
        StockFilter stock,
        Optional<ThingId> motor) {
    /** Lets everything through. */
    static final InstrumentFilter ALL = new InstrumentFilter(
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            StockFilter.ANY,
            Optional.empty());

    private static final double ALIKE = 1e-9;

    /** The same with other words. */
    InstrumentFilter withText(String words) {
        return new InstrumentFilter(words, leastSize, mostSize, taper, lengthMm, section, alloy, motion, stock, motor);
    }

    /** Whether it lets everything through. */
    boolean none() {
        return withText(text.strip()).equals(ALL);
    }

    /** How many conditions it has besides the words. */
    int conditions() {
        int count = stock == StockFilter.ANY ? 0 : 1;
        for (Optional<?> each : new Optional<?>[] {taper, lengthMm, section, alloy, motion, motor}) {
            count += each.isPresent() ? 1 : 0;
        }
        return count + (leastSize.isPresent() || mostSize.isPresent() ? 1 : 0);
    }

    /** Whether a row is let through, for a library as it stands: a motor that is gone lets none through. */
    Predicate<InstrumentRow> in(Snapshot library) {
        SearchWords words = SearchWords.of(text);
        Optional<Motor> driving = motor.flatMap(id -> library.thing(id, Motor.class));
        return row -> leastSize.map(least -> row.designation().size() >= least).orElse(true)
                && mostSize.map(most -> row.designation().size() <= most).orElse(true)
                && same(taper, row.designation().taper())
                && same(lengthMm, row.instrument().design().lengthMm())
                && section.map(row.section()::equals).orElse(true)
                && alloy.map(row.alloy()::equals).orElse(true)
                && motion.map(wanted -> row.instrument().design().motion() == wanted)
                        .orElse(true)
                && stock.holds(row.instrument().supply())
                && words.in(row.searched())
                && (motor.isEmpty() || driving.filter(each -> drives(each, row)).isPresent());
    }

    private static boolean same(Optional<Double> wanted, double value) {
        return wanted.map(each -> Math.abs(each - value) < ALIKE).orElse(true);
    }

    private static boolean drives(Motor motor, InstrumentRow row) {
        return MotorFits.of(motor, row.instrument()).drives();
    }
}
