package org.taperwright.catalogue;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.util.NbPreferences;
import org.openide.windows.TopComponent;
import org.taperwright.catalogue.ui.InstrumentsPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Instruments window: hosts {@link InstrumentsPanel}. */
@TopComponent.Description(preferredID = "InstrumentsWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "lower", openAtStartup = true, position = 200)
@ActionID(category = "Window", id = "org.taperwright.catalogue.InstrumentsWindow")
@ActionReference(path = "Menu/Window", position = 200)
@TopComponent.OpenActionRegistration(displayName = "Instruments", preferredID = "InstrumentsWindow")
public final class InstrumentsWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public InstrumentsWindow() {
        super(
                "InstrumentsWindow",
                "Instruments",
                "All instruments as a table: filter, enter, drag into a sequence",
                EnumSet.of(ThingKind.INSTRUMENT, ThingKind.FILTER));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new InstrumentsPanel(desk, NbPreferences.forModule(InstrumentsWindow.class));
    }
}
