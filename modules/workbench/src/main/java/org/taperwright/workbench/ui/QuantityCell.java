package org.taperwright.workbench.ui;

import java.awt.Component;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;

/**
 * Edits a quantity in a table cell, with or without its unit written. A text that is no such quantity keeps the cell
 * open, and what is expected goes to the table's owner.
 */
public final class QuantityCell extends DefaultCellEditor {
    private final transient QuantityKind kind;
    private final transient Consumer<String> fault;
    private double entered;

    /**
     * @param kind what is entered
     * @param fault receives what is wrong with the text, or an empty text when nothing is
     */
    public QuantityCell(QuantityKind kind, Consumer<String> fault) {
        super(new JTextField());
        this.kind = kind;
        this.fault = fault;
        setClickCountToStart(2);
        getComponent().setName("cellEditor");
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean selected, int row, int column) {
        JTextField field = (JTextField) getComponent();
        field.putClientProperty("JComponent.outline", null);
        fault.accept("");
        field.setHorizontalAlignment(JTextField.RIGHT);
        field.setText(value instanceof Number number ? kind.number(number.doubleValue()) : "");
        field.selectAll();
        return field;
    }

    @Override
    public Object getCellEditorValue() {
        return entered;
    }

    @Override
    public boolean stopCellEditing() {
        JTextField field = (JTextField) getComponent();
        OptionalDouble read = kind.value(field.getText());
        if (read.isEmpty() || !kind.allows(read.getAsDouble())) {
            field.putClientProperty("JComponent.outline", "error");
            fault.accept(
                    "\u201c" + field.getText().strip() + "\u201d cannot stand here; expected " + kind.expectation());
            return false;
        }
        fault.accept("");
        entered = read.getAsDouble();
        return super.stopCellEditing();
    }

    @Override
    public void cancelCellEditing() {
        fault.accept("");
        super.cancelCellEditing();
    }
}
