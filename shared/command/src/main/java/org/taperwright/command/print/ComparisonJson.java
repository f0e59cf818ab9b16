package org.taperwright.command.print;

import java.util.List;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.Metric;

/** A comparison as JSON for programs: form {@code taperwright/comparison-result}. Version 2 added bands of ratios. */
public final class ComparisonJson {
    private ComparisonJson() {}

    /** Designs in the order compared; each metric's cells in the same order. */
    public static String of(String title, List<FoundDesign> found, Comparison comparison) {
        ResultJson json = new ResultJson("taperwright/comparison-result", 2);
        JsonWriter out = json.out();
        json.bands();
        out.name("title").text(title);
        out.name("datum").text(found.get(comparison.datum()).id().value());
        out.name("designs").beginList(false);
        for (int i = 0; i < found.size(); i++) {
            out.beginObject(false);
            out.name("id").text(found.get(i).id().value());
            out.name("name").text(found.get(i).design().name());
            out.name("source").text(found.get(i).origin().source());
            out.name("undominated").flag(comparison.undominated().get(i));
            json.remarks(comparison.columns().get(i).remarks());
            out.endObject();
        }
        out.endList();
        out.name("metrics").beginList(false);
        comparison.rows().forEach(row -> metric(row, json));
        out.endList();
        return json.finished();
    }

    private static void metric(ComparisonRow row, ResultJson json) {
        JsonWriter out = json.out();
        Metric metric = row.metric();
        out.beginObject(false);
        out.name("id").text(metric.id());
        out.name("label").text(metric.label());
        out.name("group").text(metric.group().label());
        out.name("unit").text(metric.unit().isEmpty() ? "1" : metric.unit());
        out.name("standing").text(metric.standing().word());
        out.name("wanted").text(wanted(metric.direction()));
        out.name("explanation").text(metric.explanation());
        out.name("source").text(metric.source());
        out.name("cells").beginList(false);
        for (ComparisonCell cell : row.cells()) {
            out.beginObject(true).name("value").number(cell.reading().value());
            json.band("band", cell.reading().band());
            cell.ratio().ifPresent(ratio -> out.name("ratio").number(ratio));
            json.band("ratioBand", cell.ratioBand());
            out.endObject();
        }
        out.endList();
        out.endObject();
    }

    private static String wanted(Metric.Direction direction) {
        return switch (direction) {
            case MORE -> "more";
            case LESS -> "less";
            case NEITHER -> "neither";
        };
    }
}
