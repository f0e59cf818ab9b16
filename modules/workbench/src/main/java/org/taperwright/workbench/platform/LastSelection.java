package org.taperwright.workbench.platform;

import java.util.Optional;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;
import org.openide.windows.WindowManager;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.Desk;

/**
 * Remembers from one use of the program to the next what was selected of each kind, so that no window opens empty. On a
 * first start the first thing of each kind is selected and the first comparison comes to the front.
 */
final class LastSelection {
    private final Desk desk;
    private final Preferences kept =
            NbPreferences.forModule(LastSelection.class).node("selected");

    LastSelection(Desk desk) {
        this.desk = desk;
    }

    /** Selects what was selected, and remembers from now on. */
    void restore() {
        boolean first = kept.get(ThingKind.COMPARISON.word(), "").isEmpty();
        for (ThingKind kind : ThingKind.values()) {
            remembered(kind).or(() -> firstOf(kind)).ifPresent(desk::select);
        }
        desk.onSelect(this::remember);
        if (first) {
            firstOf(ThingKind.COMPARISON)
                    .ifPresent(id ->
                            Cautions.whenRead(() -> WindowManager.getDefault().invokeWhenUIReady(() -> desk.open(id))));
        }
    }

    private Optional<ThingId> remembered(ThingKind kind) {
        String value = kept.get(kind.word(), "");
        return desk.snapshot().ofKind(kind).stream()
                .map(Entry::id)
                .filter(id -> id.value().equals(value))
                .findFirst();
    }

    private Optional<ThingId> firstOf(ThingKind kind) {
        return desk.snapshot().ofKind(kind).stream().map(Entry::id).findFirst();
    }

    private void remember(ThingId id) {
        desk.snapshot().entry(id).ifPresent(entry -> kept.put(entry.kind().word(), id.value()));
    }
}
