package org.taperwright.kit.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.kit.Kit;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** Which kit is shown, its name, purpose and motor. */
final class KitHeader extends JPanel {
    private static final int NAME_COLUMNS = 16;
    private static final int PURPOSE_COLUMNS = 26;

    private final ChoiceField<Entry> kits = new ChoiceField<>("kit.choice", "Kit", List.of(), Entry::name);
    private final NameField name = new NameField("kit.name", "Name of the kit");
    private final NameField purpose = new NameField("kit.purpose", "What it is for");
    private final ChoiceField<Optional<Entry>> motor = new ChoiceField<>(
            "kit.motor",
            "Motor",
            List.of(Optional.empty()),
            chosen -> chosen.map(Entry::name).orElse("none, by hand"));

    KitHeader(KitEdits edits, Consumer<ThingId> select) {
        super(new ShrinkingRow(Spacing.NEAR));
        setOpaque(false);
        setBorder(Spacing.around(Spacing.NEAR));
        kits.onCommit(chosen -> select.accept(chosen.id()));
        kits.setToolTipText("The kit shown");
        name.setColumns(NAME_COLUMNS);
        name.onCommit(edits::rename);
        purpose.setColumns(PURPOSE_COLUMNS);
        purpose.onCommit(edits::purpose);
        motor.onCommit(chosen -> edits.motor(chosen.map(Entry::id)));
        JButton create = new JButton("New kit");
        create.setName("kit.new");
        create.addActionListener(event -> edits.create());
        add(kits);
        labelled("Name", name);
        labelled("For", purpose);
        labelled("Motor", motor);
        add(create);
    }

    private void labelled(String words, javax.swing.JComponent field) {
        add(new RowLabel(words, field));
        add(field);
    }

    void show(ThingId id, Kit kit, Snapshot library) {
        List<Entry> all = library.ofKind(ThingKind.KIT);
        kits.setChoices(all);
        all.stream().filter(entry -> entry.id().equals(id)).findFirst().ifPresent(kits::setValue);
        name.setValue(kit.name());
        purpose.setValue(kit.purpose());
        List<Optional<Entry>> motors = new ArrayList<>(List.of(Optional.empty()));
        library.ofKind(ThingKind.MOTOR).forEach(entry -> motors.add(Optional.of(entry)));
        motor.setChoices(motors);
        motor.setValue(motors.stream()
                .filter(each -> each.map(Entry::id).equals(kit.motor()))
                .findFirst()
                .orElse(Optional.empty()));
    }
}
