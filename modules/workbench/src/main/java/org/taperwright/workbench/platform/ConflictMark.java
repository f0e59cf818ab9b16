package org.taperwright.workbench.platform;

import java.awt.Component;
import javax.swing.JButton;
import org.openide.awt.StatusLineElementProvider;
import org.openide.util.lookup.ServiceProvider;

/** In the status line, as long as nobody has said whose version stands: a button that asks again. */
@ServiceProvider(service = StatusLineElementProvider.class, position = 100)
public final class ConflictMark implements StatusLineElementProvider {
    private final JButton ask = new JButton("Two versions: choose…");

    /** Made by the platform. */
    public ConflictMark() {
        OpenConflict conflict = OpenConflict.get();
        ask.setName("conflict.open");
        ask.setToolTipText("Another program changed the same thing; nothing more is stored until you choose");
        ask.setVisible(conflict.open());
        ask.addActionListener(event -> conflict.ask());
        conflict.onChange(event -> ask.setVisible(conflict.open()));
    }

    @Override
    public Component getStatusLineElement() {
        return ask;
    }
}
