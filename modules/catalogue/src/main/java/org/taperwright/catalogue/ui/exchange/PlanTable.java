package org.taperwright.catalogue.ui.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import org.taperwright.library.exchange.FieldChange;
import org.taperwright.library.exchange.transfer.ImportPlan;
import org.taperwright.library.exchange.transfer.PlannedThing;
import org.taperwright.library.exchange.transfer.Resolution;
import org.taperwright.library.exchange.transfer.Standing;
import org.taperwright.mechanics.design.ThingId;

/** What a file would bring in: each thing, whether it is new, the same or changed, and the choice where there is one. */
final class PlanTable extends JTable {
    private static final int CHOICE = 3;
    private static final String UNDECIDED = "choose…";

    private final Rows rows;
    private transient BiConsumer<ThingId, Resolution> chosen = (id, choice) -> {};

    PlanTable() {
        rows = new Rows();
        setModel(rows);
        setName("import.things");
        getAccessibleContext().setAccessibleName("Things in the file");
        setShowGrid(false);
        putClientProperty("terminateEditOnFocusLost", Boolean.TRUE);
        int[] widths = {220, 90, 90, 130, 420};
        for (int i = 0; i < widths.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(widths[i]);
        }
        JComboBox<String> choices = new JComboBox<>(
                Arrays.stream(Resolution.values()).map(PlanTable::word).toArray(String[]::new));
        choices.setName("import.choice");
        getColumnModel().getColumn(CHOICE).setCellEditor(new DefaultCellEditor(choices));
    }

    /** Receives a person's choice for one thing. */
    void onChoice(BiConsumer<ThingId, Resolution> listener) {
        chosen = listener;
    }

    /** Shows what a file would bring in; other choices of the same things leave the selection where it is. */
    void show(IncomingView view) {
        boolean same = view.order().equals(rows.order);
        rows.order = view.order();
        rows.things = view.plan().map(ImportPlan::things).orElse(Map.of());
        if (same && !rows.order.isEmpty()) {
            rows.fireTableRowsUpdated(0, rows.order.size() - 1);
        } else {
            rows.fireTableDataChanged();
        }
    }

    private static String word(Resolution resolution) {
        return switch (resolution) {
            case OURS -> "keep the library's";
            case THEIRS -> "take the file's";
            case BOTH -> "keep both";
        };
    }

    private static String word(Standing standing) {
        if (standing instanceof Standing.New) {
            return "new";
        }
        if (standing instanceof Standing.Same) {
            return "the same";
        }
        return standing instanceof Standing.Changed ? "changed" : "another kind";
    }

    private static String difference(Standing standing) {
        if (standing instanceof Standing.Changed changed) {
            return changed.changes().stream().map(FieldChange::sentence).collect(Collectors.joining("; "));
        }
        return standing instanceof Standing.Other other
                ? "the library's is " + other.ours().one()
                : "";
    }

    /** The things as rows. */
    private final class Rows extends AbstractTableModel {
        private transient List<ThingId> order = List.of();
        private transient Map<ThingId, PlannedThing> things = Map.of();

        private PlannedThing at(int row) {
            return things.get(order.get(row));
        }

        @Override
        public int getRowCount() {
            return order.size();
        }

        @Override
        public int getColumnCount() {
            return 5;
        }

        @Override
        public String getColumnName(int column) {
            return List.of("Name", "Kind", "Is", "Choice", "What differs").get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            PlannedThing thing = at(row);
            return switch (column) {
                case 0 -> thing.name();
                case 1 -> thing.kind().word();
                case 2 -> word(thing.standing());
                case CHOICE ->
                    thing.contested() ? thing.resolution().map(PlanTable::word).orElse(UNDECIDED) : "";
                default -> difference(thing.standing());
            };
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == CHOICE && at(row).contested();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            PlannedThing thing = at(row);
            Arrays.stream(Resolution.values())
                    .filter(each -> word(each).equals(value))
                    .filter(each -> !(each == Resolution.THEIRS && thing.standing() instanceof Standing.Other))
                    .findFirst()
                    .ifPresent(choice -> chosen.accept(thing.id(), choice));
        }
    }
}
