package org.taperwright.catalogue.ui;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.taperwright.workbench.ui.TextChanges;

/** A box to narrow a list as one types: Escape clears it, the down arrow goes to the list. */
final class SearchField extends JTextField {
    /**
     * Makes a box.
     *
     * @param name what tests find it by
     * @param what what is searched, in people's words
     */
    SearchField(String name, String what) {
        setName(name);
        getAccessibleContext().setAccessibleName(what);
        putClientProperty("JTextField.placeholderText", what);
        putClientProperty("JTextField.showClearButton", true);
        key("ESCAPE", () -> setText(""));
    }

    /** The words typed. */
    SearchWords words() {
        return SearchWords.of(getText());
    }

    /** Calls back at every change of the text. */
    void onChange(Runnable changed) {
        TextChanges.each(this, changed);
    }

    /** Calls back at the down arrow. */
    void onDown(Runnable down) {
        key("DOWN", down);
    }

    private void key(String key, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }
}
