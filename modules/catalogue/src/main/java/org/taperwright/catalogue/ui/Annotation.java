package org.taperwright.catalogue.ui;

import java.util.Locale;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.measured.OwnAlloy;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Designation;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.shaping.sequence.Sequence;

/** The few words that stand after a thing's name in the library: what tells it from its neighbours. */
final class Annotation {
    private Annotation() {}

    /** The words; empty when the name says it already. */
    static String of(Entry entry) {
        String words = words(entry);
        return entry.name().contains(words) ? "" : words;
    }

    private static String words(Entry entry) {
        return switch (entry.kind()) {
            case DESIGN -> Designation.of((Design) entry.thing()).text();
            case ALLOY ->
                Alloys.find(((OwnAlloy) entry.thing()).kin()).map(Alloy::label).orElse("");
            case INSTRUMENT -> Designation.of((Instrument) entry.thing()).text();
            case MOTOR -> ((Motor) entry.thing()).cordless() ? "cordless" : "corded";
            case CANAL -> String.format(Locale.ROOT, "%.1f mm", ((Canal) entry.thing()).workingLengthMm());
            case SEQUENCE -> counted(((Sequence) entry.thing()).steps().size(), "step");
            case KIT -> counted(((Kit) entry.thing()).pieces().size(), "piece");
            case COMPARISON ->
                counted(((SavedComparison) entry.thing()).designs().size(), "design");
            case FILTER -> "";
        };
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
