package org.taperwright.catalogue;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.catalogue.ui.motor.MotorsPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Motors window: hosts {@link MotorsPanel}. */
@TopComponent.Description(preferredID = "MotorsWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "lower", openAtStartup = false, position = 300)
@ActionID(category = "Window", id = "org.taperwright.catalogue.MotorsWindow")
@ActionReference(path = "Menu/Window", position = 250)
@TopComponent.OpenActionRegistration(displayName = "Motors", preferredID = "MotorsWindow")
public final class MotorsWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public MotorsWindow() {
        super(
                "MotorsWindow",
                "Motors",
                "A motor's ranges, and which instruments it can drive",
                EnumSet.of(ThingKind.MOTOR));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new MotorsPanel(desk);
    }
}
