package org.taperwright.shaping.population;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import org.taperwright.mechanics.work.ManyTasks;
import org.taperwright.mechanics.work.Progress;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.passage.spread.ShapedQuantity;
import org.taperwright.shaping.passage.stroke.Mesh;
import org.taperwright.shaping.passage.stroke.PreparedSequence;
import org.taperwright.shaping.passage.stroke.SequenceShaping;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.passage.stroke.ShapingConstants;
import org.taperwright.shaping.passage.stroke.StrokePlan;

/**
 * A sequence run over canals, each step as far from the end of instrumentation as in the sequence's own canal, at the usual constants
 * and on the {@link Mesh#COARSE coarse mesh}; shared among the machine's cores, with the same answer however many there are.
 *
 * @param canals number of canals
 * @param notMade in how many canals each step could not be made, by its place from 0; steps always made are absent
 * @param distributions of each quantity
 * @param worst the canals in which reserve, torque, life, transportation and dentine came out worst
 */
public record PopulationShaping(
        int canals, Map<Integer, Integer> notMade, List<Distribution> distributions, List<WorstCase> worst) {
    private static final Set<String> LESS_IS_WORSE = Set.of("torsionalReserve", "leastDentineMm");
    private static final Set<String> KEPT =
            Set.of("torsionalReserve", "torqueNmm", "lifeSpent", "transportedMm.1", "leastDentineMm");

    public PopulationShaping {
        notMade = Map.copyOf(notMade);
        distributions = List.copyOf(distributions);
        worst = List.copyOf(worst);
    }

    /** Runs a sequence over at least one canal. */
    public static PopulationShaping of(PreparedSequence prepared, List<Canal> canals, Progress progress) {
        int steps = prepared.instruments().size();
        List<ShapedQuantity> asked = ShapedQuantity.of(steps);
        List<double[]> rows = ManyTasks.all(canals.size(), "canal", progress, (place, inner) -> {
            ShapedSequence shaped = shaped(prepared, canals.get(place), Mesh.COARSE, inner);
            double[] row = new double[asked.size() + steps];
            for (int q = 0; q < asked.size(); q++) {
                row[q] = asked.get(q).value().apply(shaped).orElse(Double.NaN);
            }
            for (int i = 0; i < steps; i++) {
                boolean idle = prepared.arranged().step(i).uses().isEmpty();
                row[asked.size() + i] = idle || shaped.byPlace().containsKey(i) ? 0 : 1;
            }
            return row;
        });
        Map<Integer, Integer> notMade = new TreeMap<>();
        for (int i = 0; i < steps; i++) {
            int column = asked.size() + i;
            int count = (int) rows.stream().mapToDouble(row -> row[column]).sum();
            if (count > 0) {
                notMade.put(i, count);
            }
        }
        List<Distribution> distributions = new ArrayList<>();
        for (int q = 0; q < asked.size(); q++) {
            int column = q;
            double[] values = rows.stream()
                    .mapToDouble(row -> row[column])
                    .filter(Double::isFinite)
                    .toArray();
            if (values.length > 0) {
                distributions.add(distribution(asked.get(q), values));
            }
        }
        return new PopulationShaping(
                canals.size(), notMade, distributions, worst(prepared, canals, asked, rows, progress));
    }

    private static ShapedSequence shaped(PreparedSequence prepared, Canal canal, Mesh mesh, Progress progress) {
        return SequenceShaping.of(prepared.in(canal), canal, ShapingConstants.USUAL, StrokePlan.USUAL, mesh, progress);
    }

    private static Distribution distribution(ShapedQuantity quantity, double[] values) {
        Percentile of = new Percentile();
        of.setData(values);
        return new Distribution(quantity, values.length, of.evaluate(5), of.evaluate(50), of.evaluate(95));
    }

    /** For each name that is kept the worst over all steps. */
    private static List<WorstCase> worst(
            PreparedSequence prepared,
            List<Canal> canals,
            List<ShapedQuantity> asked,
            List<double[]> rows,
            Progress progress) {
        Map<String, int[]> found = new TreeMap<>();
        for (int q = 0; q < asked.size(); q++) {
            String name = asked.get(q).name();
            for (int c = 0; c < rows.size() && KEPT.contains(name); c++) {
                double badness = badness(name, rows.get(c)[q]);
                int[] before = found.get(name);
                if (Double.isFinite(badness)
                        && (before == null || badness > badness(name, rows.get(before[1])[before[0]]))) {
                    found.put(name, new int[] {q, c});
                }
            }
        }
        return found.values().stream()
                .map(at -> new WorstCase(
                        asked.get(at[0]),
                        rows.get(at[1])[at[0]],
                        canals.get(at[1]),
                        shaped(prepared, canals.get(at[1]), Mesh.FINE, progress)))
                .toList();
    }

    private static double badness(String name, double value) {
        return LESS_IS_WORSE.contains(name) ? -value : Math.abs(value);
    }
}
