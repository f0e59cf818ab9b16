package org.taperwright.sequencer.ui;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What the keyboard does in the scene. */
final class SequenceKeys {
    /** How far one arrow key moves a silhouette, mm. */
    static final double DEPTH_STEP_MM = 0.5;

    /** What is asked for by a key. */
    interface Commands {
        /** Selects the step so many places on. */
        void selectBeside(int places);

        /** Moves the selected step by places. */
        void moveBy(int places);

        /** Tries the selected step's tip moved by a length, mm, while the key is held. */
        void deepenBy(double mm);

        /** Sets the depth tried, now that the key is released. */
        void settleDepth();

        /** Takes the selected step out. */
        void removeSelected();

        /** Adds a step with the instrument selected in the catalogue, after the selected step. */
        void insertSelected();

        /** Adds a step that is no instrument's work, after the selected step. */
        void insertBetween(BetweenKind kind);
    }

    private SequenceKeys() {}

    static void on(JComponent view, Commands commands) {
        key(view, "UP", () -> commands.selectBeside(-1));
        key(view, "DOWN", () -> commands.selectBeside(1));
        key(view, "alt UP", () -> commands.moveBy(-1));
        key(view, "alt DOWN", () -> commands.moveBy(1));
        key(view, "LEFT", () -> commands.deepenBy(-DEPTH_STEP_MM));
        key(view, "RIGHT", () -> commands.deepenBy(DEPTH_STEP_MM));
        key(view, "released LEFT", commands::settleDepth);
        key(view, "released RIGHT", commands::settleDepth);
        key(view, "DELETE", commands::removeSelected);
        key(view, "INSERT", commands::insertSelected);
        for (BetweenKind kind : BetweenKind.values()) {
            key(view, String.valueOf(kind.key()), () -> commands.insertBetween(kind));
        }
        view.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                commands.settleDepth();
            }
        });
    }

    private static void key(JComponent view, String key, Runnable command) {
        view.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(key), key);
        view.getActionMap().put(key, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                command.run();
            }
        });
    }
}
