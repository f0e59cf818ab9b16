package org.taperwright.workbench.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.Change;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.instrument.Window;

/** A desk over a real library file, everything on the test's own thread. */
public final class DeskOnDisk implements AutoCloseable {
    /** The motor that the tests edit. */
    public static final ThingId MOTOR = new ThingId("motor-1");

    private final EditHistory history;
    private final List<ThingId> opened = new ArrayList<>();
    private final LibraryDesk desk;

    public DeskOnDisk(Path folder) {
        OpenResult result = LibraryStore.open(folder.resolve("library.sqlite"), JsonForms.forStore());
        if (!(result instanceof OpenResult.Opened store)) {
            throw new IllegalStateException("the library did not open: " + result);
        }
        history = new EditHistory(store.store(), "tester", Runnable::run, Clock.systemUTC());
        desk = new LibraryDesk(history, Runnable::run, Runnable::run, WorkDisplay.NONE, opened::add);
    }

    public LibraryDesk desk() {
        return desk;
    }

    /** What was brought to the front, in order. */
    public List<ThingId> opened() {
        return opened;
    }

    /** A motor of that name. */
    public static Motor motor(String name) {
        return new Motor(
                name, "Invented Works", new Window(200, 1000), new Window(2, 40), Optional.empty(), true, false, "");
    }

    /** The edit that gives the motor that name. */
    public static List<Change> naming(String name) {
        return List.of(new Change.Put(MOTOR, motor(name)));
    }

    @Override
    public void close() {
        history.close();
    }
}
