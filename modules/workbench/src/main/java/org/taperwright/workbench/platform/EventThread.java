package org.taperwright.workbench.platform;

import java.util.concurrent.Executor;
import javax.swing.SwingUtilities;

/** Runs things on the event thread: at once if called there, else as soon as it is free. */
enum EventThread implements Executor {
    /** The one there is. */
    INSTANCE;

    @Override
    public void execute(Runnable task) {
        if (SwingUtilities.isEventDispatchThread()) {
            task.run();
        } else {
            SwingUtilities.invokeLater(task);
        }
    }
}
