package org.taperwright.command.print;

import org.taperwright.library.exchange.json.JsonWriter;
import org.taperwright.mechanics.comparison.score.OrderMargin;
import org.taperwright.mechanics.comparison.score.Score;
import org.taperwright.mechanics.comparison.score.ScoreBoard;

/** Scores as JSON for programs: weights, what each score is made of, how far the weights can move. */
final class ScoreJson {
    private ScoreJson() {}

    static void on(JsonWriter out, ScoreBoard board) {
        out.name("score").beginObject(false);
        out.name("weights").beginObject(false);
        board.weights().byMetric().forEach((id, weight) -> out.name(id).number(weight));
        out.endObject();
        out.name("idle").beginList(true);
        board.idle().forEach(out::text);
        out.endList();
        out.name("designs").beginList(false);
        board.scores().forEach(score -> design(out, score));
        out.endList();
        OrderMargin margin = OrderMargin.of(board);
        margin.all().ifPresent(share -> out.name("orderMargin").number(share));
        out.name("singleMargins").beginObject(false);
        margin.single().forEach(move -> out.name(move.metric().id()).number(move.share()));
        out.endObject();
        out.endObject();
    }

    private static void design(JsonWriter out, Score score) {
        out.beginObject(false);
        out.name("contributions").beginObject(false);
        score.contributions().forEach(each -> out.name(each.metric().id()).number(each.value()));
        out.endObject();
        out.name("contributionBands").beginObject(false);
        score.contributions()
                .forEach(each -> each.band()
                        .ifPresent(band -> out.name(each.metric().id())
                                .beginList(true)
                                .number(band.low())
                                .number(band.high())
                                .endList()));
        out.endObject();
        score.total().ifPresent(total -> out.name("total").number(total));
        score.meanRatio().ifPresent(ratio -> out.name("meanRatio").number(ratio));
        score.meanRatioBand()
                .ifPresent(band -> out.name("meanRatioBand")
                        .beginList(true)
                        .number(band.low())
                        .number(band.high())
                        .endList());
        out.endObject();
    }
}
