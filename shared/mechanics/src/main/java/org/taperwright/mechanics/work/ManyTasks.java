package org.taperwright.mechanics.work;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;

/** Like tasks shared among the machine's cores; answers come in the order of the tasks, so they do not hang on which ended first. */
public final class ManyTasks {
    private static final long LOOK_MS = 50;

    private ManyTasks() {}

    /** One of many; asks the progress whether to stop, and must not share what it changes with another. */
    public interface Task<T> {
        /** The answer at a place from 0. */
        T at(int place, Progress progress);
    }

    /**
     * Does all tasks; reports from the caller's thread only.
     *
     * @throws WorkCancelled when the answers are no longer wanted; no task is then left running for long
     */
    public static <T> List<T> all(int count, String what, Progress progress, Task<T> task) {
        AtomicBoolean stopped = new AtomicBoolean();
        ExecutorService cores = Executors.newFixedThreadPool(
                Math.max(1, Math.min(count, Runtime.getRuntime().availableProcessors())));
        try {
            List<Future<T>> futures = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                int place = i;
                futures.add(cores.submit(() -> task.at(place, new Quiet(stopped))));
            }
            List<T> answers = new ArrayList<>();
            for (Future<T> future : futures) {
                progress.at((double) answers.size() / count, what + " " + (answers.size() + 1) + " of " + count);
                answers.add(answer(future, progress));
            }
            return answers;
        } finally {
            stopped.set(true);
            cores.shutdownNow();
        }
    }

    private static <T> T answer(Future<T> future, Progress progress) {
        while (true) {
            progress.check();
            try {
                return future.get(LOOK_MS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException later) {
                continue;
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new WorkCancelled();
            } catch (ExecutionException failed) {
                if (failed.getCause() instanceof RuntimeException cause) {
                    throw cause;
                }
                if (failed.getCause() instanceof Error cause) {
                    throw cause;
                }
                throw new CancellationException(failed.toString());
            }
        }
    }

    private record Quiet(AtomicBoolean stopped) implements Progress {
        @Override
        public void at(double fraction, String what) {
            // the caller's thread reports
        }

        @Override
        public boolean cancelled() {
            return stopped.get();
        }
    }
}
