package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;

/** A button whose menu keeps the present filter under a name, shows kept ones, and forgets them. */
final class SavedFilterButton extends JButton {
    private final transient SavedFilters saved;
    private final transient Supplier<InstrumentFilter> now;
    private final transient Consumer<InstrumentFilter> show;

    SavedFilterButton(SavedFilters saved, Supplier<InstrumentFilter> now, Consumer<InstrumentFilter> show) {
        super("Saved");
        this.saved = saved;
        this.now = now;
        this.show = show;
        setName("filter.saved");
        setToolTipText("Filters kept by name");
        addActionListener(event -> menu().show(this, 0, getHeight()));
    }

    /** The menu as it stands. */
    JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        List<String> names = saved.names();
        for (String name : names) {
            JMenuItem item = menu.add(name);
            item.setName("filter.saved." + name);
            item.addActionListener(event -> saved.find(name).ifPresent(show));
        }
        if (!names.isEmpty()) {
            menu.addSeparator();
        }
        JMenuItem keep = menu.add("Save this filter…");
        keep.setName("filter.save");
        keep.setEnabled(!now.get().none());
        keep.addActionListener(event -> askForName());
        if (!names.isEmpty()) {
            JMenu forget = new JMenu("Forget");
            names.forEach(name -> forget.add(name).addActionListener(event -> saved.forget(name)));
            menu.add(forget);
        }
        return menu;
    }

    private void askForName() {
        Object name = JOptionPane.showInputDialog(
                this,
                "Name of the filter",
                "Save filter",
                JOptionPane.PLAIN_MESSAGE,
                null,
                null,
                now.get().text());
        if (name != null) {
            saved.keep(name.toString(), now.get());
        }
    }
}
