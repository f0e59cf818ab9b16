package org.taperwright.mechanics.comparison.sweep;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.work.Progress;

/** Assesses many settings, several at a time, and reads the metrics of each. */
final class Points {
    private final List<Metric> metrics;
    private final KnownAlloys alloys;
    private final Progress progress;

    Points(KnownAlloys alloys, List<Metric> metrics, Progress progress) {
        this.alloys = alloys;
        this.metrics = metrics;
        this.progress = progress;
    }

    List<SweepPoint> at(List<Setting> settings) {
        AtomicInteger done = new AtomicInteger();
        return settings.parallelStream()
                .map(setting -> {
                    SweepPoint point = at(setting);
                    int many = done.incrementAndGet();
                    progress.at((double) many / settings.size(), many + " of " + settings.size());
                    return point;
                })
                .toList();
    }

    SweepPoint here(Design design, DesignParameter parameter) {
        double place = parameter instanceof Amount amount ? amount.value().applyAsDouble(design) : 0;
        return at(new Setting(place, parameter.words(design), design));
    }

    private SweepPoint at(Setting setting) {
        progress.check();
        AssessmentResult result = Assessments.of(setting.design(), alloys, new StopsOnly(progress));
        if (result instanceof AssessmentResult.Assessed assessed) {
            Map<Metric, Double> values = new HashMap<>();
            metrics.forEach(metric -> values.put(metric, metric.value(assessed.assessment())));
            return new SweepPoint(setting, values, List.of());
        }
        return new SweepPoint(setting, Map.of(), ((AssessmentResult.Refused) result).faults());
    }

    /** Lets one of many computations be stopped, but not report: the whole reports by points. */
    private record StopsOnly(Progress whole) implements Progress {
        @Override
        public void at(double fraction, String what) {
            // the whole reports
        }

        @Override
        public boolean cancelled() {
            return whole.cancelled();
        }
    }
}
