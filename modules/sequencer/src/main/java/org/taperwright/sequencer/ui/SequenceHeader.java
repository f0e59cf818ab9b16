package org.taperwright.sequencer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.NameField;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** Name, canal and motor of a sequence, and a word on whether its numbers are current. */
final class SequenceHeader extends JPanel {
    /** A thing to choose, or none. */
    record Choice(Optional<ThingId> id, String name) {}

    private static final Choice NO_MOTOR = new Choice(Optional.empty(), "none, by hand");

    private static final int NAME_COLUMNS = 24;

    private final NameField name = new NameField("sequence.name", "Name of the sequence");
    private final ChoiceField<Choice> canal = new ChoiceField<>("sequence.canal", "Canal", List.of(), Choice::name);
    private final ChoiceField<Choice> motor = new ChoiceField<>("sequence.motor", "Motor", List.of(), Choice::name);
    private final JLabel state = new JLabel(" ");

    SequenceHeader(Consumer<String> rename, Consumer<ThingId> chooseCanal, Consumer<Optional<ThingId>> chooseMotor) {
        super(new ShrinkingRow(Spacing.NEAR));
        setOpaque(false);
        name.onCommit(rename);
        name.setColumns(NAME_COLUMNS);
        canal.onCommit(choice -> choice.id().ifPresent(chooseCanal));
        motor.onCommit(choice -> chooseMotor.accept(choice.id()));
        state.setName("sequence.state");
        state.setForeground(Ink.unusual());
        add(name);
        labelled("Canal", canal);
        labelled("Motor", motor);
        add(state);
    }

    private void labelled(String words, JComponent field) {
        JLabel label = new JLabel(words);
        label.setLabelFor(field);
        add(label);
        add(field);
    }

    /** Shows a sequence and what it may be tried in. */
    void show(Sequence sequence, Snapshot snapshot) {
        name.setValue(sequence.name());
        choose(canal, choices(snapshot, ThingKind.CANAL), sequence.canal());
        List<Choice> motors = new ArrayList<>(List.of(NO_MOTOR));
        motors.addAll(choices(snapshot, ThingKind.MOTOR));
        choose(motor, motors, sequence.motor());
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

    private static List<Choice> choices(Snapshot snapshot, ThingKind kind) {
        return snapshot.ofKind(kind).stream()
                .map((Entry entry) -> new Choice(Optional.of(entry.id()), entry.name()))
                .toList();
    }

    private static void choose(ChoiceField<Choice> field, List<Choice> choices, Optional<ThingId> chosen) {
        field.setChoices(choices);
        choices.stream()
                .filter(choice -> choice.id().equals(chosen))
                .findFirst()
                .ifPresentOrElse(field::setValue, () -> field.setSelectedIndex(-1));
    }
}
