package org.taperwright.library.store;

import java.time.Clock;
import java.time.Duration;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Takes a backup from time to time, on the executor given, until it is closed. */
public final class TimedBackups implements AutoCloseable {
    private final ScheduledFuture<?> times;

    /**
     * Begins.
     *
     * @param backups the library's backups
     * @param first how long to wait for the first
     * @param every how long from the end of one to the next
     * @param executor where they are taken
     * @param clock when
     * @param told what came of each
     */
    public TimedBackups(
            Backups backups,
            Duration first,
            Duration every,
            ScheduledExecutorService executor,
            Clock clock,
            Consumer<BackupResult> told) {
        times = executor.scheduleWithFixedDelay(
                () -> told.accept(backups.take(clock.instant())),
                first.toMillis(),
                every.toMillis(),
                TimeUnit.MILLISECONDS);
    }

    @Override
    public void close() {
        times.cancel(false);
    }
}
