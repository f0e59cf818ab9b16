package org.taperwright.workbench.desk;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.mechanics.work.WorkCancelled;
import org.taperwright.workbench.api.Work;

/** One run of a piece of work: shown, stoppable, and ending in an outcome whatever happens. */
final class Computation<T> implements Progress {
    private static final Logger LOG = Logger.getLogger(Computation.class.getName());

    private final String label;
    private final FutureTask<T> task;
    private final WorkDisplay.Line line;
    private volatile boolean stopped;
    private volatile boolean superseded;

    Computation(String label, Work<T> work, WorkDisplay display) {
        this.label = label;
        this.task = new FutureTask<>(() -> work.run(this));
        this.line = display.begin(label, () -> stopped = true);
    }

    /** Runs the work here and says what became of it. */
    Outcome<T> outcome() {
        try {
            check();
            task.run();
            return new Outcome.Current<>(task.get());
        } catch (WorkCancelled | CancellationException stop) {
            return new Outcome.Cancelled<>();
        } catch (ExecutionException failure) {
            return failed(failure.getCause());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return new Outcome.Cancelled<>();
        } finally {
            line.end();
        }
    }

    private Outcome<T> failed(Throwable cause) {
        if (cause instanceof WorkCancelled) {
            return new Outcome.Cancelled<>();
        }
        LOG.log(Level.SEVERE, label + " failed", cause);
        String reason = cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
        return new Outcome.Failed<>(label + " failed: " + reason);
    }

    /** Asks it to stop because newer inputs have come; its outcome is of no interest any more. */
    void supersede() {
        superseded = true;
    }

    boolean superseded() {
        return superseded;
    }

    @Override
    public void at(double fraction, String what) {
        line.at(fraction, what);
    }

    @Override
    public boolean cancelled() {
        return stopped || superseded;
    }
}
