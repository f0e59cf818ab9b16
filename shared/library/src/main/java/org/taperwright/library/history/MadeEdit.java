package org.taperwright.library.history;

import java.util.List;
import java.util.Set;
import org.taperwright.mechanics.design.ThingId;

/** An edit as it was made. */
record MadeEdit(String name, List<Replacement> replacements) {
    MadeEdit {
        replacements = List.copyOf(replacements);
    }

    /** The edit that takes this one back. */
    MadeEdit reversed() {
        return new MadeEdit(
                "Undo: " + name,
                replacements.stream().map(Replacement::reversed).toList());
    }

    /** The edit that makes this one again. */
    MadeEdit repeated() {
        return new MadeEdit("Redo: " + name, replacements);
    }

    MadeEdit without(Set<ThingId> ids) {
        return new MadeEdit(
                name,
                replacements.stream()
                        .filter(replacement -> !ids.contains(replacement.id()))
                        .toList());
    }
}
