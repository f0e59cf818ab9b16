package org.taperwright.workbench.platform;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.openide.filesystems.FileObject;
import org.openide.filesystems.FileUtil;
import org.openide.windows.WindowManager;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;

/** Brings the window that works on a thing's kind to the front, opening it if it was closed. */
final class WindowOpener implements Consumer<ThingId> {
    private final Supplier<Snapshot> library;

    WindowOpener(Supplier<Snapshot> library) {
        this.library = library;
    }

    @Override
    public void accept(ThingId id) {
        Optional<ThingKind> kind = library.get().entry(id).map(Entry::kind);
        kind.flatMap(WindowOpener::windowFor).ifPresent(window -> {
            window.open();
            window.requestActive();
        });
    }

    /** Every window any module registers has a file here, so a new window needs no list of its own. */
    private static Optional<WorkbenchWindow> windowFor(ThingKind kind) {
        FileObject registered = FileUtil.getConfigFile("Windows2/Components");
        return Stream.of(registered.getChildren())
                .map(FileObject::getName)
                .sorted()
                .map(WindowManager.getDefault()::findTopComponent)
                .filter(WorkbenchWindow.class::isInstance)
                .map(WorkbenchWindow.class::cast)
                .filter(window -> window.kinds().contains(kind))
                .findFirst();
    }
}
