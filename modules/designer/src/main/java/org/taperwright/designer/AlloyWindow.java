package org.taperwright.designer;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.designer.ui.AlloyPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Alloy window: hosts {@link AlloyPanel}. */
@TopComponent.Description(preferredID = "AlloyWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 350)
@ActionID(category = "Window", id = "org.taperwright.designer.AlloyWindow")
@ActionReference(path = "Menu/Window", position = 350)
@TopComponent.OpenActionRegistration(displayName = "Alloy", preferredID = "AlloyWindow")
public final class AlloyWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public AlloyWindow() {
        super(
                "AlloyWindow",
                "Alloy",
                "See what an alloy of the library's own is known by and which designs are made of it",
                EnumSet.of(ThingKind.ALLOY));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new AlloyPanel(desk);
    }
}
