package org.taperwright.command.print;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.score.Contribution;
import org.taperwright.mechanics.comparison.score.OrderMargin;
import org.taperwright.mechanics.comparison.score.Score;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.comparison.score.WeightMove;
import org.taperwright.mechanics.quantity.Shown;

/** Scores as text for people: what each is made of, and how far the weights can move. */
final class ScoreText {
    private static final String NONE = "–";

    private ScoreText() {}

    static void on(Page page, Comparison comparison, ScoreBoard board) {
        page.part("Score by your weights: weight × logarithm of the ratio, turned so that more is better");
        page.table(table(comparison, board));
        board.idle().forEach(id -> page.line("\"" + id + "\" has a weight but does not count."));
        OrderMargin margin = OrderMargin.of(board);
        if (margin.all().isPresent()) {
            page.line("The order "
                    + String.join(
                            ", ",
                            board.order().stream().map(ComparisonText::letter).toList())
                    + " stays while no weight moves by more than "
                    + Shown.percent(margin.all().getAsDouble()) + " of itself.");
        }
        for (WeightMove move : margin.single()) {
            page.line("Alone, the weight of " + move.metric().label() + " changes it from "
                    + (move.share() > 0 ? "+" : "") + Shown.percent(move.share()) + " on ("
                    + ComparisonText.letter(move.behind()) + " draws level with " + ComparisonText.letter(move.ahead())
                    + ").");
        }
    }

    private static Table table(Comparison comparison, ScoreBoard board) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("metric"), Column.numbers("weight")));
        for (int i = 0; i < comparison.columns().size(); i++) {
            columns.add(Column.numbers(ComparisonText.letter(i)));
        }
        Table table = new Table(columns);
        board.weights().byMetric().forEach((id, weight) -> {
            List<String> cells = new ArrayList<>();
            for (Score score : board.scores()) {
                cells.add(score.contributions().stream()
                        .filter(each -> each.metric().id().equals(id))
                        .map(Contribution::value)
                        .map(value -> Shown.number(value, 2, 2))
                        .findFirst()
                        .orElse(NONE));
            }
            if (!board.idle().contains(id)) {
                cells.add(0, Shown.number(weight));
                cells.add(0, label(board, id));
                table.row(cells);
            }
        });
        table.row(totals(
                "sum",
                "",
                board,
                score -> score.total().isPresent() ? Shown.number(score.total().getAsDouble(), 2, 2) : NONE));
        table.row(totals(
                "as one ratio to the datum",
                "",
                board,
                score -> score.meanRatio().isPresent()
                        ? Shown.number(score.meanRatio().getAsDouble(), 2, 2)
                        : NONE));
        table.row(totals(
                "from 5 to 95 %",
                "",
                board,
                score -> score.meanRatioBand()
                        .map(band -> Shown.number(band.low(), 2, 2) + " to " + Shown.number(band.high(), 2, 2))
                        .orElse(NONE)));
        return table;
    }

    private static String label(ScoreBoard board, String id) {
        return board.scores().stream()
                .flatMap(score -> score.contributions().stream().map(Contribution::metric))
                .filter(metric -> metric.id().equals(id))
                .map(metric -> metric.label())
                .findFirst()
                .orElse(id);
    }

    private static List<String> totals(String label, String weight, ScoreBoard board, Function<Score, String> cell) {
        List<String> cells = new ArrayList<>(List.of(label, weight));
        board.scores().forEach(score -> cells.add(cell.apply(score)));
        return cells;
    }
}
