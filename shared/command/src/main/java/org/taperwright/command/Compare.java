package org.taperwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.taperwright.command.input.BadInput;
import org.taperwright.command.input.FoundDesign;
import org.taperwright.command.input.Shelf;
import org.taperwright.command.print.ComparisonJson;
import org.taperwright.command.print.ComparisonText;
import org.taperwright.library.comparison.Keeping;
import org.taperwright.library.comparison.KeptCheck;
import org.taperwright.library.exchange.ReadThing;
import org.taperwright.library.store.SavedComparison;
import org.taperwright.library.store.ThingKind;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.Comparisons;
import org.taperwright.mechanics.comparison.Metric;
import org.taperwright.mechanics.comparison.Metrics;
import org.taperwright.mechanics.comparison.score.Purpose;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.comparison.score.Weights;
import org.taperwright.mechanics.design.ThingId;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb {@code compare}: two to six designs side by side, against one of them. */
@Command(
        name = "compare",
        description = {
            "Sets two to six designs side by side: each metric's value and its ratio to the datum's, which designs no "
                    + "other beats in both flexibility and cutting, what each gives and takes, and with weights a score.",
            ""
        })
final class Compare implements Callable<Integer> {
    private static final int LEAST = 2;
    private static final int MOST = 6;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Given given = new Given();

    @Option(
            names = "--datum",
            paramLabel = "NAME",
            description =
                    "The design that ratios are taken against: its name, identifier or file. The first one unless "
                            + "given.")
    private Optional<String> datum = Optional.empty();

    @Option(
            names = "--weight",
            paramLabel = "METRIC=NUMBER",
            description =
                    "How much a metric counts in the score, by its identifier (--json shows them). May be repeated.")
    private Map<String, Double> weights = new TreeMap<>();

    @Option(
            names = "--purpose",
            paramLabel = "NAME",
            description =
                    "Weights to begin with: narrow-curve, coronal-flaring, retreatment or teaching. A beginning, not a "
                            + "recommendation.")
    private Optional<String> purpose = Optional.empty();

    @Parameters(
            arity = "0..*",
            paramLabel = "DESIGN",
            description = "A file in JSON form that holds designs or instruments, or with --demo or --from a name or "
                    + "identifier. With --demo or --from and no DESIGN, the first comparison there.")
    private List<String> designs = new ArrayList<>();

    @Override
    public Integer call() {
        Shelf shelf = given.shelf();
        Optional<SavedComparison> saved = designs.isEmpty() ? Optional.of(first(shelf)) : Optional.empty();
        List<String> words = saved.isPresent()
                ? saved.get().designs().stream().map(ThingId::value).toList()
                : designs;
        List<FoundDesign> found = Designs.found(words, shelf);
        if (found.size() < LEAST || found.size() > MOST) {
            throw BadInput.of(
                    found.size() == 1 ? "there is only one design" : "there are " + found.size() + " designs",
                    "expected two to six");
        }
        int column = column(
                found, datum.or(() -> saved.map(comparison -> comparison.datum().value())));
        Comparison comparison = Comparisons.of(Designs.assessed(found, shelf), column);
        String title = saved.map(SavedComparison::name).orElse("Comparison");
        Optional<ScoreBoard> board = Optional.of(ScoreBoard.of(comparison, weights(saved)));
        Optional<KeptCheck> kept = saved.flatMap(SavedComparison::kept)
                .map(results -> Keeping.check(
                        results, comparison, found.stream().map(FoundDesign::id).toList()));
        String text = given.json()
                ? ComparisonJson.of(title, found, comparison, board, kept)
                : ComparisonText.of(title, comparison, board, kept);
        spec.commandLine().getOut().print(text);
        return Main.DONE;
    }

    /** Those asked for, over a purpose's or those saved with the comparison. */
    private Weights weights(Optional<SavedComparison> saved) {
        Weights all = purpose.map(Compare::purpose)
                .or(() -> saved.map(SavedComparison::weights))
                .orElse(Weights.NONE);
        for (Map.Entry<String, Double> each : weights.entrySet()) {
            boolean counts =
                    Metrics.find(each.getKey()).filter(ScoreBoard::canCount).isPresent();
            if (!counts) {
                throw BadInput.of(
                        "--weight: \"" + each.getKey() + "\" is no metric that can count",
                        "expected one of "
                                + Metrics.all().stream()
                                        .filter(ScoreBoard::canCount)
                                        .map(Metric::id)
                                        .collect(Collectors.joining(", ")));
            }
            if (!(each.getValue() >= 0) || each.getValue().isInfinite()) {
                throw BadInput.of(
                        "--weight: " + each.getKey() + " is " + each.getValue(), "expected a number not below zero");
            }
            all = all.with(each.getKey(), each.getValue());
        }
        return all;
    }

    private static Weights purpose(String name) {
        return Purpose.find(name)
                .map(Purpose::weights)
                .orElseThrow(() -> BadInput.of(
                        "--purpose: \"" + name + "\" is none",
                        "expected one of "
                                + Purpose.all().stream().map(Purpose::id).collect(Collectors.joining(", "))));
    }

    private static SavedComparison first(Shelf shelf) {
        List<ReadThing> comparisons = shelf.all(ThingKind.COMPARISON);
        if (comparisons.isEmpty()) {
            throw BadInput.of("no design is named", "expected two to six, or --demo for the demo library's comparison");
        }
        return (SavedComparison) comparisons.get(0).thing();
    }

    private static int column(List<FoundDesign> found, Optional<String> datum) {
        if (datum.isEmpty()) {
            return 0;
        }
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).answersTo(datum.get())) {
                return i;
            }
        }
        throw BadInput.of(
                "--datum: \"" + datum.get() + "\" is not among the designs compared",
                "expected one of "
                        + found.stream().map(each -> each.design().name()).collect(Collectors.joining(", ")));
    }
}
