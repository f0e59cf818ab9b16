package org.taperwright.workbench.ui;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.event.KeyListener;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** What a person does to components, without a display: every method runs on the event thread. */
public final class Gestures {
    private Gestures() {}

    /** The component of a name, anywhere inside. */
    public static <T extends Component> T named(Container in, String name, Class<T> type) {
        return all(in).stream()
                .filter(part -> name.equals(part.getName()))
                .map(type::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no component is named " + name));
    }

    /** All components inside, at any depth. */
    public static List<Component> all(Container in) {
        List<Component> found = new ArrayList<>();
        for (Component child : in.getComponents()) {
            found.add(child);
            if (child instanceof Container container) {
                found.addAll(all(container));
            }
        }
        return found;
    }

    /** Types over a field's text and presses Enter. */
    public static void enter(JTextField field, String text) {
        Shots.onEventThread(() -> {
            field.setText(text);
            press(field, KeyEvent.VK_ENTER);
            release(field, KeyEvent.VK_ENTER);
            return field;
        });
    }

    /** Presses a key: listeners first, then the binding of the component or of one around it. */
    public static void press(JComponent on, int key) {
        press(on, key, 0);
    }

    /** Presses a key with modifiers. */
    public static void press(JComponent on, int key, int modifiers) {
        Shots.onEventThread(() -> {
            KeyEvent event = event(on, KeyEvent.KEY_PRESSED, key, modifiers);
            for (KeyListener listener : on.getKeyListeners()) {
                listener.keyPressed(event);
            }
            if (!event.isConsumed()) {
                perform(on, KeyStroke.getKeyStroke(key, modifiers));
            }
            return on;
        });
    }

    /** Lets a key go. */
    public static void release(JComponent on, int key) {
        Shots.onEventThread(() -> {
            KeyEvent event = event(on, KeyEvent.KEY_RELEASED, key, 0);
            for (KeyListener listener : on.getKeyListeners()) {
                listener.keyReleased(event);
            }
            return on;
        });
    }

    /** The focus leaves. */
    public static void leave(JComponent field) {
        Shots.onEventThread(() -> {
            for (FocusListener listener : field.getFocusListeners()) {
                listener.focusLost(new FocusEvent(field, FocusEvent.FOCUS_LOST));
            }
            return field;
        });
    }

    /** A mouse event of the left button at a place in the component. */
    public static void mouse(Component on, int kind, double x, double y) {
        Shots.onEventThread(() -> {
            int button = kind == MouseEvent.MOUSE_MOVED || kind == MouseEvent.MOUSE_DRAGGED ? 0 : MouseEvent.BUTTON1;
            int held = kind == MouseEvent.MOUSE_DRAGGED ? MouseEvent.BUTTON1_DOWN_MASK : 0;
            on.dispatchEvent(new MouseEvent(on, kind, 0, held, (int) x, (int) y, 1, false, button));
            return on;
        });
    }

    private static void perform(JComponent on, KeyStroke stroke) {
        Object own = on.getInputMap(JComponent.WHEN_FOCUSED).get(stroke);
        if (act(on, own)) {
            return;
        }
        for (Component at = on; at instanceof JComponent around; at = at.getParent()) {
            Object name = around.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                    .get(stroke);
            if (act(around, name)) {
                return;
            }
        }
    }

    private static boolean act(JComponent on, Object name) {
        Action action = name == null ? null : on.getActionMap().get(name);
        if (action == null || !action.isEnabled()) {
            return false;
        }
        action.actionPerformed(new ActionEvent(on, ActionEvent.ACTION_PERFORMED, String.valueOf(name)));
        return true;
    }

    private static KeyEvent event(Component on, int kind, int key, int modifiers) {
        return new KeyEvent(on, kind, 0, modifiers, key, KeyEvent.CHAR_UNDEFINED);
    }
}
