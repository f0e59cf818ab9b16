package org.taperwright.command.print;

import java.util.List;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.assessment.Assessment;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;

/**
 * Assessments as JSON for programs: form {@code taperwright/assessments}. Version 2 made every quantity an object with
 * value, unit, standing, source and, of estimates and indices, band.
 */
public final class AssessmentJson {
    private static final int VERSION = 2;

    private AssessmentJson() {}

    /** The designs in the order asked for. */
    public static String of(List<FoundDesign> found, List<Assessment> assessments) {
        ResultJson json = new ResultJson("taperwright/assessments", VERSION);
        JsonWriter out = json.out();
        json.bands();
        out.name("assessments").beginList(false);
        for (int i = 0; i < assessments.size(); i++) {
            Assessment assessment = assessments.get(i);
            out.beginObject(false);
            out.name("id").text(found.get(i).id().value());
            out.name("name").text(assessment.design().name());
            out.name("origin").text(found.get(i).origin().source());
            out.name("alloy").text(assessment.alloy().id());
            out.name("alloySource")
                    .text(json.source(new JsonSource(
                            "alloy-" + assessment.alloy().id(),
                            assessment.alloy().source())));
            json.remarks(assessment.remarks());
            BladeJson.write(assessment, json);
            BenchJson.write(assessment, json);
            metrics(assessment, json);
            out.endObject();
        }
        out.endList();
        return json.finished();
    }

    /** Every metric's value, as a comparison has it. */
    private static void metrics(Assessment assessment, ResultJson json) {
        json.out().name("metrics").beginObject(false);
        for (Metric metric : Metrics.all()) {
            json.quantity(
                    metric.id(), metric.read(assessment), metric.unit(), metric.standing(), JsonSource.of(metric));
        }
        json.out().endObject();
    }
}
