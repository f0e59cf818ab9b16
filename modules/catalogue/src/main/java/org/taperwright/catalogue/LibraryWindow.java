package org.taperwright.catalogue;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.catalogue.ui.LibraryPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Library window: hosts {@link LibraryPanel}. */
@TopComponent.Description(preferredID = "LibraryWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "shelf", openAtStartup = true, position = 100)
@ActionID(category = "Window", id = "org.taperwright.catalogue.LibraryWindow")
@ActionReference(path = "Menu/Window", position = 100)
@TopComponent.OpenActionRegistration(displayName = "Library", preferredID = "LibraryWindow")
public final class LibraryWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public LibraryWindow() {
        super("LibraryWindow", "Library", "Everything in the library, by kind", EnumSet.noneOf(ThingKind.class));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new LibraryPanel(desk);
    }
}
