package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.List;
import javax.swing.JButton;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.windows.WindowManager;
import org.taperwright.library.store.ConnectionTests;
import org.taperwright.workbench.ui.ConnectionPanel;
import org.taperwright.workbench.ui.PanelDialog;

/** Asks where the library lies: in a file of one's own, or on a server. What is chosen holds from the next start. */
@ActionID(category = "File", id = "org.taperwright.workbench.platform.ConnectionAction")
@ActionRegistration(displayName = "Where the library lies…")
@ActionReference(path = "Menu/File", position = 300)
public final class ConnectionAction implements ActionListener {
    @Override
    public void actionPerformed(ActionEvent chosen) {
        show();
    }

    static void show() {
        ConnectionPanel panel = new ConnectionPanel(
                SharedLibrary.settings(), SharedLibrary.chosen(), ConnectionTests::of, Aside.INSTANCE);
        JButton keep = new JButton("Use from the next start");
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
            boolean onServer = panel.onServer();
            var settings = panel.settings();
            char[] password = panel.password();
            dialog.close();
            Aside.INSTANCE.run(
                    () -> {
                        SharedLibrary.keep(onServer, settings, password);
                        return onServer;
                    },
                    server -> Notices.warn(
                            "The library opens there at the next start",
                            server ? settings.host() + ", " + settings.database() : "A file on this computer"));
        });
        dialog.show();
    }
}
