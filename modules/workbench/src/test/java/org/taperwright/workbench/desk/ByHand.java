package org.taperwright.workbench.desk;

import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.Executor;

/** Runs things when the test says so, one after the other. */
final class ByHand implements Executor {
    private final Queue<Runnable> waiting = new ArrayDeque<>();

    @Override
    public void execute(Runnable task) {
        waiting.add(task);
    }

    int waiting() {
        return waiting.size();
    }

    void runOne() {
        waiting.remove().run();
    }

    void runAll() {
        while (!waiting.isEmpty()) {
            runOne();
        }
    }
}
