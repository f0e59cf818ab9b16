package org.taperwright.mechanics.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a design gives and takes against the datum, in plain words computed from the numbers. No verdict: which of it matters is
 * for whoever chooses.
 *
 * @param design the design's name
 * @param datum the datum's name
 * @param gives where it differs to the wanted side, the furthest first
 * @param takes where it differs to the other side, the furthest first
 * @param alike where it is not told apart from the datum
 */
public record GivesAndTakes(
        String design, String datum, List<Statement> gives, List<Statement> takes, List<Statement> alike) {
    private static final int MOST = 4;

    public GivesAndTakes {
        gives = List.copyOf(gives);
        takes = List.copyOf(takes);
        alike = List.copyOf(alike);
    }

    /** What a column gives and takes; nothing for the datum itself. */
    public static Optional<GivesAndTakes> of(Comparison comparison, int column) {
        if (column == comparison.datum()) {
            return Optional.empty();
        }
        List<Statement> all = new ArrayList<>();
        for (ComparisonRow row : comparison.rows()) {
            ComparisonCell cell = row.cells().get(column);
            if (row.metric().saying().isPresent() && cell.ratio().orElse(0) > 0) {
                all.add(new Statement(row.metric(), cell.ratio().getAsDouble(), cell.ratioBand()));
            }
        }
        return Optional.of(new GivesAndTakes(
                comparison.columns().get(column).design().name(),
                comparison.columns().get(comparison.datum()).design().name(),
                furthest(all.stream()
                        .filter(each -> each.toldApart() && each.wanted())
                        .toList()),
                furthest(all.stream()
                        .filter(each -> each.toldApart() && !each.wanted())
                        .toList()),
                all.stream().filter(each -> !each.toldApart()).toList()));
    }

    private static List<Statement> furthest(List<Statement> some) {
        return some.stream()
                .sorted(Comparator.comparingDouble(statement -> -statement.distance()))
                .limit(MOST)
                .toList();
    }

    /** The sentences, without the design's name. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        add(sentences, "For: ", gives.stream().map(Statement::words).collect(Collectors.joining("; ")));
        add(sentences, "Against: ", takes.stream().map(Statement::words).collect(Collectors.joining("; ")));
        add(
                sentences,
                "Not told apart: ",
                alike.stream().map(each -> lower(each.metric().label())).collect(Collectors.joining("; ")));
        return sentences;
    }

    /** All in one line: {@code Teasel 25/.04 against Marram 25/.04. For: … Against: …}. */
    public String text() {
        return design + " against " + datum + ". " + String.join(" ", sentences());
    }

    private static void add(List<String> sentences, String head, String words) {
        if (!words.isEmpty()) {
            sentences.add(head + words + ".");
        }
    }

    private static String lower(String label) {
        return label.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + label.substring(1);
    }
}
