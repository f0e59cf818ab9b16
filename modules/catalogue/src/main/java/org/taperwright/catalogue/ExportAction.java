package org.taperwright.catalogue;

import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.util.List;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.windows.WindowManager;
import org.taperwright.catalogue.ui.exchange.Exporting;
import org.taperwright.workbench.platform.DeskProvider;

/** Writes the whole library into a file. */
@ActionID(category = "File", id = "org.taperwright.catalogue.ExportAction")
@ActionRegistration(displayName = "Export everything…")
@ActionReference(path = "Menu/File", position = 200)
public final class ExportAction implements ActionListener {
    @Override
    public void actionPerformed(ActionEvent chosen) {
        DeskProvider.get()
                .whenOpen(desk -> new Exporting(desk, WindowManager.getDefault().getMainWindow())
                        .ask(List.copyOf(desk.snapshot().entries().keySet())));
    }
}
