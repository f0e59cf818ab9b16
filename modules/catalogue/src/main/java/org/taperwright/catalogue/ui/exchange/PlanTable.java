package org.taperwright.catalogue.ui.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
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

/** What a file would bring in: each thing, whether it is new, the same or changed, and the choice where there is one. */
final class PlanTable extends JTable {
    private static final int CHOICE = 3;
    private static final String UNDECIDED = "choose…";

    private final Rows rows;
    private transient Consumer<ImportPlan> changed = plan -> {};

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

    /** Receives the plan with another choice. */
    void onChange(Consumer<ImportPlan> listener) {
        changed = listener;
    }

    /** Shows a plan: what has to be decided first, then what is new, then what is the same. */
    void show(Optional<ImportPlan> plan) {
        rows.plan = plan;
        rows.things = plan.map(each -> each.things().values().stream()
                        .sorted(java.util.Comparator.comparingInt(PlanTable::order))
                        .toList())
                .orElse(List.of());
        rows.fireTableDataChanged();
    }

    private static int order(PlannedThing thing) {
        return thing.contested() ? 0 : thing.standing() instanceof Standing.New ? 1 : 2;
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
        private transient Optional<ImportPlan> plan = Optional.empty();
        private transient List<PlannedThing> things = new ArrayList<>();

        @Override
        public int getRowCount() {
            return things.size();
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
            PlannedThing thing = things.get(row);
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
            return column == CHOICE && things.get(row).contested();
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            PlannedThing thing = things.get(row);
            Arrays.stream(Resolution.values())
                    .filter(each -> word(each).equals(value))
                    .filter(each -> !(each == Resolution.THEIRS && thing.standing() instanceof Standing.Other))
                    .findFirst()
                    .ifPresent(choice -> changed.accept(plan.orElseThrow().with(thing.id(), choice)));
        }
    }
}
