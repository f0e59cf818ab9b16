package org.taperwright.comparer;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.windows.TopComponent;
import org.taperwright.comparer.ui.ComparisonPanel;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Comparison window: hosts {@link ComparisonPanel}. */
@TopComponent.Description(preferredID = "ComparisonWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 400)
@ActionID(category = "Window", id = "org.taperwright.comparer.ComparisonWindow")
@ActionReference(path = "Menu/Window", position = 400)
@TopComponent.OpenActionRegistration(displayName = "Comparison", preferredID = "ComparisonWindow")
public final class ComparisonWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public ComparisonWindow() {
        super(
                "ComparisonWindow",
                "Comparison",
                "Two to six designs side by side, one of them the datum",
                EnumSet.of(ThingKind.COMPARISON));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new ComparisonPanel(desk);
    }
}
