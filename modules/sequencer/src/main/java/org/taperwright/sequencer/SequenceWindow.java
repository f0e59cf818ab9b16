package org.taperwright.sequencer;

import java.util.EnumSet;
import javax.swing.JComponent;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.util.NbPreferences;
import org.openide.windows.TopComponent;
import org.taperwright.library.store.ThingKind;
import org.taperwright.sequencer.ui.SequencePanel;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.platform.WorkbenchWindow;

/** The Sequence window: hosts {@link SequencePanel}. */
@TopComponent.Description(preferredID = "SequenceWindow", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "editor", openAtStartup = true, position = 500)
@ActionID(category = "Window", id = "org.taperwright.sequencer.SequenceWindow")
@ActionReference(path = "Menu/Window", position = 500)
@TopComponent.OpenActionRegistration(displayName = "Sequence", preferredID = "SequenceWindow")
public final class SequenceWindow extends WorkbenchWindow {
    /** Makes the window; the platform calls this. */
    public SequenceWindow() {
        super(
                "SequenceWindow",
                "Sequence",
                "A canal, and the steps that shape it",
                EnumSet.of(ThingKind.SEQUENCE, ThingKind.CANAL));
    }

    @Override
    protected JComponent content(Desk desk) {
        return new SequencePanel(desk, NbPreferences.forModule(SequenceWindow.class));
    }
}
