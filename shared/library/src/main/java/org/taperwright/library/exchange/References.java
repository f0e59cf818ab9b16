package org.taperwright.library.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.store.Reference;
import org.taperwright.library.store.SavedComparison;
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
                faults.add(thing.origin()
                        .place(Fault.impossible(
                                "id",
                                "found \"" + thing.id() + "\", which another "
                                        + before.kind().word() + " bears",
                                "expected an identifier of its own")));
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
            faults.add(thing.origin()
                    .place(Fault.unusual(
                            reference.where(),
                            "refers to \"" + reference.to() + "\", which is not in the file",
                            "expected a " + reference.kind().word() + " of the library or of the same file")));
        } else if (target.kind() != reference.kind()) {
            faults.add(thing.origin()
                    .place(Fault.impossible(
                            reference.where(),
                            "refers to \"" + reference.to() + "\", which is a "
                                    + target.kind().word(),
                            "expected a " + reference.kind().word())));
        }
    }
}
