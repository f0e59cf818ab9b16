package org.taperwright.workbench.platform;

import javax.swing.event.ChangeListener;
import javax.swing.undo.CannotRedoException;
import javax.swing.undo.CannotUndoException;
import org.openide.awt.UndoRedo;
import org.openide.util.ChangeSupport;
import org.taperwright.workbench.api.Desk;

/** Lets the platform's Undo and Redo walk the desk's edits and show their names. */
final class DeskUndo implements UndoRedo {
    private final Desk desk;
    private final ChangeSupport listeners = new ChangeSupport(this);

    DeskUndo(Desk desk) {
        this.desk = desk;
        desk.onChange(any -> listeners.fireChange());
    }

    @Override
    public boolean canUndo() {
        return desk.nextUndo().isPresent();
    }

    @Override
    public boolean canRedo() {
        return desk.nextRedo().isPresent();
    }

    @Override
    public void undo() {
        if (!canUndo()) {
            throw new CannotUndoException();
        }
        desk.undo();
    }

    @Override
    public void redo() {
        if (!canRedo()) {
            throw new CannotRedoException();
        }
        desk.redo();
    }

    @Override
    public String getUndoPresentationName() {
        return desk.nextUndo().orElse("");
    }

    @Override
    public String getRedoPresentationName() {
        return desk.nextRedo().orElse("");
    }

    @Override
    public void addChangeListener(ChangeListener listener) {
        listeners.addChangeListener(listener);
    }

    @Override
    public void removeChangeListener(ChangeListener listener) {
        listeners.removeChangeListener(listener);
    }
}
