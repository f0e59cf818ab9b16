package org.taperwright.sequencer.ui.outcome;

import javax.swing.SwingUtilities;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.workbench.api.Work;

/** Work whose progress is also told in the window, and which can be stopped from there. */
final class WatchedWork<T> implements Work<T> {
    /** Is told on the event thread how far the work is. */
    interface Watcher {
        /** The fraction done, 0 to 1, and what is being done. */
        void at(double fraction, String what);
    }

    private final Work<T> work;
    private final Watcher watcher;
    private volatile boolean stopped;

    WatchedWork(Work<T> work, Watcher watcher) {
        this.work = work;
        this.watcher = watcher;
    }

    /** Asks it to stop. */
    void stop() {
        stopped = true;
    }

    @Override
    public T run(Progress progress) {
        return work.run(new Progress() {
            @Override
            public void at(double fraction, String what) {
                progress.at(fraction, what);
                SwingUtilities.invokeLater(() -> {
                    if (!cancelled()) {
                        watcher.at(fraction, what);
                    }
                });
            }

            @Override
            public boolean cancelled() {
                return stopped || progress.cancelled();
            }
        });
    }
}
