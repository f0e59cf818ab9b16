package org.taperwright.comparer.ui;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** Name, datum, a button to add designs, and a word on whether the numbers are current. */
final class ComparisonHeader extends JPanel {
    private static final int NAME_COLUMNS = 24;

    private final NameField name = new NameField("comparison.name", "Name of the comparison");
    private final ChoiceField<Member> datum = new ChoiceField<>("comparison.datum", "Datum", List.of(), Member::name);
    private final JButton add = new JButton("Add design…");
    private final JLabel state = new JLabel(" ");

    ComparisonHeader(Consumer<String> rename, Consumer<Member> makeDatum, Runnable addDesigns) {
        super(new ShrinkingRow(Spacing.NEAR));
        setOpaque(false);
        name.onCommit(rename);
        name.setColumns(NAME_COLUMNS);
        datum.onCommit(makeDatum);
        datum.setToolTipText("The design that every ratio is taken against");
        add.setName("comparison.add");
        add.addActionListener(event -> addDesigns.run());
        state.setName("comparison.state");
        state.setForeground(Ink.unusual());
        JLabel datumLabel = new JLabel("Datum");
        datumLabel.setLabelFor(datum);
        add(name);
        add(datumLabel);
        add(datum);
        add(add);
        add(state);
    }

    /** Shows a comparison. */
    void show(SavedComparison comparison, List<Member> members) {
        name.setValue(comparison.name());
        datum.setChoices(members);
        members.stream()
                .filter(member -> member.id().equals(comparison.datum()))
                .forEach(datum::setValue);
        boolean room = members.size() < ComparisonEdits.MOST;
        add.setEnabled(room);
        add.setToolTipText(room ? "Add designs from the library" : "A comparison holds at most six designs");
    }

    /** Says in a few words what the numbers are worth: blank when they are current. */
    void say(String words) {
        state.setText(words.isEmpty() ? " " : words);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (state != null) {
            state.setForeground(Ink.unusual());
        }
    }
}
