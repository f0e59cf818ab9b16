package org.taperwright.library.history;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.taperwright.mechanics.design.ThingId;

/**
 * The edits made in this session and how far they are taken back. Edits hold immutable records, which the library's
 * revisions hold too, so a thousand steps cost little. Not thread-safe.
 */
final class UndoWalk {
    private static final int MOST = 1000;

    private final Deque<MadeEdit> made = new ArrayDeque<>();
    private final Deque<MadeEdit> takenBack = new ArrayDeque<>();

    /** A new edit: what was taken back can no longer be made again. */
    void add(MadeEdit edit) {
        takenBack.clear();
        made.push(edit);
        if (made.size() > MOST) {
            made.removeLast();
        }
    }

    Optional<String> nextUndo() {
        return Optional.ofNullable(made.peek()).map(MadeEdit::name);
    }

    Optional<String> nextRedo() {
        return Optional.ofNullable(takenBack.peek()).map(MadeEdit::name);
    }

    /** Steps back over the last edit and returns it. */
    Optional<MadeEdit> stepBack() {
        Optional<MadeEdit> edit = Optional.ofNullable(made.poll());
        edit.ifPresent(takenBack::push);
        return edit;
    }

    /** Steps forward over the edit last taken back and returns it. */
    Optional<MadeEdit> stepForward() {
        Optional<MadeEdit> edit = Optional.ofNullable(takenBack.poll());
        edit.ifPresent(made::push);
        return edit;
    }

    /** Leaves out things that others changed since: walking over them would silently put back older records. */
    void forget(Set<ThingId> ids) {
        forget(made, ids);
        forget(takenBack, ids);
    }

    private static void forget(Deque<MadeEdit> edits, Set<ThingId> ids) {
        List<MadeEdit> kept = edits.stream()
                .map(edit -> edit.without(ids))
                .filter(edit -> !edit.replacements().isEmpty())
                .toList();
        edits.clear();
        edits.addAll(kept);
    }
}
