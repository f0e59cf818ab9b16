package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;

/** Takes up again the question whose version stands; can be chosen only while it is open. */
@ActionID(category = "Edit", id = "org.taperwright.workbench.platform.ConflictAction")
@ActionRegistration(displayName = "Choose between two versions…", lazy = false)
@ActionReference(path = "Menu/Edit", position = 3000)
public final class ConflictAction extends AbstractAction {
    /** Made by the platform. */
    public ConflictAction() {
        super("Choose between two versions…");
        OpenConflict conflict = OpenConflict.get();
        setEnabled(conflict.open());
        conflict.onChange(event -> setEnabled(conflict.open()));
    }

    @Override
    public void actionPerformed(ActionEvent chosen) {
        OpenConflict.get().ask();
    }
}
