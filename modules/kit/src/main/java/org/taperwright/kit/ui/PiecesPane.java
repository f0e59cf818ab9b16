package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.taperwright.library.store.Arrangement;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.shaping.kit.Damage;
import org.taperwright.shaping.kit.LifeSpent;
import org.taperwright.shaping.kit.UseEstimates;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.CautionLine;
import org.taperwright.workbench.ui.ChoiceField;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.QuantityField;
import org.taperwright.workbench.ui.QuantityKind;
import org.taperwright.workbench.ui.RowLabel;
import org.taperwright.workbench.ui.ShrinkingRow;
import org.taperwright.workbench.ui.Spacing;

/** The pieces, with one gesture to log a use of those selected: the button, or the key U. */
final class PiecesPane extends JPanel {
    private final transient Desk desk;
    private final transient KitEdits edits;
    private final PiecesTable table = new PiecesTable();
    private final QuantityField canals =
            new QuantityField("kit.canals", "Canals", new QuantityKind("", 0, 20, 1, 0, 0, java.util.Map.of()));
    private final ChoiceField<Optional<Entry>> sequence = new ChoiceField<>(
            "kit.sequence",
            "Sequence",
            List.of(Optional.empty()),
            chosen -> chosen.map(Entry::name).orElse("no sequence noted"));
    private final JPanel buttons = new JPanel(new ShrinkingRow(Spacing.NEAR));
    private final Prose told = new Prose("", Ink::unusual, true);
    private final transient List<JButton> onSelection = new ArrayList<>();
    private transient Optional<Estimated> estimated = Optional.empty();

    PiecesPane(Desk desk, KitEdits edits) {
        super(new BorderLayout(0, Spacing.NEAR));
        this.desk = desk;
        this.edits = edits;
        setBorder(Spacing.around(Spacing.NEAR));
        canals.setValue(1);
        sequence.setValue(Optional.empty());
        told.setName("kit.told");
        told.setVisible(false);
        table.setTransferHandler(new InstrumentDrop(edits::add));
        button("Log a use", "U", "One use, today, of the pieces selected (key U)", pieces -> logUse(pieces));
        buttons.add(new RowLabel("canals", canals));
        buttons.add(canals);
        buttons.add(sequence);
        button("Sterilised", "S", "One sterilisation more of the pieces selected (key S)", edits::sterilised);
        button("Damage seen…", "D", "Notes what is seen on the pieces selected (key D)", this::noteDamage);
        button("Discard…", "DELETE", "Discards the pieces selected, with the reason", this::discard);
        menu();
        JButton add = new JButton("Add from the catalogue");
        add.setName("kit.add");
        add.setToolTipText(
                "Adds a piece of the instrument selected in the Instruments window; dragging it here does too");
        add.addActionListener(event -> desk.selected(ThingKind.INSTRUMENT).ifPresent(id -> edits.add(List.of(id))));
        JPanel top = new JPanel(new BorderLayout(Spacing.NEAR, Spacing.TIGHT));
        buttons.setOpaque(false);
        top.setOpaque(false);
        top.add(buttons, BorderLayout.CENTER);
        top.add(add, BorderLayout.LINE_END);
        top.add(told, BorderLayout.SOUTH);
        table.getSelectionModel().addListSelectionListener(event -> wake());
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setTransferHandler(table.getTransferHandler());
        add(top, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        add(new CautionLine(), BorderLayout.SOUTH);
        wake();
    }

    /** Shows a reading. */
    void show(KitReading reading) {
        table.show(reading);
        List<Optional<Entry>> sequences = new ArrayList<>(List.of(Optional.empty()));
        desk.snapshot().ofKind(ThingKind.SEQUENCE).forEach(entry -> sequences.add(Optional.of(entry)));
        Optional<ThingId> chosen = chosenSequence();
        sequence.setChoices(sequences);
        sequence.setValue(sequences.stream()
                .filter(each -> each.map(Entry::id).equals(chosen))
                .findFirst()
                .orElse(Optional.empty()));
        wake();
    }

    private Optional<ThingId> chosenSequence() {
        int index = sequence.getSelectedIndex();
        return index < 0 ? Optional.empty() : sequence.getItemAt(index).map(Entry::id);
    }

    private void wake() {
        boolean any = table.getSelectedRowCount() > 0;
        onSelection.forEach(button -> button.setEnabled(any));
    }

    private void button(String words, String key, String explanation, Consumer<List<String>> action) {
        AbstractAction run = new AbstractAction(words) {
            @Override
            public void actionPerformed(ActionEvent event) {
                List<String> pieces = table.selectedPieces();
                tell("");
                if (!pieces.isEmpty()) {
                    action.accept(pieces);
                }
            }
        };
        JButton button = new JButton(run);
        button.setName("kit."
                + words.replace("…", "").toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        button.setToolTipText(explanation);
        onSelection.add(button);
        buttons.add(button);
        table.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), words);
        table.getActionMap().put(words, run);
    }

    private void menu() {
        JPopupMenu menu = new JPopupMenu();
        item(menu, "Replace the discarded", edits::replace);
        item(menu, "Take out of the kit, with its log", edits::remove);
        table.setComponentPopupMenu(menu);
    }

    private void item(JPopupMenu menu, String words, Consumer<List<String>> action) {
        JMenuItem item = menu.add(words);
        item.addActionListener(event -> {
            if (table.getSelectedRowCount() > 0) {
                action.accept(table.selectedPieces());
            }
        });
    }

    /** A use by a sequence waits for the share of life that the sequence takes; without one it is logged at once. */
    private void logUse(List<String> pieces) {
        KitEdits asked = edits.here();
        int many = (int) Math.round(canals.value());
        Optional<ThingId> followed = chosenSequence();
        Optional<ArrangedSequence> arranged = followed.flatMap(
                        id -> desk.snapshot().thing(id, Sequence.class))
                .flatMap(each -> Arrangement.of(each, desk.snapshot()).arranged());
        if (arranged.isEmpty()) {
            log(asked, pieces, many, followed, Map.of());
        } else if (estimated.isPresent() && estimated.get().of().equals(arranged.get())) {
            log(asked, pieces, many, followed, estimated.get().perCanal());
        } else {
            tell("Working out what share of their life the sequence takes; the use is logged when it is known.");
            ArrangedSequence work = arranged.get();
            desk.compute(
                    new Object(),
                    "Life spent by " + work.sequence().name(),
                    progress -> UseEstimates.of(work, progress),
                    outcome -> {
                        if (outcome instanceof Outcome.Current<Map<ThingId, LifeSpent>> current) {
                            estimated = Optional.of(new Estimated(work, current.value()));
                            log(asked, pieces, many, followed, current.value());
                        } else {
                            log(asked, pieces, many, followed, Map.of());
                            tell("The use is logged without the share of life that it took: that was not worked out.");
                        }
                    });
        }
    }

    private void log(
            KitEdits asked,
            List<String> pieces,
            int many,
            Optional<ThingId> followed,
            Map<ThingId, LifeSpent> perCanal) {
        tell(asked.use(pieces, many, followed, perCanal).stream()
                .map(fault -> fault.what() + "; " + fault.expected() + ".")
                .distinct()
                .collect(Collectors.joining(" ")));
    }

    /** The last estimate, so that the next use by the same sequence need not wait. */
    private record Estimated(ArrangedSequence of, Map<ThingId, LifeSpent> perCanal) {}

    private void tell(String words) {
        told.setText(words);
        told.setVisible(!words.isEmpty());
        revalidate();
    }

    private void noteDamage(List<String> pieces) {
        Object seen = JOptionPane.showInputDialog(
                this,
                "What is seen on it?",
                "Damage seen",
                JOptionPane.PLAIN_MESSAGE,
                null,
                java.util.Arrays.stream(Damage.values()).map(Damage::word).toArray(),
                Damage.UNWOUND.word());
        java.util.Arrays.stream(Damage.values())
                .filter(damage -> damage.word().equals(seen))
                .findFirst()
                .ifPresent(damage -> edits.damaged(pieces, damage));
    }

    private void discard(List<String> pieces) {
        Object reason =
                JOptionPane.showInputDialog(this, "Why?", "Discard", JOptionPane.PLAIN_MESSAGE, null, null, "Worn");
        if (reason != null && !reason.toString().isBlank()) {
            edits.discard(pieces, reason.toString().strip());
        }
    }
}
