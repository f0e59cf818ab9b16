package org.taperwright.command.print;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.taperwright.command.table.Column;
import org.taperwright.command.table.Table;
import org.taperwright.library.comparison.KeptCheck;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.comparison.Dominance;
import org.taperwright.mechanics.comparison.GivesAndTakes;
import org.taperwright.mechanics.comparison.MetricGroup;
import org.taperwright.mechanics.comparison.TradeOff;
import org.taperwright.mechanics.comparison.score.ScoreBoard;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.shaping.instrument.Designation;

/** A comparison as text for people: designs by letter, values, ratios to the datum, the undominated designs. */
public final class ComparisonText {
    private static final String NONE = "–";

    private ComparisonText() {}

    /** The comparison under a title, with scores where there are weights; the caution at the end. */
    public static String of(String title, Comparison comparison, Optional<ScoreBoard> board, Optional<KeptCheck> kept) {
        Page page = new Page();
        page.title(title);
        page.table(designs(comparison));
        page.part("Values");
        page.table(cells(
                comparison,
                true,
                Column::numbers,
                cell -> Shown.number(cell.reading().value())));
        page.part("From 5 to 95 %, of the estimates and indices that have a band");
        page.table(cells(
                banded(comparison),
                false,
                Column::words,
                cell -> written(cell.reading().band())));
        page.part(
                "Ratios to " + letter(comparison.datum()) + ", the datum (Δ: differences, where a ratio says nothing)");
        page.table(cells(comparison, false, Column::numbers, ComparisonText::against));
        page.part("From 5 to 95 % of these, of the estimates and indices");
        page.table(cells(
                ratioBanded(comparison),
                false,
                Column::words,
                cell -> againstBand(cell).orElse(NONE)));
        page.line("What two designs share, such as the constants of one alloy, cancels in their ratio.");
        page.part("Trade-off between flexibility and cutting, by the samples of all bands");
        tradeOff(comparison).forEach(page::line);
        page.part("What each gives and takes against " + letter(comparison.datum()));
        for (int i = 0; i < comparison.columns().size(); i++) {
            String head = letter(i) + "  ";
            GivesAndTakes.of(comparison, i)
                    .ifPresent(each -> each.sentences().forEach(sentence -> page.line(head + sentence)));
        }
        board.filter(scores -> !scores.weights().isEmpty()).ifPresent(scores -> ScoreText.on(page, comparison, scores));
        kept.ifPresent(check -> page.part("Kept results").line(check.words()));
        return page.finished();
    }

    private static Table designs(Comparison comparison) {
        Table table = Table.of(
                Column.words(""),
                Column.words("design"),
                Column.words("size"),
                Column.words("section"),
                Column.words("alloy"),
                Column.words("motion"));
        for (int i = 0; i < comparison.columns().size(); i++) {
            Design design = comparison.columns().get(i).design();
            table.row(
                    letter(i),
                    design.name() + (i == comparison.datum() ? " (datum)" : ""),
                    Designation.of(design).text(),
                    SectionWords.of(design),
                    comparison.columns().get(i).alloy().label(),
                    design.motion().word());
        }
        return table;
    }

    private static Comparison banded(Comparison comparison) {
        return rowsWith(comparison, cell -> cell.reading().band().isPresent());
    }

    private static Comparison ratioBanded(Comparison comparison) {
        return rowsWith(comparison, cell -> againstBand(cell).isPresent());
    }

    private static Comparison rowsWith(Comparison comparison, Predicate<ComparisonCell> some) {
        return new Comparison(
                comparison.columns(),
                comparison.datum(),
                comparison.rows().stream()
                        .filter(row -> row.cells().stream().anyMatch(some))
                        .toList(),
                comparison.tradeOff());
    }

    /** The band of what {@link #against} writes. */
    private static Optional<String> againstBand(ComparisonCell cell) {
        boolean difference = cell.ratio().isEmpty() && cell.difference().value() != 0;
        return difference
                ? cell.difference().band().map(band -> "Δ " + Shown.band(band))
                : cell.ratioBand().map(Shown::band);
    }

    private static String written(Optional<Band> band) {
        return band.map(Shown::band).orElse(NONE);
    }

    private static String against(ComparisonCell cell) {
        if (cell.ratio().isPresent()) {
            return Shown.number(cell.ratio().getAsDouble(), 2, 2);
        }
        double difference = cell.difference().value();
        return difference == 0 ? NONE : (difference > 0 ? "Δ +" : "Δ ") + Shown.number(difference);
    }

    private static Table cells(
            Comparison comparison,
            boolean units,
            Function<String, Column> column,
            Function<ComparisonCell, String> written) {
        List<Column> columns = new ArrayList<>(List.of(Column.words("metric")));
        if (units) {
            columns.add(Column.words("unit"));
            columns.add(Column.words("standing"));
        }
        for (int i = 0; i < comparison.columns().size(); i++) {
            columns.add(column.apply(letter(i)));
        }
        Table table = new Table(columns);
        Optional<MetricGroup> group = Optional.empty();
        for (ComparisonRow row : comparison.rows()) {
            if (!group.equals(Optional.of(row.metric().group()))) {
                group = Optional.of(row.metric().group());
                table.row(heading(group.get().label(), columns.size()));
            }
            List<String> cells = new ArrayList<>(List.of("  " + row.metric().label()));
            if (units) {
                cells.add(row.metric().unit());
                cells.add(row.metric().standing().word());
            }
            row.cells().forEach(cell -> cells.add(written.apply(cell)));
            table.row(cells);
        }
        return table;
    }

    private static List<String> heading(String label, int columns) {
        List<String> cells = new ArrayList<>(List.of(label));
        while (cells.size() < columns) {
            cells.add("");
        }
        return cells;
    }

    private static List<String> tradeOff(Comparison comparison) {
        List<String> lines = new ArrayList<>();
        for (Dominance dominance : Dominance.values()) {
            List<String> letters = new ArrayList<>();
            for (int i = 0; i < comparison.columns().size(); i++) {
                TradeOff.Place place = comparison.tradeOff().places().get(i);
                if (place.dominance() == dominance) {
                    letters.add(letter(i) + " (" + Shown.number(100 * place.share(), 0, 0) + " %)");
                }
            }
            if (!letters.isEmpty()) {
                lines.add(String.format("%-21s %s", dominance.words(), String.join(", ", letters)));
            }
        }
        lines.add(
                "A design is dominated where another is at least as good in both and better in one; (share of samples in "
                        + "which none is).");
        return lines;
    }

    static String letter(int column) {
        return String.valueOf((char) ('A' + column));
    }
}
