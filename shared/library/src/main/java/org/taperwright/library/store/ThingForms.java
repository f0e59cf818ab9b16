package org.taperwright.library.store;

import java.util.List;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** How things stand in the store as text: the store knows columns, not forms. */
public interface ThingForms {
    /** Why a thing could not be kept; empty when it can. */
    List<Fault> faults(ThingId id, Record thing);

    /** The text of a thing that has no such faults. */
    String write(ThingId id, Record thing);

    /** The content of a text once written. */
    Content read(ThingKind kind, String text);
}
