package org.taperwright.catalogue.ui;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.prefs.Preferences;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.JTable;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableColumn;

/** Which columns the table shows and in which order: chosen in a menu on the headings, remembered among the settings. */
final class ChosenColumns {
    private static final String KEPT = "columns";

    private final JTable table;
    private final Preferences settings;
    private boolean arranging;

    private ChosenColumns(JTable table, Preferences settings) {
        this.table = table;
        this.settings = settings;
    }

    /** Shows the columns chosen last and puts the menu on the headings. */
    static ChosenColumns on(JTable table, Preferences settings) {
        ChosenColumns chosen = new ChosenColumns(table, settings);
        chosen.arrange(chosen.kept());
        table.getColumnModel().addColumnModelListener(chosen.new Remembering());
        return chosen;
    }

    /** The columns shown, in order. */
    List<InstrumentColumn> shown() {
        List<InstrumentColumn> shown = new ArrayList<>();
        for (int i = 0; i < table.getColumnCount(); i++) {
            shown.add(InstrumentColumn.values()[table.convertColumnIndexToModel(i)]);
        }
        return shown;
    }

    /** Shows a column, at the place it has at first, or takes it away; the last one stays. */
    void show(InstrumentColumn column, boolean visible) {
        List<InstrumentColumn> next = shown();
        if (visible && !next.contains(column)) {
            int place = (int) next.stream()
                    .filter(each -> each.ordinal() < column.ordinal())
                    .count();
            next.add(Math.min(place, next.size()), column);
        } else if (!visible && next.size() > 1) {
            next.remove(column);
        }
        arrange(next);
        remember();
    }

    /** A menu that ticks the columns shown. */
    JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("instruments.columns");
        List<InstrumentColumn> shown = shown();
        for (InstrumentColumn column : InstrumentColumn.values()) {
            JCheckBoxMenuItem item = new JCheckBoxMenuItem(column.title(), shown.contains(column));
            item.setName("instruments.column." + column.name());
            item.setToolTipText(column.explanation());
            item.addActionListener(event -> show(column, item.isSelected()));
            menu.add(item);
        }
        menu.addSeparator();
        menu.add("As at first").addActionListener(event -> {
            arrange(InstrumentColumn.atFirst());
            remember();
        });
        return menu;
    }

    private void arrange(List<InstrumentColumn> columns) {
        arranging = true;
        int[] widths = new int[InstrumentColumn.values().length];
        while (table.getColumnCount() > 0) {
            TableColumn old = table.getColumnModel().getColumn(0);
            widths[old.getModelIndex()] = old.getPreferredWidth();
            table.removeColumn(old);
        }
        for (InstrumentColumn column : columns) {
            TableColumn made = new TableColumn(column.ordinal());
            made.setHeaderValue(column.title());
            if (widths[column.ordinal()] > 0) {
                made.setPreferredWidth(widths[column.ordinal()]);
            } else {
                made.setPreferredWidth(16 + 8 * column.title().length());
            }
            table.addColumn(made);
        }
        arranging = false;
    }

    private List<InstrumentColumn> kept() {
        List<InstrumentColumn> columns = new ArrayList<>();
        for (String name : settings.get(KEPT, "").split(",")) {
            named(name).filter(column -> !columns.contains(column)).ifPresent(columns::add);
        }
        return columns.isEmpty() ? InstrumentColumn.atFirst() : columns;
    }

    private static Optional<InstrumentColumn> named(String name) {
        return Arrays.stream(InstrumentColumn.values())
                .filter(column -> column.name().equals(name))
                .findFirst();
    }

    private void remember() {
        settings.put(KEPT, String.join(",", shown().stream().map(Enum::name).toList()));
    }

    /** Remembers the order when a column is dragged. */
    private final class Remembering implements TableColumnModelListener {
        @Override
        public void columnMoved(TableColumnModelEvent event) {
            if (!arranging && event.getFromIndex() != event.getToIndex()) {
                remember();
            }
        }

        @Override
        public void columnAdded(TableColumnModelEvent event) {
            // only our own menu adds columns
        }

        @Override
        public void columnRemoved(TableColumnModelEvent event) {
            // only our own menu removes columns
        }

        @Override
        public void columnMarginChanged(ChangeEvent event) {
            // widths fit the content anew each time
        }

        @Override
        public void columnSelectionChanged(ListSelectionEvent event) {
            // no matter
        }
    }
}
