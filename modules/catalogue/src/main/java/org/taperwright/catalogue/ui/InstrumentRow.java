package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.function.UnaryOperator;
import org.taperwright.library.store.Entry;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.section.SectionFamily;
import org.taperwright.mechanics.section.Sections;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;

/**
 * An instrument as the table shows it, with everything looked up once, so that sorting and filtering of tens of
 * thousands only compare what stands here.
 *
 * @param entry the library's entry, by whose identity a row is known to be current
 * @param instrument the instrument
 * @param designation size, taper and colour
 * @param family identifier of the section's family next to the tip, empty without one
 * @param section the section next to the tip, in words
 * @param alloy the alloy, in words
 * @param nameKey the name as {@link NaturalOrder} orders it
 * @param searched everything that a filter looks in, folded
 */
record InstrumentRow(
        Entry entry,
        Instrument instrument,
        Designation designation,
        String family,
        String section,
        String alloy,
        String nameKey,
        String searched) {
    /**
     * The row of an entry that holds an instrument.
     *
     * @param alloys what people call the alloy with an identifier
     */
    static InstrumentRow of(Entry entry, UnaryOperator<String> alloys) {
        Instrument instrument = (Instrument) entry.thing();
        Design design = instrument.design();
        Designation designation = Designation.of(design);
        String family = family(design);
        String section = section(design, family);
        String alloy = alloys.apply(design.alloy());
        String searched = SearchWords.fold(String.join(
                " ",
                List.of(
                        instrument.name(),
                        instrument.maker(),
                        instrument.line(),
                        instrument.type(),
                        instrument.drive().word(),
                        instrument.supply().supplier(),
                        instrument.supply().lot(),
                        designation.text(),
                        designation.colour().map(SizeColour::word).orElse(""),
                        section,
                        alloy,
                        design.motion().word(),
                        instrument.supply().low() ? "low" : "",
                        instrument.note())));
        return new InstrumentRow(
                entry, instrument, designation, family, section, alloy, NaturalOrder.key(instrument.name()), searched);
    }

    ThingId id() {
        return entry.id();
    }

    private static String family(Design design) {
        return design.sections().stream()
                .findFirst()
                .map(station -> station.shape().family())
                .orElse("");
    }

    private static String section(Design design, String family) {
        String label = Sections.family(family).map(SectionFamily::label).orElse(family);
        return design.sections().size() > 1 ? label + ", changing" : label;
    }
}
