package org.taperwright.library.exchange;

import static org.taperwright.library.exchange.form.Field.required;
import static org.taperwright.library.exchange.form.Forms.identifier;
import static org.taperwright.library.exchange.form.Forms.line;
import static org.taperwright.library.exchange.form.Forms.list;
import static org.taperwright.library.exchange.form.Forms.number;
import static org.taperwright.library.exchange.form.Forms.thing;

import java.util.List;
import org.taperwright.library.exchange.form.Field;
import org.taperwright.library.exchange.form.RecordForm;
import org.taperwright.library.store.KeptResults;
import org.taperwright.library.store.KeptResults.KeptDesign;
import org.taperwright.library.store.KeptResults.KeptRow;
import org.taperwright.mechanics.design.ThingId;

/** The form of the results that a comparison was kept with. */
final class KeptResultsForm {
    private static final int MOST_DESIGNS = 6;
    private static final int MOST_METRICS = 1_000;

    private static final Field<KeptDesign, ThingId> ID =
            required("design", thing(), "the design's identifier", KeptDesign::id);
    private static final Field<KeptDesign, String> FINGERPRINT = required(
            "fingerprint",
            identifier(),
            "of the design's form: equal designs have equal ones",
            KeptDesign::fingerprint);
    private static final RecordForm<KeptDesign> DESIGN = new RecordForm<>(
            "keptDesign",
            "A design as it was.",
            true,
            List.of(ID, FINGERPRINT),
            values -> new KeptDesign(values.of(ID), values.of(FINGERPRINT)));

    private static final Field<KeptRow, String> METRIC =
            required("metric", identifier(), "identifier of the metric", KeptRow::metric);
    private static final Field<KeptRow, List<Double>> VALUES = required(
            "values",
            list(number(-1e300, 1e300, ""), 0, MOST_DESIGNS),
            "one for each design, in the metric's unit",
            KeptRow::values);
    private static final RecordForm<KeptRow> ROW = new RecordForm<>(
            "keptRow",
            "A metric's values as they were.",
            true,
            List.of(METRIC, VALUES),
            values -> new KeptRow(values.of(METRIC), values.of(VALUES)));

    private static final Field<KeptResults, String> MODEL =
            required("model", line(), "version of the model that computed them", KeptResults::model);
    private static final Field<KeptResults, List<KeptDesign>> DESIGNS =
            required("designs", list(DESIGN, 0, MOST_DESIGNS), "the designs computed", KeptResults::designs);
    private static final Field<KeptResults, List<KeptRow>> ROWS =
            required("rows", list(ROW, 0, MOST_METRICS), "one for each metric", KeptResults::rows);

    static final RecordForm<KeptResults> FORM = new RecordForm<>(
            "keptResults",
            "Results as they were when the comparison was kept.",
            false,
            List.of(MODEL, DESIGNS, ROWS),
            values -> new KeptResults(values.of(MODEL), values.of(DESIGNS), values.of(ROWS)));

    private KeptResultsForm() {}
}
