package org.taperwright.catalogue.ui;

import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import org.taperwright.catalogue.ui.exchange.Exporting;
import org.taperwright.catalogue.ui.past.HistoryPanel;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.Desk;

/** What can be done with any selected things, by menu and by key: open, rename, duplicate, export, see
 * its history, remove. */
final class ThingActions {
    private final JComponent on;
    private final Supplier<List<ThingId>> selection;
    private final JPopupMenu menu = new JPopupMenu();

    private ThingActions(JComponent on, Supplier<List<ThingId>> selection) {
        this.on = on;
        this.selection = selection;
    }

    /**
     * Puts menu and keys on a tree or table.
     *
     * @param selection the things selected at the moment
     * @param rename begins renaming the one thing selected
     */
    static void on(JComponent on, LibraryEdits edits, Desk desk, Supplier<List<ThingId>> selection, Runnable rename) {
        ThingActions actions = new ThingActions(on, selection);
        actions.add(
                "Open",
                KeyStroke.getKeyStroke("ENTER"),
                true,
                () -> desk.open(selection.get().get(0)));
        actions.add("Rename…", KeyStroke.getKeyStroke("F2"), true, rename);
        actions.add(
                "Duplicate",
                KeyStroke.getKeyStroke(KeyEvent.VK_D, InputEvent.CTRL_DOWN_MASK),
                false,
                () -> edits.duplicate(selection.get()));
        actions.add(
                "Export…",
                KeyStroke.getKeyStroke("control E"),
                false,
                () -> new Exporting(desk, on).ask(selection.get()));
        actions.add(
                "History…",
                KeyStroke.getKeyStroke("control H"),
                true,
                () -> new HistoryPanel(desk, selection.get().get(0)).show(on));
        actions.menu.addSeparator();
        actions.add(
                "Remove from the library",
                KeyStroke.getKeyStroke("DELETE"),
                false,
                () -> edits.remove(selection.get()));
        on.setComponentPopupMenu(actions.menu);
    }

    private void add(String words, KeyStroke key, boolean oneOnly, Runnable action) {
        AbstractAction guarded = new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                int count = selection.get().size();
                if (oneOnly ? count == 1 : count > 0) {
                    action.run();
                }
            }
        };
        JMenuItem item = new JMenuItem(guarded);
        item.setName(on.getName() + "." + words);
        item.setAccelerator(key);
        menu.add(item);
        menu.addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
                int count = selection.get().size();
                guarded.setEnabled(oneOnly ? count == 1 : count > 0);
            }

            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {
                guarded.setEnabled(true);
            }

            @Override
            public void popupMenuCanceled(PopupMenuEvent event) {
                guarded.setEnabled(true);
            }
        });
        if (on.getInputMap(JComponent.WHEN_FOCUSED).get(key) == null || !words.equals("Open")) {
            on.getInputMap(JComponent.WHEN_FOCUSED).put(key, "thing." + words);
            on.getActionMap().put("thing." + words, guarded);
        }
    }
}
