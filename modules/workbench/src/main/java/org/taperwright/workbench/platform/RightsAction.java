package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.windows.WindowManager;
import org.taperwright.library.store.Access;
import org.taperwright.library.store.Members;
import org.taperwright.library.store.ServerRoles;
import org.taperwright.library.store.ServerSettings;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.workbench.ui.PanelDialog;
import org.taperwright.workbench.ui.RightsPanel;

/** Shows who may look at the shared library and who may edit it, and lets its owner change that. */
@ActionID(category = "File", id = "org.taperwright.workbench.platform.RightsAction")
@ActionRegistration(displayName = "Who may use the library…")
@ActionReference(path = "Menu/File", position = 350)
public final class RightsAction implements ActionListener {
    @Override
    public void actionPerformed(ActionEvent chosen) {
        if (!DeskProvider.onServer()) {
            Notices.warn(
                    "The library is a file of your own",
                    "Who has the file has all that is in it. Rights are given in a library on a server.");
            return;
        }
        ServerSettings server = SharedLibrary.settings();
        JButton close = new JButton("Close");
        close.setName("rights.close");
        PanelDialog dialog = new PanelDialog(
                WindowManager.getDefault().getMainWindow(),
                "rightsDialog",
                "Who may use the library",
                new RightsPanel(
                        "lies in " + server.database() + " at " + server.host(), new OfServer(server), Aside.INSTANCE),
                List.of(close));
        dialog.closing(close);
        dialog.show();
    }

    /** The rights as the server holds them. */
    private record OfServer(ServerSettings server) implements RightsPanel.Rights {
        @Override
        public Members members() {
            return ServerRoles.members(server, SharedLibrary.password());
        }

        @Override
        public Optional<Fault> grant(String user, Access access) {
            return ServerRoles.grant(server, SharedLibrary.password(), user, access);
        }

        @Override
        public Optional<Fault> revoke(String user) {
            return ServerRoles.revoke(server, SharedLibrary.password(), user);
        }
    }
}
