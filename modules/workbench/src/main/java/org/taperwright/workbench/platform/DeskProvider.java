package org.taperwright.workbench.platform;

import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.openide.util.Lookup;
import org.openide.util.lookup.ServiceProvider;
import org.taperwright.workbench.api.Desk;

/** Where windows get the one desk of the program, once the library is open. */
@ServiceProvider(service = DeskProvider.class)
public final class DeskProvider {
    private final CompletableFuture<Desk> desk = new CompletableFuture<>();

    /** The one provider of the running program. */
    public static DeskProvider get() {
        return Lookup.getDefault().lookup(DeskProvider.class);
    }

    /** Calls back on the event thread when the library is open; at once if it is. */
    public void whenOpen(Consumer<Desk> user) {
        desk.thenAcceptAsync(user, SwingUtilities::invokeLater);
    }
}
