package org.taperwright.workbench.platform;

import java.util.concurrent.ThreadFactory;
import java.util.concurrent.atomic.AtomicInteger;

/** Makes daemon threads that carry a name, a little below the event thread's priority so that windows stay quick. */
final class NamedThreads implements ThreadFactory {
    private final String name;
    private final AtomicInteger made = new AtomicInteger();

    NamedThreads(String name) {
        this.name = name;
    }

    @Override
    public Thread newThread(Runnable work) {
        Thread thread = new Thread(work, "taperwright " + name + " " + made.incrementAndGet());
        thread.setDaemon(true);
        thread.setPriority(Thread.NORM_PRIORITY - 1);
        return thread;
    }
}
