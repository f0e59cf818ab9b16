package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.store.Reference;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Fault;

/** Checks that things which travel together fit each other. */
final class References {
    private References() {}

    /**
     * What does not fit: two things with one identifier, a reference to a thing of the wrong kind; and, as a remark, a reference to a thing that is not among them.
     */
    static List<FileFault> check(List<ReadThing> things) {
        List<FileFault> faults = new ArrayList<>();
        Map<Object, ReadThing> byId = new HashMap<>();
        for (ReadThing thing : things) {
            ReadThing before = byId.putIfAbsent(thing.id(), thing);
            if (before != null) {
                faults.add(thing.origin().place(taken(thing.id(), before.kind())));
            }
        }
        for (ReadThing thing : things) {
            for (Reference reference : Reference.of(thing.thing())) {
                check(thing, reference, byId, faults);
            }
        }
        return faults;
    }

    /** Remarks on what within a thing does not fit. */
    static List<FileFault> within(List<ReadThing> things) {
        List<FileFault> remarks = new ArrayList<>();
        for (ReadThing thing : things) {
            if (thing.thing() instanceof SavedComparison comparison
                    && !comparison.designs().contains(comparison.datum())) {
                remarks.add(thing.origin()
                        .place(Fault.unusual(
                                "datum",
                                "refers to \"" + comparison.datum() + "\", which is not compared",
                                "expected one of the designs")));
            }
        }
        return remarks;
    }

    private static void check(
            ReadThing thing, Reference reference, Map<Object, ReadThing> byId, List<FileFault> faults) {
        ReadThing target = byId.get(reference.to());
        if (target == null) {
            faults.add(thing.origin().place(absent(reference)));
        } else if (target.kind() != reference.kind()) {
            faults.add(thing.origin().place(misfit(reference, target.kind())));
        }
    }

    /** Two things have one identifier. */
    static Fault taken(ThingId id, ThingKind before) {
        return Fault.impossible(
                "id",
                "found \"" + id + "\", which another " + before.word() + " bears",
                "expected an identifier of its own");
    }

    /** A reference to a thing that is not there. */
    static Fault absent(Reference reference) {
        return Fault.unusual(
                reference.where(),
                "refers to \"" + reference.to() + "\", which is not in the file",
                "expected " + reference.kind().one() + " of the library or of the same file");
    }

    /** A reference to a thing of another kind. */
    static Fault misfit(Reference reference, ThingKind found) {
        return Fault.impossible(
                reference.where(),
                "refers to \"" + reference.to() + "\", which is " + found.one(),
                "expected " + reference.kind().one());
    }
}
