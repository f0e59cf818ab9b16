package org.taperwright.workbench.ui;

import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;

/** Fields for words: they commit on Enter (a single line) and when the focus leaves; Escape takes the typing back. */
public final class NameField extends JTextField {
    private final transient Committed committed;

    public NameField(String name, String what) {
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        committed = new Committed(this);
        addActionListener(event -> committed.enter());
    }

    /** Receives words once they are entered. */
    public NameField onCommit(Consumer<String> listener) {
        committed.listener = listener;
        return this;
    }

    /** Shows words from elsewhere without telling anyone. */
    public void setValue(String words) {
        committed.set(words);
    }

    /** A field for a few lines of free text. */
    public static final class Lines extends JTextArea {
        private final transient Committed committed;

        public Lines(String name, String what, int rows) {
            super(rows, 0);
            setName(name);
            setLineWrap(true);
            setWrapStyleWord(true);
            getAccessibleContext().setAccessibleName(what);
            // Tab moves on, as in every other field.
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
            setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
            committed = new Committed(this);
        }

        /** Receives the text once it is entered. */
        public Lines onCommit(Consumer<String> listener) {
            committed.listener = listener;
            return this;
        }

        /** Follows the caret while a person types here; a text from elsewhere scrolls nothing. */
        @Override
        public void scrollRectToVisible(Rectangle place) {
            if (isFocusOwner()) {
                super.scrollRectToVisible(place);
            }
        }

        /** Shows a text from elsewhere without telling anyone. */
        public void setValue(String words) {
            committed.set(words);
        }
    }

    /** What was entered last, and who is told of the next. */
    private static final class Committed {
        private final JTextComponent field;
        private String words = "";
        private Consumer<String> listener = entered -> {};

        Committed(JTextComponent field) {
            this.field = field;
            field.addFocusListener(new FocusAdapter() {
                @Override
                public void focusLost(FocusEvent event) {
                    enter();
                }
            });
            Function<Runnable, javax.swing.Action> action = run -> new javax.swing.AbstractAction() {
                @Override
                public void actionPerformed(java.awt.event.ActionEvent event) {
                    run.run();
                }
            };
            field.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "takeBack");
            field.getActionMap().put("takeBack", action.apply(() -> field.setText(words)));
        }

        void set(String shown) {
            if (!shown.equals(words)) {
                words = shown;
                field.setText(shown);
                field.setCaretPosition(0);
            }
        }

        void enter() {
            String entered = field.getText().strip();
            if (!entered.equals(words)) {
                words = entered;
                listener.accept(entered);
            }
        }
    }
}
