package org.taperwright.catalogue.ui.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.quantity.Reading;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.InstrumentAssessment;
import org.taperwright.shaping.instrument.InstrumentAssessments;
import org.taperwright.shaping.instrument.Widening;

/**
 * The main numbers that follow from an instrument's design, each as people read it: value, 5 to 95 % band, standing.
 *
 * @param values in the order of {@link #METRICS}; none when the design cannot be computed
 * @param remark what makes the bands wider, or why there are no values; empty when neither is so
 */
record MainNumbers(List<String> values, String remark) {
    /** Flexible, strong, durable, sharp: one number for each, two for strength. */
    static final List<Metric> METRICS = List.of(
                    "bending-moment-45", "fracture-torque", "fracture-angle", "cycles-to-fracture", Metrics.CUTTING)
            .stream()
            .map(id -> Metrics.find(id).orElseThrow())
            .toList();

    MainNumbers {
        values = List.copyOf(values);
    }

    /** Works them out; takes some hundred milliseconds. */
    static MainNumbers of(Instrument instrument, Progress progress) {
        Optional<InstrumentAssessment> assessed = InstrumentAssessments.of(instrument, progress);
        if (assessed.isEmpty()) {
            return new MainNumbers(List.of(), "The design cannot be computed: see its checks in the Design window.");
        }
        List<String> values = new ArrayList<>();
        for (Metric metric : METRICS) {
            progress.check();
            values.add(words(metric, assessed.get()));
        }
        return new MainNumbers(
                values, assessed.get().widening().map(Widening::sentence).orElse(""));
    }

    private static String words(Metric metric, InstrumentAssessment assessed) {
        Reading reading = assessed.read(metric);
        Standing standing = assessed.standing(metric);
        String unit = metric.unit().isEmpty() ? "" : " " + metric.unit();
        String band = reading.band().map(each -> " (" + Shown.band(each) + ")").orElse("");
        return Shown.number(reading.value()) + unit + band + ", " + standing.word();
    }
}
