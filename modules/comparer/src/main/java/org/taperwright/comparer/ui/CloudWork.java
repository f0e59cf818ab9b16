package org.taperwright.comparer.ui;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.taperwright.library.store.Entry;
import org.taperwright.library.store.Snapshot;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Designs;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.workbench.api.Work;

/** Assesses the catalogue's instruments; those of one design once. */
record CloudWork(Snapshot snapshot) implements Work<Cloud> {
    @Override
    public Cloud run(Progress progress) {
        List<Entry> instruments = snapshot.ofKind(ThingKind.INSTRUMENT);
        Map<Design, Map<Metric, Double>> values = new HashMap<>();
        List<Cloud.Entry> entries = new ArrayList<>();
        int done = 0;
        for (Entry entry : instruments) {
            progress.check();
            progress.at((double) done++ / instruments.size(), entry.name());
            Design design = bare(((Instrument) entry.thing()).design());
            Map<Metric, Double> found = values.computeIfAbsent(design, each -> values(each, progress));
            if (!found.isEmpty()) {
                entries.add(new Cloud.Entry(entry.id(), entry.name(), found));
            }
        }
        return new Cloud(entries);
    }

    /** Without what enters no number, so that like designs are told to be alike. */
    private static Design bare(Design design) {
        return Designs.with(design).name("").note("").design();
    }

    private Map<Metric, Double> values(Design design, Progress progress) {
        Map<Metric, Double> values = new HashMap<>();
        if (Assessments.of(design, snapshot.alloys(), progress) instanceof AssessmentResult.Assessed assessed) {
            Metrics.all().forEach(metric -> values.put(metric, metric.value(assessed.assessment())));
        }
        return values;
    }
}
