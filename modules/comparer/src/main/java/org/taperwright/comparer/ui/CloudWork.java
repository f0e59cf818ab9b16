package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.Consumer;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.comparison.Glance;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.ManyTasks;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.Work;

/**
 * Looks at the catalogue's instruments for the metrics of a map's axes, on all cores; those of one design once.
 *
 * @param snapshot the library
 * @param metrics of the axes
 * @param growing receives now and then, on the working thread, what has been found so far
 */
record CloudWork(Snapshot snapshot, List<Metric> metrics, Consumer<Cloud> growing) implements Work<Cloud> {
    private static final long EVERY_NS = 400_000_000L;

    @Override
    public Cloud run(Progress progress) {
        KnownAlloys alloys = snapshot.alloys();
        List<Entry> instruments = snapshot.ofKind(ThingKind.INSTRUMENT);
        Map<Design, List<Entry>> alike = new LinkedHashMap<>();
        for (Entry entry : instruments) {
            progress.check();
            Design design = Glance.bare(((Instrument) entry.thing()).design());
            alike.computeIfAbsent(design, none -> new ArrayList<>()).add(entry);
        }
        List<Design> designs = List.copyOf(alike.keySet());
        Queue<Cloud.Entry> found = new ConcurrentLinkedQueue<>();
        if (!designs.isEmpty()) {
            Growing telling = new Growing(progress, found, instruments.size(), growing);
            ManyTasks.all(designs.size(), "Design", telling, (place, stop) -> {
                Design design = designs.get(place);
                Map<Metric, Double> values = Glance.values(design, alloys, metrics, stop);
                if (!values.isEmpty()) {
                    alike.get(design).forEach(entry -> found.add(new Cloud.Entry(entry.id(), entry.name(), values)));
                }
                return place;
            });
        }
        return new Cloud(List.copyOf(found), 0);
    }

    /** Passes progress on, and at times what has been found so far. */
    private static final class Growing implements Progress {
        private final Progress whole;
        private final Queue<Cloud.Entry> found;
        private final int instruments;
        private final Consumer<Cloud> growing;
        private long last = System.nanoTime();

        Growing(Progress whole, Queue<Cloud.Entry> found, int instruments, Consumer<Cloud> growing) {
            this.whole = whole;
            this.found = found;
            this.instruments = instruments;
            this.growing = growing;
        }

        @Override
        public void at(double fraction, String what) {
            whole.at(fraction, what);
            long now = System.nanoTime();
            if (now - last > EVERY_NS) {
                last = now;
                List<Cloud.Entry> sofar = List.copyOf(found);
                growing.accept(new Cloud(sofar, Math.max(0, instruments - sofar.size())));
            }
        }

        @Override
        public boolean cancelled() {
            return whole.cancelled();
        }
    }
}
