package org.taperwright.workbench.platform;

import org.netbeans.api.progress.ProgressHandle;
import org.taperwright.workbench.desk.WorkDisplay;

/** Shows work that takes over 100 ms in the platform's status line, with a button to stop it. */
final class StatusLineWork implements WorkDisplay {
    private static final int DELAY_MS = 100;
    private static final int STEPS = 1000;

    @Override
    public Line begin(String label, Runnable stop) {
        ProgressHandle handle = ProgressHandle.createHandle(label, () -> {
            stop.run();
            return true;
        });
        handle.setInitialDelay(DELAY_MS);
        handle.start();
        return new StatusLine(handle);
    }

    private static final class StatusLine implements Line {
        private final ProgressHandle handle;
        private int furthest = -1;

        StatusLine(ProgressHandle handle) {
            this.handle = handle;
        }

        /** Keeps to the furthest point, since the platform refuses to go back and work may count its parts anew. */
        @Override
        public synchronized void at(double fraction, String what) {
            if (furthest < 0) {
                handle.switchToDeterminate(STEPS);
            }
            furthest = Math.max(furthest, (int) Math.round(STEPS * Math.min(1, Math.max(0, fraction))));
            handle.progress(what, furthest);
        }

        @Override
        public void end() {
            handle.finish();
        }
    }
}
