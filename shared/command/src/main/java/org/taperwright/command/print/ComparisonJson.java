package org.taperwright.command.print;

import java.util.List;
import java.util.Optional;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.library.comparison.KeptCheck;
import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.GivesAndTakes;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Statement;
import org.taperwright.mechanics.comparison.TradeOff;
import org.taperwright.mechanics.comparison.score.ScoreBoard;

/** A comparison as JSON for programs: form {@code taperwright/comparison-result}. Version 2 added bands of ratios, how
 * sure the trade-off is, what each design gives and takes, and scores. */
public final class ComparisonJson {
    private ComparisonJson() {}

    /** Designs in the order compared; each metric's cells in the same order. */
    public static String of(
            String title,
            List<FoundDesign> found,
            Comparison comparison,
            Optional<ScoreBoard> board,
            Optional<KeptCheck> kept) {
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
            TradeOff.Place place = comparison.tradeOff().places().get(i);
            out.name("undominated").flag(place.undominated());
            out.name("dominance").text(place.dominance().words());
            out.name("undominatedShare").number(place.share());
            givesAndTakes(comparison, i, out);
            json.remarks(comparison.columns().get(i).remarks());
            out.endObject();
        }
        out.endList();
        out.name("metrics").beginList(false);
        comparison.rows().forEach(row -> metric(row, json));
        out.endList();
        board.filter(scores -> !scores.weights().isEmpty()).ifPresent(scores -> ScoreJson.on(out, scores));
        kept.ifPresent(check -> out.name("kept")
                .beginObject(true)
                .name("model")
                .text(check.model())
                .name("compared")
                .number(check.compared())
                .name("changed")
                .number(check.changes().size())
                .endObject());
        return json.finished();
    }

    private static void givesAndTakes(Comparison comparison, int column, JsonWriter out) {
        Optional<GivesAndTakes> found = GivesAndTakes.of(comparison, column);
        if (found.isPresent()) {
            GivesAndTakes each = found.get();
            words("gives", each.gives().stream().map(Statement::words).toList(), out);
            words("takes", each.takes().stream().map(Statement::words).toList(), out);
            words(
                    "notToldApart",
                    each.alike().stream().map(s -> s.metric().id()).toList(),
                    out);
        }
    }

    private static void words(String name, List<String> words, JsonWriter out) {
        out.name(name).beginList(words.isEmpty());
        words.forEach(out::text);
        out.endList();
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
