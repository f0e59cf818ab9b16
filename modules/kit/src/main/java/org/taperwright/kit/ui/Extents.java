package org.taperwright.kit.ui;

import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.kit.Coverages;

/** The size, taper and length of an instrument. */
final class Extents {
    private Extents() {}

    static Coverages.Extent of(Instrument instrument) {
        Designation designation = Designation.of(instrument);
        return new Coverages.Extent(
                designation.size(), designation.taper(), instrument.design().lengthMm());
    }
}
