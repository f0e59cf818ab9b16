package org.taperwright.kit;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.kit.ui.KitPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Kit window: hosts {@link KitPanel}. */
@TopComponent.Description(preferredID = "KitWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 600)
@ActionID(category = "Window", id = "org.taperwright.kit.KitWindow")
@ActionReference(path = "Menu/Window", position = 600)
@TopComponent.OpenActionRegistration(displayName = "Kit", preferredID = "KitWindow")
public final class KitWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public KitWindow() {
        super(
                "KitWindow",
                "Kit",
                "The pieces of a kit: uses, what to discard and to order, which sequences it can serve",
                EnumSet.of(ThingKind.KIT));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new KitPanel(desk);
    }
}
