package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import javax.swing.AbstractButton;
import javax.swing.JFormattedTextField;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.text.DefaultFormatterFactory;

/**
 * A field for one quantity: number and unit as text, arrow keys and buttons to step. While an arrow is held or the text
 * is entered the value is only previewed; it is committed, once, on release, on Enter or when the focus leaves. A text
 * that is no such quantity stays as typed, with what is expected beneath. Escape goes back to the committed value.
 */
public final class QuantityField extends JPanel {
    private final QuantityKind kind;
    private final SteppedValue steps;
    private final JFormattedTextField text;
    private final JSpinner spinner;
    private final Prose fault = new Prose("", Ink::fault, true);
    private double committed;
    private boolean quiet;
    private boolean trying;
    private DoubleConsumer preview = value -> {};
    private DoubleConsumer commit = value -> {};

    /**
     * @param name what tests and other code find it by
     * @param what the quantity in people's words, read out by assistive technology
     */
    public QuantityField(String name, String what, QuantityKind kind) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.kind = kind;
        committed = Math.max(kind.least(), Math.min(kind.most(), 0));
        steps = new SteppedValue(kind, committed);
        spinner = new JSpinner(steps);
        JSpinner.DefaultEditor editor = new JSpinner.DefaultEditor(spinner);
        text = editor.getTextField();
        text.setFormatterFactory(new DefaultFormatterFactory(new QuantityFormatter(kind)));
        text.setFocusLostBehavior(JFormattedTextField.COMMIT);
        text.setEditable(true);
        text.setColumns(7);
        spinner.setEditor(editor);
        setName(name);
        spinner.setName(name + ".spinner");
        text.setName(name + ".text");
        fault.setName(name + ".fault");
        fault.setVisible(false);
        text.getAccessibleContext().setAccessibleName(what);
        spinner.getAccessibleContext().setAccessibleName(what);
        setOpaque(false);
        add(spinner, BorderLayout.CENTER);
        add(fault, BorderLayout.SOUTH);
        listen();
    }

    /** Receives values that are being tried; called often. */
    public QuantityField onPreview(DoubleConsumer listener) {
        preview = listener;
        return this;
    }

    /** Receives a value once it is entered. */
    public QuantityField onCommit(DoubleConsumer listener) {
        commit = listener;
        return this;
    }

    /**
     * Shows a value from elsewhere without telling anyone. The echo of a value that is being tried changes nothing, and
     * neither does the committed value while a faulty text waits to be mended.
     */
    public void setValue(double value) {
        boolean echo = trying && steps.is(value);
        boolean waiting = fault.isVisible() && Math.abs(value - committed) <= 1e-12;
        if (echo || waiting) {
            return;
        }
        committed = value;
        showCommitted();
    }

    /** How its quantity is entered and written. */
    public QuantityKind kind() {
        return kind;
    }

    /** The committed value. */
    public double value() {
        return committed;
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        spinner.setEnabled(enabled);
    }

    @Override
    public void setToolTipText(String tip) {
        super.setToolTipText(tip);
        text.setToolTipText(tip);
        spinner.setToolTipText(tip);
    }

    /** The component that a label names. */
    public Component entry() {
        return text;
    }

    @Override
    public int getBaseline(int width, int height) {
        return spinner.getBaseline(width, spinner.getPreferredSize().height);
    }

    private void listen() {
        steps.addChangeListener(event -> {
            if (!quiet) {
                show("");
                trying = true;
                preview.accept(steps.number());
            }
        });
        text.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                if (event.getKeyCode() == KeyEvent.VK_ENTER) {
                    enter();
                } else if (event.getKeyCode() == KeyEvent.VK_ESCAPE) {
                    back();
                }
            }

            @Override
            public void keyReleased(KeyEvent event) {
                if (event.getKeyCode() == KeyEvent.VK_UP || event.getKeyCode() == KeyEvent.VK_DOWN) {
                    settle();
                }
            }
        });
        text.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                enter();
            }
        });
        for (Component child : spinner.getComponents()) {
            settleOnRelease(child);
        }
    }

    private void settleOnRelease(Component child) {
        if (child instanceof AbstractButton) {
            child.addMouseListener(new MouseAdapter() {
                @Override
                public void mouseReleased(MouseEvent event) {
                    settle();
                }
            });
        }
    }

    /** Takes the text as it stands: commits it, or says what is expected. */
    void enter() {
        OptionalDouble read = kind.value(text.getText());
        if (read.isEmpty()) {
            show("\u201c" + text.getText().strip() + "\u201d is not understood; expected " + kind.expectation());
        } else if (!kind.allows(read.getAsDouble())) {
            show("Out of range; expected " + kind.expectation());
        } else {
            show("");
            quietly(() -> {
                steps.setValue(read.getAsDouble());
                text.setValue(read.getAsDouble());
            });
            settle();
        }
    }

    private void settle() {
        trying = false;
        if (!steps.is(committed)) {
            committed = steps.number();
            commit.accept(committed);
        }
    }

    private void back() {
        boolean tried = trying && !steps.is(committed);
        showCommitted();
        if (tried) {
            preview.accept(committed);
        }
    }

    private void showCommitted() {
        trying = false;
        show("");
        quietly(() -> {
            steps.setValue(committed);
            text.setValue(committed);
        });
    }

    private void quietly(Runnable change) {
        quiet = true;
        change.run();
        quiet = false;
    }

    private void show(String message) {
        fault.setText(message);
        fault.setVisible(!message.isEmpty());
        spinner.putClientProperty("JComponent.outline", message.isEmpty() ? null : "error");
        text.getAccessibleContext().setAccessibleDescription(message.isEmpty() ? null : message);
        revalidate();
        repaint();
    }
}
