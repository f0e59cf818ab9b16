package org.taperwright.workbench.platform;

import java.util.List;
import javax.swing.JButton;
import org.openide.windows.WindowManager;
import org.taperwright.library.exchange.JsonForms;
import org.taperwright.library.store.LibraryCheck;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.RefusalPanel;

/** What a person can do about a library that does not open: restore a backup of a file, or mend the way to a server. */
final class Refusal {
    private Refusal() {}

    static void show(String reason, boolean onServer) {
        if (onServer) {
            ConnectionAction.show("The shared library does not open. " + reason);
            return;
        }
        JButton close = new JButton("Close");
        close.setName("refusal.close");
        PanelDialog[] dialog = new PanelDialog[1];
        RefusalPanel panel = new RefusalPanel(
                "The library does not open. " + reason,
                () -> LibraryCheck.of(LibraryPlace.file(), JsonForms.forStore()),
                DeskProvider.get().backups(),
                Aside.INSTANCE,
                done -> {
                    dialog[0].close();
                    DeskProvider.get().open();
                });
        dialog[0] = new PanelDialog(
                WindowManager.getDefault().getMainWindow(),
                "refusalDialog",
                "The library does not open",
                panel,
                List.of(close));
        dialog[0].closing(close);
        dialog[0].show();
    }
}
