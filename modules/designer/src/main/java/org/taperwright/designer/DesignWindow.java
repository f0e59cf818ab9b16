package org.taperwright.designer;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.designer.ui.DesignPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Design window: hosts {@link DesignPanel}. */
@TopComponent.Description(preferredID = "DesignWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 300)
@ActionID(category = "Window", id = "org.taperwright.designer.DesignWindow")
@ActionReference(path = "Menu/Window", position = 300)
@TopComponent.OpenActionRegistration(displayName = "Design", preferredID = "DesignWindow")
public final class DesignWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public DesignWindow() {
        super("DesignWindow", "Design", "Define one design and see what follows from it", EnumSet.of(ThingKind.DESIGN));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new DesignPanel(desk);
    }
}
