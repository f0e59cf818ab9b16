package org.taperwright.sequencer.outcome;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.taperwright.shaping.population.Distribution;
import org.taperwright.shaping.population.PopulationShaping;
import org.taperwright.shaping.population.WorstCase;

/** What came of many canals, as lines of tables. */
public final class PopulationLines {
    /** Headings of the distributions. */
    public static final List<String> HEADINGS = List.of("Step", "Number", "5 %", "Half", "95 %", "Standing", "Canals");
    /** Headings of the worst cases. */
    public static final List<String> WORST_HEADINGS = List.of("Worst", "Canal", "Step", "Value", "5 to 95 % of canals");

    private static final Set<String> MAIN = Set.of(
            "torqueNmm", "torsionalReserve", "lifeSpent", "removedMm3", "greatestStrain", "tipForceN", "roomFilled");

    private PopulationLines() {}

    /** How the numbers are distributed: those of the whole canal first, then step by step. */
    public static List<List<String>> distributions(PopulationShaping population, List<Integer> places) {
        return java.util.stream.Stream.concat(
                        population.distributions().stream()
                                .filter(found -> found.quantity().step().isEmpty()
                                        && !found.quantity().name().startsWith("centringRatio")),
                        population.distributions().stream()
                                .filter(found -> found.quantity().step().isPresent())
                                .filter(found -> MAIN.contains(found.quantity().name())))
                .map(found -> line(found, places))
                .toList();
    }

    private static List<String> line(Distribution found, List<Integer> places) {
        ShownQuantity shown = ShownQuantity.of(found.quantity());
        return List.of(
                step(found.quantity().step(), places),
                shown.label(),
                shown.written(found.low()),
                shown.written(found.median()),
                shown.written(found.high()),
                found.quantity().standing().word(),
                Integer.toString(found.canals()));
    }

    /** The canals in which a number came out worst. */
    public static List<List<String>> worst(PopulationShaping population, List<Integer> places) {
        return population.worst().stream()
                .map(found -> line(found, population, places))
                .toList();
    }

    private static List<String> line(WorstCase found, PopulationShaping population, List<Integer> places) {
        ShownQuantity shown = ShownQuantity.of(found.quantity());
        String spread = population.distributions().stream()
                .filter(each -> each.quantity().name().equals(found.quantity().name())
                        && each.quantity().step().equals(found.quantity().step()))
                .findFirst()
                .map(each -> shown.written(each.low()) + " to " + shown.written(each.high()))
                .orElse("–");
        return List.of(
                shown.label(),
                found.canal().name().replaceFirst("^.*, ", ""),
                step(found.quantity().step(), places),
                shown.written(found.value()),
                spread);
    }

    /** In how many canals which steps could not be made, in a sentence. */
    public static String notMade(PopulationShaping population, List<Integer> places) {
        if (population.notMade().isEmpty()) {
            return "Every step could be made in every canal.";
        }
        return population.notMade().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(step ->
                        String.format(Locale.ROOT, "step %d in %d", places.get(step.getKey()) + 1, step.getValue()))
                .collect(Collectors.joining(", ", "Not made: ", " of " + population.canals() + " canals."));
    }

    private static String step(Optional<Integer> arranged, List<Integer> places) {
        return arranged.map(at -> Integer.toString(places.get(at) + 1)).orElse("all");
    }
}
