package org.taperwright.workbench.platform;

import org.openide.modules.OnStart;
import org.openide.windows.WindowManager;

/** What happens when the program starts: the library opens, and on a first start the cautions show. */
@OnStart
public final class ProgramStart implements Runnable {
    @Override
    public void run() {
        LiveColour.install();
        DeskProvider.get().open();
        WindowManager.getDefault().invokeWhenUIReady(Cautions::showOnFirstStart);
    }
}
