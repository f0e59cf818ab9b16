package org.taperwright.library.store;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Window;

/**
 * Which instruments are looked for; what is empty does not matter.
 *
 * @param words words that must all stand in the name, maker, line, type, supplier, lot or note, whatever the case
 * @param size sizes by ISO 3630-1, hundredths of a millimetre
 * @param taper tapers at the tip, mm per mm
 * @param lengthMm lengths from the tip to the handle, mm
 * @param families identifiers of the section's family at the tip, of which any will do
 * @param alloys identifiers of the alloy, of which any will do
 * @param motions motions, of which any will do
 * @param inStock whether only those in stock
 * @param motor the motor that must be able to drive it; when it is not in the library nothing is found
 */
public record InstrumentFilter(
        String words,
        Optional<Window> size,
        Optional<Window> taper,
        Optional<Window> lengthMm,
        List<String> families,
        List<String> alloys,
        List<Motion> motions,
        boolean inStock,
        Optional<ThingId> motor) {
    /** Every instrument. */
    public static final InstrumentFilter ALL = new InstrumentFilter(
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of(),
            List.of(),
            false,
            Optional.empty());

    public InstrumentFilter {
        families = List.copyOf(families);
        alloys = List.copyOf(alloys);
        motions = List.copyOf(motions);
    }

    /** With other words. */
    public InstrumentFilter withWords(String wanted) {
        return new InstrumentFilter(wanted, size, taper, lengthMm, families, alloys, motions, inStock, motor);
    }

    /** With a range of sizes, both ends included. */
    public InstrumentFilter withSize(Optional<Window> wanted) {
        return new InstrumentFilter(words, wanted, taper, lengthMm, families, alloys, motions, inStock, motor);
    }

    /** With a range of tapers, both ends included. */
    public InstrumentFilter withTaper(Optional<Window> wanted) {
        return new InstrumentFilter(words, size, wanted, lengthMm, families, alloys, motions, inStock, motor);
    }

    /** With a range of lengths, both ends included. */
    public InstrumentFilter withLengthMm(Optional<Window> wanted) {
        return new InstrumentFilter(words, size, taper, wanted, families, alloys, motions, inStock, motor);
    }

    /** With families of which any will do. */
    public InstrumentFilter withFamilies(List<String> wanted) {
        return new InstrumentFilter(words, size, taper, lengthMm, wanted, alloys, motions, inStock, motor);
    }

    /** With alloys of which any will do. */
    public InstrumentFilter withAlloys(List<String> wanted) {
        return new InstrumentFilter(words, size, taper, lengthMm, families, wanted, motions, inStock, motor);
    }

    /** With motions of which any will do. */
    public InstrumentFilter withMotions(List<Motion> wanted) {
        return new InstrumentFilter(words, size, taper, lengthMm, families, alloys, wanted, inStock, motor);
    }

    /** Only those in stock, or not only. */
    public InstrumentFilter withInStock(boolean wanted) {
        return new InstrumentFilter(words, size, taper, lengthMm, families, alloys, motions, wanted, motor);
    }

    /** Only those that a motor can drive. */
    public InstrumentFilter withMotor(Optional<ThingId> wanted) {
        return new InstrumentFilter(words, size, taper, lengthMm, families, alloys, motions, inStock, wanted);
    }
}
