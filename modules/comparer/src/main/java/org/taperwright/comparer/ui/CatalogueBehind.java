package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.SnapshotDifference;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.ThingId;
import org.taperwright.mechanics.work.Outcome;
import org.taperwright.workbench.api.Desk;

/**
 * Keeps the cloud behind a map in step with the catalogue: found in the background, told as it grows, and what is edited or taken
 * out leaves at once and comes back computed anew. Used on the event thread.
 */
final class CatalogueBehind {
    private final Desk desk;
    private final Consumer<Cloud> show;
    private final Runnable stopped;
    private Optional<Snapshot> from = Optional.empty();
    private List<Metric> metrics = List.of();
    private Cloud cloud = Cloud.NONE;
    private Object run = new Object();

    /**
     * @param show receives the cloud whenever there is another
     * @param stopped told when a person has stopped the computing
     */
    CatalogueBehind(Desk desk, Consumer<Cloud> show, Runnable stopped) {
        this.desk = desk;
        this.show = show;
        this.stopped = stopped;
    }

    /** The cloud as far as it is known. */
    Cloud cloud() {
        return cloud;
    }

    /** Shows none, and forgets what was computed for. */
    void clear() {
        from = Optional.empty();
        run = new Object();
        become(Cloud.NONE);
    }

    /** Follows the library, for the metrics of the axes. */
    void follow(List<Metric> wanted) {
        Snapshot now = desk.snapshot();
        boolean others = !wanted.equals(metrics) || from.isEmpty();
        if (others) {
            metrics = List.copyOf(wanted);
            compute(now, Cloud.NONE);
        } else if (from.get() != now) {
            SnapshotDifference since = now.since(from.get());
            if (touches(since, ThingKind.ALLOY)) {
                compute(now, Cloud.NONE);
            } else if (touches(since, ThingKind.INSTRUMENT)) {
                List<ThingId> gone = new ArrayList<>();
                since.removed().forEach(entry -> gone.add(entry.id()));
                since.changed().forEach(change -> gone.add(change.after().id()));
                compute(now, cloud.without(gone));
            } else {
                from = Optional.of(now);
            }
        }
    }

    private static boolean touches(SnapshotDifference since, ThingKind kind) {
        return since.added().stream().map(Entry::kind).anyMatch(kind::equals)
                || since.removed().stream().map(Entry::kind).anyMatch(kind::equals)
                || since.changed().stream().anyMatch(change -> change.after().kind() == kind);
    }

    private void compute(Snapshot now, Cloud meanwhile) {
        from = Optional.of(now);
        Object mine = new Object();
        run = mine;
        become(meanwhile);
        if (now.ofKind(ThingKind.INSTRUMENT).isEmpty()) {
            return;
        }
        Consumer<Cloud> growing = grown -> SwingUtilities.invokeLater(() -> {
            if (run == mine) {
                become(grown.over(meanwhile));
            }
        });
        desk.compute(this, "Catalogue behind the map", new CloudWork(now, metrics, growing), outcome -> {
            if (run == mine) {
                if (outcome instanceof Outcome.Current<Cloud> current) {
                    run = new Object();
                    become(current.value());
                } else if (outcome instanceof Outcome.Cancelled<Cloud> || outcome instanceof Outcome.Failed<Cloud>) {
                    stopped.run();
                }
            }
        });
    }

    private void become(Cloud next) {
        cloud = next;
        show.accept(next);
    }
}
