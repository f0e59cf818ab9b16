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
        private boolean measured;

        StatusLine(ProgressHandle handle) {
            this.handle = handle;
        }

        @Override
        public void at(double fraction, String what) {
            if (!measured) {
                measured = true;
                handle.switchToDeterminate(STEPS);
            }
            handle.progress(what, (int) Math.round(STEPS * Math.min(1, Math.max(0, fraction))));
        }

        @Override
        public void end() {
            handle.finish();
        }
    }
}
