package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.library.store.Reference;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** Whether things fit each other that pass one by one: of each its identifier, kind and open references are kept. */
final class StreamedReferences {
    private static final int MOST_REMARKS = 100;

    private final Map<ThingId, ThingKind> kinds = new HashMap<>();
    private final List<Open> open = new ArrayList<>();

    /** A reference whose thing has not yet passed. */
    private record Open(Reference reference, Place place) {}

    /** Takes note of a thing and gives what is wrong with it so far. */
    List<FileFault> note(ReadThing thing) {
        List<FileFault> faults = new ArrayList<>();
        ThingKind before = kinds.putIfAbsent(thing.id(), thing.kind());
        if (before != null) {
            faults.add(thing.origin().place(References.taken(thing.id(), before)));
        }
        for (Reference reference : Reference.of(thing.thing())) {
            ThingKind there = kinds.get(reference.to());
            FileFault placed = thing.origin().place(References.misfit(reference, reference.kind()));
            if (there == null) {
                open.add(new Open(reference, new Place(placed.line(), placed.column())));
            } else if (there != reference.kind()) {
                faults.add(thing.origin().place(References.misfit(reference, there)));
            }
        }
        return faults;
    }

    /** What is wrong with the references that were open. */
    List<FileFault> atEnd(String source) {
        List<FileFault> faults = new ArrayList<>();
        for (Open each : open) {
            ThingKind there = kinds.get(each.reference().to());
            Fault fault =
                    there == null ? References.absent(each.reference()) : References.misfit(each.reference(), there);
            boolean remark = there == null && faults.size() < MOST_REMARKS;
            if (remark || there != null && there != each.reference().kind()) {
                faults.add(FileFault.at(source, each.place(), fault));
            }
        }
        return faults;
    }
}
