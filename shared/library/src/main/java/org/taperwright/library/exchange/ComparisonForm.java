package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.optional;
import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Field.standing;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.name;
import static org.taperwright.library.exchange.form.Forms.note;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.FieldValues;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.MeasuredOn;
import org.taperwright.library.store.MetricRows;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.design.ThingId;

/** The form of a comparison. */
final class ComparisonForm {
    private static final int MOST_DESIGNS = 6;
    private static final int MOST_METRICS = 1_000;
    private static final int MOST_TABLES = 50;

    private static final Field<SavedComparison, String> NAME =
            required("name", name(), "what people call it", SavedComparison::name);
    private static final Field<SavedComparison, List<ThingId>> DESIGNS = required(
            "designs", list(thing(), 0, MOST_DESIGNS), "identifiers of the designs compared", SavedComparison::designs);
    private static final Field<SavedComparison, ThingId> DATUM =
            required("datum", thing(), "identifier of the design the others are held against", SavedComparison::datum);
    private static final Field<SavedComparison, String> NOTE =
            standing("note", "", note(), "free text", SavedComparison::note);

    private static final Field<Weight, String> METRIC =
            required("metric", identifier(), "identifier of the metric", Weight::metric);
    private static final Field<Weight, Double> WEIGHT =
            required("weight", number(0, 1_000_000, ""), "how much it counts", Weight::weight);
    private static final RecordForm<Weight> WEIGHT_FORM = new RecordForm<>(
            "weight",
            "How much a metric counts in the score.",
            true,
            List.of(METRIC, WEIGHT),
            values -> new Weight(values.of(METRIC), values.of(WEIGHT)));
    private static final Field<SavedComparison, List<Weight>> WEIGHTS = standing(
            "weights",
            List.of(),
            list(WEIGHT_FORM, 0, MOST_METRICS),
            "the user's weights for a score; left out when there is none",
            comparison -> comparison.weights().byMetric().entrySet().stream()
                    .map(each -> new Weight(each.getKey(), each.getValue()))
                    .toList());
    private static final Field<SavedComparison, List<String>> PINNED = standing(
            "pinned",
            List.of(),
            list(identifier(), 0, MOST_METRICS),
            "metrics that stand above the others, in their order",
            comparison -> comparison.rows().pinned());
    private static final Field<SavedComparison, List<String>> HIDDEN = standing(
            "hidden",
            List.of(),
            list(identifier(), 0, MOST_METRICS),
            "metrics that are not shown",
            comparison -> comparison.rows().hidden());
    private static final Field<SavedComparison, Optional<KeptResults>> KEPT =
            optional("kept", KeptResultsForm.FORM, "the results it was kept with", SavedComparison::kept);

    private static final Field<SavedComparison, List<MeasuredOn>> MEASURED = standing(
            "measured",
            List.of(),
            list(MeasuredForm.FORM, 0, MOST_TABLES),
            "what was measured of its designs on a bench",
            SavedComparison::measured);

    /** A weight as it stands in the form. */
    private record Weight(String metric, double weight) {}

    /** As version 1 had it: without weights, choice of rows and kept results. */
    static final RecordForm<SavedComparison> VERSION_1 = form(
            List.of(NAME, DESIGNS, DATUM, NOTE),
            values -> new SavedComparison(values.of(NAME), values.of(DESIGNS), values.of(DATUM), values.of(NOTE)));

    /** As version 2 had it: without measurements. */
    static final RecordForm<SavedComparison> VERSION_2 =
            form(List.of(NAME, DESIGNS, DATUM, WEIGHTS, PINNED, HIDDEN, KEPT, NOTE), values -> made(values, List.of()));

    static final RecordForm<SavedComparison> FORM = form(
            List.of(NAME, DESIGNS, DATUM, WEIGHTS, PINNED, HIDDEN, KEPT, MEASURED, NOTE),
            values -> made(values, values.of(MEASURED)));

    private ComparisonForm() {}

    private static SavedComparison made(FieldValues values, List<MeasuredOn> measured) {
        return new SavedComparison(
                values.of(NAME),
                values.of(DESIGNS),
                values.of(DATUM),
                weights(values.of(WEIGHTS)),
                new MetricRows(values.of(PINNED), values.of(HIDDEN)),
                values.of(KEPT),
                measured,
                values.of(NOTE));
    }

    private static RecordForm<SavedComparison> form(
            List<Field<SavedComparison, ?>> fields, Function<FieldValues, SavedComparison> made) {
        return new RecordForm<>("comparison", "Designs held against a datum.", false, fields, made);
    }

    private static Weights weights(List<Weight> list) {
        Map<String, Double> byMetric = new TreeMap<>();
        for (Weight each : list) {
            if (byMetric.put(each.metric(), each.weight()) != null) {
                throw new IllegalArgumentException("weighs " + each.metric() + " twice");
            }
        }
        return new Weights(byMetric);
    }
}
