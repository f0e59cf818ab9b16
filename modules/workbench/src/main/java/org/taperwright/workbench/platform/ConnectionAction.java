package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.List;
import javax.swing.JButton;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.windows.WindowManager;
import org.taperwright.library.store.ConnectionTest;
import org.taperwright.library.store.ConnectionTests;
import org.taperwright.library.store.Password;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.workbench.ui.ConnectionPanel;
import org.taperwright.workbench.ui.PanelDialog;

/**
 * Asks where the library lies: in a file of one's own, or on a server. What is chosen holds from the next start, or at once
 * where no library is open.
 */
@ActionID(category = "File", id = "org.taperwright.workbench.platform.ConnectionAction")
@ActionRegistration(displayName = "Where the library lies…")
@ActionReference(path = "Menu/File", position = 300)
public final class ConnectionAction implements ActionListener {
    @Override
    public void actionPerformed(ActionEvent chosen) {
        show("");
    }

    /** Asks, saying first why. */
    static void show(String remark) {
        boolean open = DeskProvider.get().isOpen();
        ConnectionPanel panel = new ConnectionPanel(
                SharedLibrary.settings(), SharedLibrary.chosen(), ConnectionAction::tested, Aside.INSTANCE);
        panel.remark(remark);
        JButton keep = new JButton(open ? "Use from the next start" : "Open it");
        keep.setName("connection.keep");
        JButton cancel = new JButton("Cancel");
        PanelDialog dialog = new PanelDialog(
                WindowManager.getDefault().getMainWindow(),
                "connectionDialog",
                "Where the library lies",
                panel,
                List.of(keep, cancel));
        dialog.closing(cancel);
        keep.addActionListener(event -> {
            if (!panel.faults().isEmpty()) {
                panel.say(panel.faults());
                return;
            }
            Chosen chosen = new Chosen(panel.onServer(), panel.settings(), panel.password());
            dialog.close();
            Aside.INSTANCE.run(
                    () -> SharedLibrary.keep(chosen.onServer(), chosen.settings(), chosen.password()), kept -> {
                        if (!kept) {
                            Notices.warn(
                                    "The password is not kept",
                                    "This computer's keyring did not take it. It holds until Taperwright ends; at the next "
                                            + "start it is asked for again.");
                        }
                        if (open) {
                            tell(chosen);
                        } else {
                            DeskProvider.get().open();
                        }
                    });
        });
        dialog.show();
    }

    /** Where the library is to lie. */
    private record Chosen(boolean onServer, ServerSettings settings, char[] password) {}

    private static void tell(Chosen chosen) {
        Notices.warn(
                "The library opens there at the next start",
                chosen.onServer()
                        ? chosen.settings().database() + " at "
                                + chosen.settings().host()
                        : "A file on this computer");
    }

    /** Tries with the password entered, else with the one that is kept for that user there. */
    private static ConnectionTest tested(ServerSettings settings, Password entered) {
        boolean blank = entered.letters().length == 0;
        return ConnectionTests.of(settings, blank ? SharedLibrary.password(settings) : entered);
    }
}
