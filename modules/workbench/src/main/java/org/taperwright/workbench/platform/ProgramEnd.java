package org.taperwright.workbench.platform;

import org.openide.modules.OnStop;

/** What happens when the program ends: edits still waiting are stored and the library closes. */
@OnStop
public final class ProgramEnd implements Runnable {
    @Override
    public void run() {
        DeskProvider.get().close();
    }
}
