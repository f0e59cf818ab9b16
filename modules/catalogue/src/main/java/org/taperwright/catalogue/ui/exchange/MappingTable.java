package org.taperwright.catalogue.ui.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import org.taperwright.library.exchange.table.ColumnMapping;
import org.taperwright.library.exchange.table.MappedColumn;

/** Which column of a file means which field, with the first values of each; the meaning and the unit can be changed. */
final class MappingTable extends JTable {
    private static final String PASSED_OVER = "passed over";
    private static final int MEANING = 1;
    private static final int UNIT = 2;

    private final Rows rows;
    private transient Consumer<ColumnMapping> changed = mapping -> {};
    private transient Consumer<String> refused = words -> {};

    MappingTable() {
        rows = new Rows();
        setModel(rows);
        setName("import.mapping");
        getAccessibleContext().setAccessibleName("Meaning of the columns");
        setShowGrid(false);
        putClientProperty("terminateEditOnFocusLost", Boolean.TRUE);
        int[] widths = {140, 140, 60, 160};
        for (int i = 0; i < widths.length; i++) {
            getColumnModel().getColumn(i).setPreferredWidth(widths[i]);
        }
    }

    /** Receives the mapping as changed, and why a change was not taken. */
    void onChange(Consumer<ColumnMapping> change, Consumer<String> refusal) {
        changed = change;
        refused = refusal;
    }

    /** Shows a mapping with the first values of its columns. */
    void show(ColumnMapping mapping, List<String> samples) {
        rows.mapping = Optional.of(mapping);
        rows.samples = List.copyOf(samples);
        List<String> choices = new ArrayList<>(List.of(PASSED_OVER));
        choices.addAll(mapping.kind().fieldNames());
        JComboBox<String> fields = new JComboBox<>(choices.toArray(String[]::new));
        fields.setName("import.field");
        getColumnModel().getColumn(MEANING).setCellEditor(new DefaultCellEditor(fields));
        rows.fireTableDataChanged();
    }

    /** Shows nothing. */
    void clear() {
        rows.mapping = Optional.empty();
        rows.fireTableDataChanged();
    }

    private void take(int column, Optional<String> field, Optional<String> unit) {
        rows.mapping.ifPresent(mapping -> {
            try {
                changed.accept(mapping.with(column, field, unit));
            } catch (IllegalArgumentException unfit) {
                refused.accept("The mapping " + unfit.getMessage());
            }
        });
    }

    /** The columns of the file as rows. */
    private final class Rows extends AbstractTableModel {
        private transient Optional<ColumnMapping> mapping = Optional.empty();
        private transient List<String> samples = List.of();

        @Override
        public int getRowCount() {
            return mapping.map(each -> each.columns().size()).orElse(0);
        }

        @Override
        public int getColumnCount() {
            return 4;
        }

        @Override
        public String getColumnName(int column) {
            return List.of("Column", "Means", "Unit", "First values").get(column);
        }

        @Override
        public Object getValueAt(int row, int column) {
            MappedColumn mapped = mapping.orElseThrow().columns().get(row);
            return switch (column) {
                case 0 -> mapped.heading();
                case MEANING -> mapped.field().orElse(PASSED_OVER);
                case UNIT -> mapped.unit().orElse("");
                default -> row < samples.size() ? samples.get(row) : "";
            };
        }

        @Override
        public boolean isCellEditable(int row, int column) {
            return column == MEANING || column == UNIT;
        }

        @Override
        public void setValueAt(Object value, int row, int column) {
            MappedColumn mapped = mapping.orElseThrow().columns().get(row);
            String text = String.valueOf(value).strip();
            if (text.equals(getValueAt(row, column))) {
                return;
            }
            if (column == MEANING) {
                boolean passed = text.equals(PASSED_OVER);
                take(row, passed ? Optional.empty() : Optional.of(text), Optional.empty());
            } else {
                take(row, mapped.field(), text.isEmpty() ? Optional.empty() : Optional.of(text));
            }
        }
    }
}
