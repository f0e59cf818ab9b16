package org.taperwright.workbench.platform;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;
import org.openide.windows.WindowManager;
import org.taperwright.library.exchange.DemoLibrary;
import org.taperwright.library.exchange.FileFault;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.history.EditHistory;
import org.taperwright.library.history.NewLibrary;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.BackupPolicy;
import org.taperwright.library.store.BackupResult;
import org.taperwright.library.store.Backups;
import org.taperwright.library.store.LibraryStore;
import org.taperwright.library.store.OpenResult;
import org.taperwright.library.store.TimedBackups;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.desk.LibraryDesk;

/**
 * Where windows get the one desk of the program, once the library is open. The library is opened off the event thread,
 * filled with the demo library if it is new, and closed when the program ends.
 */
@ServiceProvider(service = DeskProvider.class)
public final class DeskProvider {
    private static final Duration LOOK = Duration.ofSeconds(2);
    private static final Duration FIRST_BACKUP = Duration.ofMinutes(2);
    private static final Duration BACKUP = Duration.ofMinutes(30);

    private final CompletableFuture<Desk> desk = new CompletableFuture<>();
    private final CompletableFuture<String> refusal = new CompletableFuture<>();
    private final ExecutorService disk = Executors.newSingleThreadExecutor(new NamedThreads("library"));
    private final ExecutorService workers = Executors.newFixedThreadPool(
            Math.max(2, Runtime.getRuntime().availableProcessors()), new NamedThreads("work"));
    private final ScheduledExecutorService times =
            Executors.newSingleThreadScheduledExecutor(new NamedThreads("watch"));
    private Optional<EditHistory> history = Optional.empty();

    /** The one provider of the running program. */
    public static DeskProvider get() {
        return Lookup.getDefault().lookup(DeskProvider.class);
    }

    /** Calls back on the event thread when the library is open; at once if it is. */
    public void whenOpen(Consumer<Desk> user) {
        desk.thenAcceptAsync(user, EventThread.INSTANCE);
    }

    /** Calls back on the event thread, with the reason in plain words, if the library cannot be opened. */
    public void whenRefused(Consumer<String> user) {
        refusal.thenAcceptAsync(user, EventThread.INSTANCE);
    }

    /** The library's backups, which a library that cannot be opened is restored from. */
    public Backups backups() {
        Path library = LibraryPlace.file().toAbsolutePath();
        return new Backups(library, library.resolveSibling("backups"), JsonForms.forStore(), BackupPolicy.USUAL);
    }

    private static void tellIfRefused(BackupResult result) {
        if (result instanceof BackupResult.Refused refused) {
            Notices.warn("The library was not backed up", refused.fault().sentence());
        }
    }

    /** Whether the library is open. */
    boolean isOpen() {
        return desk.isDone();
    }

    /**
     * Begins to open the library; returns at once. One on a server waits for the main window: before it shows, the platform's
     * keyring does not know all keepers of passwords, and none of them could ask for leave.
     */
    void open() {
        if (onServer()) {
            WindowManager.getDefault().invokeWhenUIReady(() -> disk.execute(this::openHere));
        } else {
            disk.execute(this::openHere);
        }
    }

    /** Whether the library is the one on a server. */
    static boolean onServer() {
        return SharedLibrary.chosen() && !LibraryPlace.named();
    }

    private void openHere() {
        boolean onServer = onServer();
        OpenResult result = onServer
                ? LibraryStore.open(SharedLibrary.settings(), SharedLibrary.password(), JsonForms.forStore())
                : LibraryStore.open(LibraryPlace.file(), JsonForms.forStore());
        if (result instanceof OpenResult.Opened opened) {
            String who = onServer ? SharedLibrary.settings().user() : System.getProperty("user.name", "");
            if (!onServer) {
                seed(opened.store(), who);
            }
            EditHistory opening = new EditHistory(opened.store(), who, disk, Clock.systemUTC());
            opening.unreadable()
                    .forEach(thing -> Notices.warn(
                            "A thing in the library could not be read",
                            thing.id().value()));
            if (opening.access() == Access.READER) {
                Notices.warn(
                        "You may look at this library",
                        "Its owner can let you edit it: File, Who may use the library.");
            }
            opening.onStoring(new StoringWatch(opening));
            opening.watch(times, LOOK);
            if (!onServer) {
                new TimedBackups(
                        backups(), FIRST_BACKUP, BACKUP, times, Clock.systemUTC(), DeskProvider::tellIfRefused);
            }
            keep(opening);
            EventThread.INSTANCE.execute(() -> lay(opening));
        } else if (result instanceof OpenResult.Refused refused) {
            String reason = refused.fault().sentence();
            refusal.complete(reason);
            WindowManager.getDefault().invokeWhenUIReady(() -> Refusal.show(reason, onServer));
        }
    }

    /** Fills a new library of one's own; one that is shared begins empty. */
    private static void seed(LibraryStore store, String who) {
        List<FileFault> faults =
                NewLibrary.seed(store, who, DemoLibrary.load(Lookup.getDefault().lookup(ClassLoader.class)));
        faults.forEach(fault -> Notices.warn("The demo library was left out", fault.sentence()));
    }

    /** Makes the desk, on the event thread, with what was selected when the program was last used. */
    private void lay(EditHistory opening) {
        LibraryDesk laid = new LibraryDesk(
                opening, workers, EventThread.INSTANCE, new StatusLineWork(), new WindowOpener(opening::snapshot));
        RefusalPlace.on(laid);
        new LastSelection(laid).restore();
        desk.complete(laid);
    }

    private synchronized void keep(EditHistory opened) {
        history = Optional.of(opened);
    }

    /** Stores what still waits and closes the library. */
    synchronized void close() {
        times.shutdown();
        history.ifPresent(EditHistory::close);
        history = Optional.empty();
    }
}
