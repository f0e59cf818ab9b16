package org.taperwright.library.history;

import java.util.ArrayList;
import java.util.List;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.FormDifference;
import org.taperwright.library.store.Content;
import org.taperwright.library.store.Revision;

/**
 * A step in a thing's past and what it changed.
 *
 * @param revision the step: its number, when, who, the edit's name, and the thing as it then was
 * @param changes the fields in which the thing then differed from the step before; none for the first step, where the
 *     thing was taken out or brought back, and where either form can no longer be read
 */
public record PastRevision(Revision revision, List<FieldChange> changes) {
    public PastRevision {
        changes = List.copyOf(changes);
    }

    /** Steps that follow each other, oldest first, each with what it changed. */
    static List<PastRevision> of(List<Revision> past) {
        List<PastRevision> steps = new ArrayList<>();
        for (int i = 0; i < past.size(); i++) {
            steps.add(new PastRevision(past.get(i), i == 0 ? List.of() : between(past.get(i - 1), past.get(i))));
        }
        return steps;
    }

    /** The fields in which a thing differs between any two steps of its past; none where it is not there to compare. */
    public static List<FieldChange> between(Revision before, Revision after) {
        return before.content() instanceof Content.Present was && after.content() instanceof Content.Present is
                ? FormDifference.between(was.thing(), is.thing())
                : List.of();
    }
}
