package org.taperwright.library.search;

import org.taperwright.library.store.Entry;
import org.taperwright.library.store.SearchColumns;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.shaping.instrument.Instrument;

/**
 * What of an instrument is compared with a filter, worked out once.
 *
 * @param entry the instrument
 * @param words all its words, in lower case
 * @param size hundredths of a millimetre
 * @param taper at the tip, mm per mm
 * @param lengthMm from the tip to the handle, mm
 * @param family of the section at the tip
 * @param alloy identifier
 * @param motion what it is meant for
 * @param inStock whether any lies in the drawer
 */
record SoughtInstrument(
        Entry entry,
        String words,
        int size,
        double taper,
        double lengthMm,
        String family,
        String alloy,
        Motion motion,
        boolean inStock) {
    static SoughtInstrument of(Entry entry) {
        SearchColumns columns = SearchColumns.of(entry.thing());
        Instrument instrument = (Instrument) entry.thing();
        return new SoughtInstrument(
                entry,
                columns.text(),
                instrument.size(),
                columns.taper().orElse(0.0),
                instrument.design().lengthMm(),
                columns.family().orElse(""),
                instrument.design().alloy(),
                instrument.design().motion(),
                instrument.supply().stock() > 0);
    }

    Instrument instrument() {
        return (Instrument) entry.thing();
    }
}
