package org.taperwright.mechanics.comparison.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far the weights can move before the order of the designs changes. Two designs' scores differ by
 * {@code D = sum w_k g_k} with the difference g_k of their gains, which is linear in the weights, so
 *
 * <pre>one weight alone:  w_k changes by the share  t = -D / (w_k g_k),  which counts when t >= -1
 * all at once:       every weight by at most the share  D / sum w_k |g_k|,  each to the worse side</pre>
 *
 * The margin is the least over all pairs of designs. All designs but those without a total are looked at.
 *
 * @param all the least share of its own value by which every weight must be free to move before some two designs draw level;
 *     absent with fewer than two scores, zero when two are level already, never above 1
 * @param single for each weight that can do so alone, its smallest move, in the order of the contributions
 */
public record OrderMargin(OptionalDouble all, List<WeightMove> single) {
    /** Two designs whose contributions differ by less are alike in that metric. */
    private static final double ALIKE = 1e-9;

    public OrderMargin {
        single = List.copyOf(single);
    }

    /** The margin of a board's order. */
    public static OrderMargin of(ScoreBoard board) {
        List<Integer> order = board.order();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                least = Math.min(least, between(board, order.get(i), order.get(j)));
            }
        }
        OptionalDouble all = order.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(least);
        List<WeightMove> single = new ArrayList<>();
        if (!order.isEmpty()) {
            for (int k = 0; k < board.scores().get(order.get(0)).contributions().size(); k++) {
                smallest(board, order, k).ifPresent(single::add);
            }
        }
        return new OrderMargin(all, single);
    }

    private static double between(ScoreBoard board, int ahead, int behind) {
        double difference = 0;
        double reach = 0;
        for (int k = 0; k < board.scores().get(ahead).contributions().size(); k++) {
            double part = weighted(board, k, ahead, behind);
            difference += part;
            reach += Math.abs(part);
        }
        return reach == 0 ? 0 : Math.max(0, difference) / reach;
    }

    private static Optional<WeightMove> smallest(ScoreBoard board, List<Integer> order, int k) {
        Optional<WeightMove> best = Optional.empty();
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                int ahead = order.get(i);
                int behind = order.get(j);
                double part = weighted(board, k, ahead, behind);
                double move = -difference(board, ahead, behind) / part;
                boolean possible = Math.abs(part) > ALIKE && move >= -1;
                if (possible
                        && (best.isEmpty()
                                || Math.abs(move) < Math.abs(best.get().share()))) {
                    best = Optional.of(new WeightMove(
                            board.scores().get(ahead).contributions().get(k).metric(), move, ahead, behind));
                }
            }
        }
        return best;
    }

    private static double difference(ScoreBoard board, int ahead, int behind) {
        return board.scores().get(ahead).total().orElseThrow()
                - board.scores().get(behind).total().orElseThrow();
    }

    private static double weighted(ScoreBoard board, int k, int ahead, int behind) {
        return board.scores().get(ahead).contributions().get(k).value()
                - board.scores().get(behind).contributions().get(k).value();
    }
}
