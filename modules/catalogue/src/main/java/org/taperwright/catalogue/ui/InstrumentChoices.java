package org.taperwright.catalogue.ui;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.taperwright.library.store.Entry;

/**
 * What occurs in a catalogue, for fields to choose from.
 *
 * @param types the trade's types
 * @param families identifiers of section families next to the tip
 * @param alloys what people call each alloy, by its identifier
 * @param tapers tapers next to the tip, mm/mm
 * @param lengthsMm lengths from tip to handle
 * @param motors the library's motors, by name
 */
record InstrumentChoices(
        List<String> types,
        List<String> families,
        Map<String, String> alloys,
        List<Double> tapers,
        List<Double> lengthsMm,
        List<Entry> motors) {
    /** Nothing. */
    static final InstrumentChoices NONE =
            new InstrumentChoices(List.of(), List.of(), Map.of(), List.of(), List.of(), List.of());

    /** The same with other motors. */
    InstrumentChoices withMotors(List<Entry> now) {
        return new InstrumentChoices(types, families, alloys, tapers, lengthsMm, List.copyOf(now));
    }

    /** What occurs in some rows; no motors yet. */
    static InstrumentChoices of(Collection<InstrumentRow> rows) {
        TreeSet<String> types = new TreeSet<>(NaturalOrder.OF_NAMES);
        TreeSet<String> families = new TreeSet<>(NaturalOrder.OF_NAMES);
        TreeMap<String, String> alloys = new TreeMap<>(NaturalOrder.OF_NAMES);
        TreeSet<Double> tapers = new TreeSet<>();
        TreeSet<Double> lengths = new TreeSet<>();
        for (InstrumentRow row : rows) {
            types.add(row.instrument().type());
            families.add(row.family());
            alloys.put(row.instrument().design().alloy(), row.alloy());
            tapers.add(row.designation().taper());
            lengths.add(row.instrument().design().lengthMm());
        }
        types.removeIf(String::isBlank);
        families.removeIf(String::isBlank);
        return new InstrumentChoices(
                List.copyOf(types),
                List.copyOf(families),
                Collections.unmodifiableMap(alloys),
                List.copyOf(tapers),
                List.copyOf(lengths),
                List.of());
    }
}
