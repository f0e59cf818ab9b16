package org.taperwright.workbench.platform;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.awt.DynamicMenuContent;

/** The two themes in the View menu, the one that shows marked. */
@ActionID(category = "View", id = "org.taperwright.workbench.platform.ThemeMenu")
@ActionRegistration(displayName = "Theme", lazy = false)
@ActionReference(path = "Menu/View", position = 100)
public final class ThemeMenu extends AbstractAction implements DynamicMenuContent {
    private final JMenuItem light = item("Light theme", Theme.LIGHT);
    private final JMenuItem dark = item("Dark theme", Theme.DARK);

    @Override
    public JComponent[] getMenuPresenters() {
        light.setSelected(Theme.LIGHT.shows());
        dark.setSelected(Theme.DARK.shows());
        return new JComponent[] {light, dark};
    }

    /** The same two items again: an item exchanged while its menu is open would swallow the click. */
    @Override
    public JComponent[] synchMenuPresenters(JComponent[] shown) {
        return getMenuPresenters();
    }

    private static JMenuItem item(String words, Theme theme) {
        JMenuItem item = new JRadioButtonMenuItem(words);
        item.addActionListener(chosen -> theme.show());
        return item;
    }

    @Override
    public void actionPerformed(ActionEvent chosen) {
        // the two items act
    }
}
