package org.taperwright.catalogue.ui;

import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import org.taperwright.workbench.api.BareDesk;
import org.taperwright.workbench.ui.Shots;

/** Finds and drives parts of a panel in a test. */
public final class Panels {
    private Panels() {}

    /** The component of that name. */
    public static Component find(Container in, String name) {
        return search(in, name).orElseThrow(() -> new AssertionError("no component " + name));
    }

    private static Optional<Component> search(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (name.equals(child.getName())) {
                return Optional.of(child);
            }
            Optional<Component> found = child instanceof Container inner ? search(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Does something on the event thread and waits for what follows from it. */
    public static void perform(BareDesk desk, Runnable action) throws InterruptedException {
        Shots.onEventThread(() -> {
            action.run();
            return Optional.empty();
        });
        desk.settle();
        desk.settle();
    }
}
