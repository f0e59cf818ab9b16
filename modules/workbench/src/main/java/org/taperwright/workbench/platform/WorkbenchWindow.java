package org.taperwright.workbench.platform;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.io.ObjectInput;
import java.io.ObjectOutput;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingConstants;
import org.openide.awt.UndoRedo;
import org.openide.windows.TopComponent;
import org.taperwright.library.store.ThingKind;
import org.taperwright.workbench.api.Desk;
import org.taperwright.workbench.ui.Ink;
import org.taperwright.workbench.ui.Prose;
import org.taperwright.workbench.ui.Spacing;

/**
 * A window of the workbench: it hosts one plain Swing panel, made when the library is open and given the desk. A
 * subclass says only its name, title, tooltip, the kinds of thing it works on, and how to make its panel.
 */
public abstract class WorkbenchWindow extends TopComponent {
    private static final Dimension SMALL = new Dimension(120, 80);

    private final Set<ThingKind> kinds;
    private boolean filled;
    private UndoRedo undo = UndoRedo.NONE;

    /**
     * Makes the frame of a window.
     *
     * @param name the name tests and settings know it by: its preferred identifier
     * @param title what stands on its tab
     * @param help one sentence on what it is for, shown when the pointer rests on the tab
     * @param kinds the kinds of thing it works on: opening such a thing brings this window to the front
     */
    protected WorkbenchWindow(String name, String title, String help, Set<ThingKind> kinds) {
        this.kinds = Set.copyOf(kinds);
        setName(name);
        setDisplayName(title);
        setToolTipText(help);
        setLayout(new BorderLayout());
        add(new JLabel("Opening the library…", SwingConstants.CENTER));
    }

    /** Makes the panel; called once, on the event thread, when the library is open and the window is shown first. */
    protected abstract JComponent content(Desk desk);

    /** The kinds of thing this window works on. */
    public final Set<ThingKind> kinds() {
        return kinds;
    }

    @Override
    protected void componentOpened() {
        if (!filled) {
            DeskProvider.get().whenOpen(this::fill);
            DeskProvider.get().whenRefused(this::explain);
        }
    }

    private void fill(Desk desk) {
        if (filled) {
            return;
        }
        filled = true;
        undo = new DeskUndo(desk);
        fillWith(content(desk));
    }

    private void explain(String reason) {
        if (!filled) {
            Prose why = new Prose("The library cannot be opened. " + reason, Ink::text, false);
            why.setBorder(Spacing.around(Spacing.APART));
            fillWith(why);
        }
    }

    private void fillWith(JComponent shown) {
        removeAll();
        add(shown);
        revalidate();
        repaint();
    }

    /** Small, whatever the panel would like: how the main window is divided is the user's own choice. */
    @Override
    public Dimension getMinimumSize() {
        return SMALL;
    }

    @Override
    public UndoRedo getUndoRedo() {
        return undo;
    }

    @Override
    public boolean requestFocusInWindow() {
        return filled ? getComponent(0).requestFocusInWindow() : super.requestFocusInWindow();
    }

    /** Writes nothing: what a window shows is in the library. */
    @Override
    public void writeExternal(ObjectOutput out) {
        // the window's place is kept by the platform
    }

    /** Reads nothing: what a window shows is in the library. */
    @Override
    public void readExternal(ObjectInput in) {
        // the window's place is kept by the platform
    }
}
