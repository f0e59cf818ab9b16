package org.taperwright.workbench.ui;

import java.awt.BorderLayout;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextField;

/**
 * A field for a value written in words of its own, such as a day or a range. It commits on Enter and when the focus
 * leaves; a text that means no value stays as typed, with what is expected beneath. Escape takes the typing back.
 */
public final class WrittenField<T> extends JPanel {
    private final transient Written<T> kind;
    private final NameField text;
    private final Prose fault = new Prose("", Ink::fault, true);
    private transient T committed;
    private transient Consumer<T> commit = value -> {};

    /**
     * @param name what tests and other code find it by; the text within is {@code name.text}
     * @param what the value in people's words
     * @param initial shown until another value is
     */
    public WrittenField(String name, String what, Written<T> kind, T initial) {
        super(new BorderLayout(0, Spacing.TIGHT));
        this.kind = kind;
        committed = initial;
        text = new NameField(name + ".text", what);
        text.onCommit(any -> enter());
        fault.setName(name + ".fault");
        fault.setVisible(false);
        setName(name);
        setOpaque(false);
        add(text, BorderLayout.CENTER);
        add(fault, BorderLayout.SOUTH);
        setValue(initial);
    }

    /** Receives a value once it is entered. */
    public WrittenField<T> onCommit(Consumer<T> listener) {
        commit = listener;
        return this;
    }

    /** Shows a value from elsewhere without telling anyone. */
    public void setValue(T value) {
        boolean waiting = fault.isVisible() && value.equals(committed);
        if (!waiting) {
            committed = value;
            text.setValue(kind.writing().apply(value));
            show("");
        }
    }

    /** The committed value. */
    public T value() {
        return committed;
    }

    /** What the text as it stands means, entered or not; empty when it means nothing. */
    public Optional<T> reading() {
        return kind.reading().apply(text.getText());
    }

    /** The text itself. */
    public JTextField entry() {
        return text;
    }

    private void enter() {
        Optional<T> read = reading();
        if (read.isEmpty()) {
            show("“" + text.getText().strip() + "” is not understood; expected " + kind.expected());
            return;
        }
        show("");
        boolean changed = !read.get().equals(committed);
        committed = read.get();
        text.setValue(kind.writing().apply(committed));
        if (changed) {
            commit.accept(committed);
        }
    }

    private void show(String message) {
        fault.setText(message);
        fault.setVisible(!message.isEmpty());
        text.putClientProperty("JComponent.outline", message.isEmpty() ? null : "error");
        revalidate();
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        text.setEnabled(enabled);
    }

    @Override
    public void setToolTipText(String tip) {
        super.setToolTipText(tip);
        text.setToolTipText(tip);
    }

    @Override
    public int getBaseline(int width, int height) {
        return text.getBaseline(width, text.getPreferredSize().height);
    }
}
