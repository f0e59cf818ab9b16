package org.taperwright.comparer.ui;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.taperwright.mechanics.comparison.score.OrderMargin;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.comparison.score.WeightMove;
import org.taperwright.mechanics.quantity.Shown;

/** The order of the scores, and how far the weights can move before it changes, in words. */
final class ScoreWords {
    private static final int MOST = 3;

    private ScoreWords() {}

    static String of(ScoreBoard board, List<String> names) {
        StringBuilder text = new StringBuilder();
        OrderMargin margin = OrderMargin.of(board);
        String order = board.order().stream().map(names::get).collect(Collectors.joining(", then "));
        if (margin.all().isPresent()) {
            text.append("By these weights: ")
                    .append(order)
                    .append(". The order stays while no weight moves by more than ")
                    .append(Shown.percent(margin.all().getAsDouble()))
                    .append(" of itself.");
        }
        List<WeightMove> single = margin.single().stream()
                .sorted(Comparator.comparingDouble(move -> Math.abs(move.share())))
                .limit(MOST)
                .toList();
        if (!single.isEmpty()) {
            text.append("\nAlone, it changes soonest with ")
                    .append(single.stream().map(move -> words(move, names)).collect(Collectors.joining("; ")))
                    .append('.');
        }
        if (!board.idle().isEmpty()) {
            text.append("\nNot counted: ")
                    .append(String.join(", ", board.idle()))
                    .append('.');
        }
        return text.toString();
    }

    private static String words(WeightMove move, List<String> names) {
        return move.metric().label() + " " + (move.share() > 0 ? "+" : "") + Shown.percent(move.share()) + " ("
                + names.get(move.behind()) + " draws level with " + names.get(move.ahead()) + ")";
    }
}
