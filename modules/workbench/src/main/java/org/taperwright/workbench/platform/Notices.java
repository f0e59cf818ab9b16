package org.taperwright.workbench.platform;

import org.openide.awt.NotificationDisplayer;
import org.openide.util.ImageUtilities;

/** Short messages that do not stop the work: a balloon at the status line, which stays in its list until dismissed. */
final class Notices {
    private static final String ICON = "org/taperwright/workbench/platform/notice.svg";

    private Notices() {}

    static void warn(String headline, String detail) {
        show(headline, detail, () -> {});
    }

    /** Shows a message; a click on it runs the action. */
    static void show(String headline, String detail, Runnable clicked) {
        EventThread.INSTANCE.execute(() -> NotificationDisplayer.getDefault()
                .notify(
                        headline,
                        ImageUtilities.loadImageIcon(ICON, false),
                        detail,
                        click -> clicked.run(),
                        NotificationDisplayer.Priority.HIGH,
                        NotificationDisplayer.Category.WARNING));
    }
}
