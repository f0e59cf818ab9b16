package org.taperwright.sequencer.ui;

import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.text.JTextComponent;
import org.taperwright.shaping.sequence.Irrigation;

/** What is given in an irrigation: one of the names in common use, or any other. */
final class IrrigantField extends JComboBox<String> {
    private transient Consumer<String> commit = words -> {};
    private String shown = "";
    private boolean quiet;

    IrrigantField(String name) {
        super(Irrigation.COMMON_IRRIGANTS.toArray(String[]::new));
        setName(name);
        setEditable(true);
        getAccessibleContext().setAccessibleName("Irrigant");
        getEditor().getEditorComponent().setName(name + ".text");
        addActionListener(event -> {
            String words = String.valueOf(getEditor().getItem()).strip();
            if (quiet) {
                return;
            }
            if (words.isEmpty()) {
                setValue(shown);
            } else if (!words.equals(shown)) {
                shown = words;
                commit.accept(words);
            }
        });
    }

    /** Receives what a person chooses or writes. */
    void onCommit(Consumer<String> listener) {
        commit = listener;
    }

    /** Shows a value from elsewhere without telling anyone. */
    void setValue(String words) {
        quiet = true;
        shown = words;
        setSelectedItem(words);
        if (getEditor().getEditorComponent() instanceof JTextComponent text) {
            text.setCaretPosition(0);
        }
        quiet = false;
    }
}
