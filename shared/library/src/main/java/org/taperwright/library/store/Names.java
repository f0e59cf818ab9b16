package org.taperwright.library.store;

import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/** What people call a thing. */
public final class Names {
    private Names() {}

    /** The name of one of the records of {@link ThingKind}. */
    public static String of(Record thing) {
        if (thing instanceof Design design) {
            return design.name();
        }
        if (thing instanceof OwnAlloy alloy) {
            return alloy.name();
        }
        if (thing instanceof Instrument instrument) {
            return instrument.name();
        }
        if (thing instanceof Motor motor) {
            return motor.name();
        }
        if (thing instanceof Canal canal) {
            return canal.name();
        }
        if (thing instanceof Sequence sequence) {
            return sequence.name();
        }
        if (thing instanceof Kit kit) {
            return kit.name();
        }
        if (thing instanceof SavedComparison comparison) {
            return comparison.name();
        }
        if (thing instanceof SavedFilter filter) {
            return filter.name();
        }
        throw new IllegalArgumentException("not a thing of the library: " + thing.getClass());
    }
}
