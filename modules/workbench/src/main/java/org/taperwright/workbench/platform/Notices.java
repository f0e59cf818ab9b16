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

    /** Says that all is well. */
    static void tell(String headline, String detail) {
        show(headline, detail, () -> {}, NotificationDisplayer.Category.INFO);
    }

    /** Shows a message; a click on it runs the action. */
    static void show(String headline, String detail, Runnable clicked) {
        show(headline, detail, clicked, NotificationDisplayer.Category.WARNING);
    }

    private static void show(
            String headline, String detail, Runnable clicked, NotificationDisplayer.Category category) {
        EventThread.INSTANCE.execute(() -> NotificationDisplayer.getDefault()
                .notify(
                        headline,
                        ImageUtilities.loadImageIcon(ICON, false),
                        detail,
                        click -> clicked.run(),
                        NotificationDisplayer.Priority.HIGH,
                        category));
    }
}
