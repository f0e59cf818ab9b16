package org.taperwright.catalogue;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbPreferences;
import org.openide.windows.WindowManager;
import org.taperwright.catalogue.ui.exchange.ImportPanel;
import org.taperwright.workbench.platform.DeskProvider;

/** Brings a table or a bundle into the library. */
@ActionID(category = "File", id = "org.taperwright.catalogue.ImportAction")
@ActionRegistration(displayName = "Import table or bundle…")
@ActionReference(path = "Menu/File", position = 100)
public final class ImportAction implements ActionListener {
    @Override
    public void actionPerformed(ActionEvent chosen) {
        DeskProvider.get()
                .whenOpen(desk -> new ImportPanel(desk, NbPreferences.forModule(ImportAction.class))
                        .show(WindowManager.getDefault().getMainWindow()));
    }
}
