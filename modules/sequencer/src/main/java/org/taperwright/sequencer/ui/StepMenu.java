package org.taperwright.sequencer.ui;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.KeyStroke;

/** What can be done with steps, as menus; each entry shows the key that does the same in the lanes. */
final class StepMenu {
    private StepMenu() {}

    /** The kinds of step that are no instrument's work. */
    static JPopupMenu between(SequenceKeys.Commands commands) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("step.betweenMenu");
        addKinds(menu, commands);
        return menu;
    }

    /** Everything. */
    static JPopupMenu all(SequenceKeys.Commands commands) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("sequence.menu");
        menu.add(item("Add instrument", "INSERT", commands::insertSelected));
        addKinds(menu, commands);
        menu.addSeparator();
        menu.add(item("Earlier", "alt UP", () -> commands.moveBy(-1)));
        menu.add(item("Later", "alt DOWN", () -> commands.moveBy(1)));
        menu.add(item("Remove", "DELETE", commands::removeSelected));
        return menu;
    }

    private static void addKinds(JPopupMenu menu, SequenceKeys.Commands commands) {
        for (BetweenKind kind : BetweenKind.values()) {
            JMenuItem item = item(kind.words(), String.valueOf(kind.key()), () -> commands.insertBetween(kind));
            item.setToolTipText(kind.meaning());
            menu.add(item);
        }
    }

    private static JMenuItem item(String words, String key, Runnable command) {
        JMenuItem item = new JMenuItem(new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                command.run();
            }
        });
        item.setName("menu." + words);
        item.setAccelerator(KeyStroke.getKeyStroke(key));
        return item;
    }
}
