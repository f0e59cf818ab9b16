package org.taperwright.kit.ui;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.taperwright.shaping.kit.DiscardList;
import org.taperwright.shaping.kit.DiscardReason;
import org.taperwright.workbench.ui.CautionLine;

/** What to discard and why: each reason with its rule's source and, for an estimate, its standing. */
final class DiscardPane extends JPanel {
    private final transient KitEdits edits;
    private final ListPane list = new ListPane(
            "kit.discards",
            "Pieces to discard",
            List.of("Piece", "Instrument", "Says", "Why", "Standing", "Source"),
            List.of(110, 170, 70, 460, 80, 260));
    private final JButton chosen;
    private final JButton due;
    private transient List<DiscardList.Item> byRow = List.of();

    DiscardPane(KitEdits edits) {
        super(new BorderLayout());
        this.edits = edits;
        chosen = list.button(
                "Discard the selected", "Discards the pieces selected for the reasons given", this::discardChosen);
        due = list.button(
                "Discard all that are due",
                "Discards every piece of which a rule says “discard”, as one edit",
                () -> edits.discard(
                        byRow.stream().distinct().filter(DiscardList.Item::due).toList()));
        list.table().getSelectionModel().addListSelectionListener(event -> wake());
        add(list, BorderLayout.CENTER);
        CautionLine caution = new CautionLine();
        caution.setBorder(org.taperwright.workbench.ui.Spacing.around(4, 8));
        add(caution, BorderLayout.SOUTH);
    }

    void show(KitReading reading) {
        List<List<String>> rows = new ArrayList<>();
        List<DiscardList.Item> items = new ArrayList<>();
        DiscardList discard = reading.card().discard();
        for (DiscardList.Item item : discard.items()) {
            for (DiscardReason reason : item.reasons()) {
                items.add(item);
                rows.add(List.of(
                        item.piece().id(),
                        item.piece().designation(),
                        reason.weight().word(),
                        reason.sentence(),
                        reason.standing().map(standing -> standing.word()).orElse("counted"),
                        reason.source()));
            }
        }
        byRow = List.copyOf(items);
        String remarks = discard.remarks().isEmpty()
                ? ""
                : " Not checked: "
                        + String.join(
                                "; ",
                                discard.remarks().stream()
                                        .map(each -> each.what())
                                        .toList()) + ".";
        list.show(
                (rows.isEmpty()
                                ? "No rule would have a piece discarded. That does not say that it may be used: look at each "
                                        + "piece before and after every use."
                                : "What a rule says of a piece in use, and why.")
                        + remarks,
                rows);
        wake();
    }

    private void wake() {
        chosen.setEnabled(list.table().getSelectedRowCount() > 0);
        due.setEnabled(byRow.stream().anyMatch(DiscardList.Item::due));
    }

    private void discardChosen() {
        Set<DiscardList.Item> items = new LinkedHashSet<>();
        for (int row : list.table().getSelectedRows()) {
            items.add(byRow.get(row));
        }
        edits.discard(List.copyOf(items));
    }
}
