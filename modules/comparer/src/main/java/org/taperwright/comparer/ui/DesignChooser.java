package org.taperwright.comparer.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.workbench.ui.Spacing;
import org.taperwright.workbench.ui.TextChanges;

/** A list of the library's designs from which several are chosen, narrowed as one types. */
final class DesignChooser extends JPanel {
    private final List<Entry> designs;
    private final DefaultListModel<String> names = new DefaultListModel<>();
    private final JList<String> list = new JList<>(names);
    private final JTextField filter = new JTextField();
    private List<Entry> shown = List.of();

    DesignChooser(Snapshot snapshot, Set<ThingId> left) {
        super(new BorderLayout(0, Spacing.NEAR));
        designs = snapshot.ofKind(ThingKind.DESIGN).stream()
                .filter(entry -> !left.contains(entry.id()))
                .toList();
        filter.setName("chooser.filter");
        filter.getAccessibleContext().setAccessibleName("Filter designs");
        filter.putClientProperty("JTextField.placeholderText", "Filter designs");
        list.setName("chooser.list");
        list.getAccessibleContext().setAccessibleName("Designs");
        list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        list.setVisibleRowCount(14);
        JScrollPane scroll = new JScrollPane(list);
        scroll.setPreferredSize(new Dimension(360, scroll.getPreferredSize().height));
        add(filter, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        add(new JLabel("Hold Ctrl to choose several."), BorderLayout.SOUTH);
        TextChanges.each(filter, this::narrow);
        narrow();
    }

    /** Asks for designs; empty when a person changes their mind. */
    static List<Member> ask(Component over, String title, Snapshot snapshot, Set<ThingId> left) {
        DesignChooser chooser = new DesignChooser(snapshot, left);
        int answer = JOptionPane.showConfirmDialog(
                over, chooser, title, JOptionPane.OK_CANCEL_OPTION, JOptionPane.PLAIN_MESSAGE);
        return answer == JOptionPane.OK_OPTION ? chooser.chosen() : List.of();
    }

    /** The designs chosen at the moment. */
    List<Member> chosen() {
        List<Member> chosen = new ArrayList<>();
        for (int index : list.getSelectedIndices()) {
            Entry entry = shown.get(index);
            chosen.add(new Member(entry.id(), java.util.Optional.of((Design) entry.thing())));
        }
        return chosen;
    }

    private void narrow() {
        String wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        shown = designs.stream()
                .filter(entry -> entry.name().toLowerCase(Locale.ROOT).contains(wanted))
                .toList();
        names.clear();
        names.addAll(shown.stream().map(Entry::name).toList());
    }
}
