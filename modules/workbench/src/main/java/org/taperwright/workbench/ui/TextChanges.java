package org.taperwright.workbench.ui;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;

/** Tells of every change of a text, letter by letter. */
public final class TextChanges implements DocumentListener {
    private final Runnable changed;

    private TextChanges(Runnable changed) {
        this.changed = changed;
    }

    /** Calls back at every change of a field's text. */
    public static void each(JTextComponent field, Runnable changed) {
        field.getDocument().addDocumentListener(new TextChanges(changed));
    }

    @Override
    public void insertUpdate(DocumentEvent event) {
        changed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent event) {
        changed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent event) {
        changed.run();
    }
}
