package org.taperwright.workbench.platform;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFrame;
import org.openide.windows.WindowManager;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.api.RefusedEdit;
import org.taperwright.workbench.ui.RefusalNote;

/** Says of an edit that was not made why not, beside the component at which the person is at work. */
final class RefusalPlace implements Consumer<RefusedEdit> {
    /** Begins to say so of a desk's edits; the next edit made takes it away. */
    static void on(Desk desk) {
        desk.onRefusal(new RefusalPlace());
        desk.onChange(any -> place().ifPresent(RefusalNote::takeAway));
    }

    @Override
    public void accept(RefusedEdit refused) {
        place().ifPresent(at -> RefusalNote.show(at, refused.sentence()));
    }

    private static Optional<JComponent> place() {
        Component focused =
                KeyboardFocusManager.getCurrentKeyboardFocusManager().getPermanentFocusOwner();
        if (focused instanceof JComponent component && component.isShowing()) {
            return Optional.of(component);
        }
        return WindowManager.getDefault().getMainWindow() instanceof JFrame frame
                ? Optional.of(frame.getRootPane())
                : Optional.empty();
    }
}
