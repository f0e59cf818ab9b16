package org.taperwright.catalogue.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPopupMenu;
import org.taperwright.library.history.Change;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.InstrumentFilter;
import org.taperwright.library.store.SavedFilter;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.api.Desk;

/** A button whose menu keeps the present filter in the library under a name, shows kept ones, and removes them. */
final class SavedFilterButton extends JButton {
    private final transient Desk desk;
    private final transient Supplier<InstrumentFilter> now;
    private final transient Consumer<InstrumentFilter> show;

    SavedFilterButton(Desk desk, Supplier<InstrumentFilter> now, Consumer<InstrumentFilter> show) {
        super("Saved");
        this.desk = desk;
        this.now = now;
        this.show = show;
        setName("filter.saved");
        setToolTipText("Filters kept by name");
        addActionListener(event -> menu().show(this, 0, getHeight()));
    }

    /** The menu as it stands. */
    JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        List<Entry> saved = desk.snapshot().ofKind(ThingKind.FILTER);
        for (Entry entry : saved) {
            JMenuItem item = menu.add(entry.name());
            item.setName("filter.saved." + entry.name());
            item.addActionListener(event -> show.accept(((SavedFilter) entry.thing()).filter()));
        }
        if (!saved.isEmpty()) {
            menu.addSeparator();
        }
        JMenuItem keep = menu.add("Save this filter…");
        keep.setName("filter.save");
        keep.setEnabled(!RowMatch.all(now.get()));
        keep.addActionListener(event -> askForName());
        if (!saved.isEmpty()) {
            JMenu remove = new JMenu("Remove");
            saved.forEach(entry -> remove.add(entry.name())
                    .addActionListener(event ->
                            desk.edit("Remove filter " + entry.name(), List.of(new Change.Remove(entry.id())))));
            menu.add(remove);
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
                now.get().words());
        if (name != null) {
            keep(name.toString().strip());
        }
    }

    /** Keeps the present filter; one of the same name is replaced. */
    void keep(String name) {
        Optional<ThingId> old = desk.snapshot().ofKind(ThingKind.FILTER).stream()
                .filter(entry -> entry.name().equals(name))
                .map(Entry::id)
                .findFirst();
        SavedFilter kept = new SavedFilter(name, now.get(), "");
        desk.edit("Save filter " + name, List.of(new Change.Put(old.orElseGet(ThingId::fresh), kept)));
    }
}
