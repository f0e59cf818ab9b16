package org.taperwright.catalogue.ui;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import org.taperwright.library.store.Entry;

/**
 * What occurs in a catalogue, for fields to choose from.
 *
 * @param types the trade's types
 * @param sections sections next to the tip, in words
 * @param alloys alloys, in words
 * @param tapers tapers next to the tip, mm/mm
 * @param lengthsMm lengths from tip to handle
 * @param motors the library's motors, by name
 */
record InstrumentChoices(
        List<String> types,
        List<String> sections,
        List<String> alloys,
        List<Double> tapers,
        List<Double> lengthsMm,
        List<Entry> motors) {
    /** Nothing. */
    static final InstrumentChoices NONE =
            new InstrumentChoices(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    /** The same with other motors. */
    InstrumentChoices withMotors(List<Entry> now) {
        return new InstrumentChoices(types, sections, alloys, tapers, lengthsMm, List.copyOf(now));
    }

    /** What occurs in some rows; no motors yet. */
    static InstrumentChoices of(Collection<InstrumentRow> rows) {
        TreeSet<String> types = new TreeSet<>(NaturalOrder.OF_NAMES);
        TreeSet<String> sections = new TreeSet<>(NaturalOrder.OF_NAMES);
        TreeSet<String> alloys = new TreeSet<>(NaturalOrder.OF_NAMES);
        TreeSet<Double> tapers = new TreeSet<>();
        TreeSet<Double> lengths = new TreeSet<>();
        for (InstrumentRow row : rows) {
            types.add(row.instrument().type());
            sections.add(row.section());
            alloys.add(row.alloy());
            tapers.add(row.designation().taper());
            lengths.add(row.instrument().design().lengthMm());
        }
        types.removeIf(String::isBlank);
        sections.removeIf(String::isBlank);
        return new InstrumentChoices(
                List.copyOf(types),
                List.copyOf(sections),
                List.copyOf(alloys),
                List.copyOf(tapers),
                List.copyOf(lengths),
                List.of());
    }
}
