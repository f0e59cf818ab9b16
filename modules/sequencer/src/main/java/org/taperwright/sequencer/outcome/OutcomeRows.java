package org.taperwright.sequencer.outcome;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.passage.spread.WallQuantities;

/** The outcome as lines: every step, its thirds beneath it, and the whole canal at the end. */
public final class OutcomeRows {
    /** Stands for the whole canal where places are asked for. */
    public static final int WHOLE = -2;

    private final Shaped shaped;
    private final OutcomeCells cells;
    private final boolean banded;

    private OutcomeRows(Shaped shaped, OutcomeCells cells, boolean banded) {
        this.shaped = shaped;
        this.cells = cells;
        this.banded = banded;
    }

    /**
     * The lines of a result.
     *
     * @param bands its bands, once they are there
     * @param thirds at which places of the sequence the thirds are told one by one; {@value #WHOLE} stands for the whole canal
     */
    public static List<OutcomeRow> of(Shaped shaped, Optional<ShapingBands> bands, IntPredicate thirds) {
        return shaped.run()
                .map(run ->
                        new OutcomeRows(shaped, new OutcomeCells(shaped, run, bands), bands.isPresent()).all(thirds))
                .orElse(List.of());
    }

    private List<OutcomeRow> all(IntPredicate thirds) {
        List<OutcomeRow> rows = new ArrayList<>();
        int steps = shaped.arrangement().sequence().steps().size();
        for (int place = 0; place < steps; place++) {
            rows.add(step(place));
            if (thirds.test(place) && shaped.step(place).isPresent()) {
                for (Third third : Third.values()) {
                    rows.add(third(Optional.of(place), third, stepCells(place, Optional.of(third))));
                }
            }
        }
        rows.add(new OutcomeRow(
                Optional.empty(), Optional.empty(), "Whole canal", "", List.of(), true, wholeCells(Optional.empty())));
        if (thirds.test(WHOLE) && last().isPresent()) {
            for (Third third : Third.values()) {
                rows.add(third(Optional.empty(), third, wholeCells(Optional.of(third))));
            }
        }
        return rows;
    }

    private OutcomeRow step(int place) {
        List<Fault> remarks = shaped.remarksOn(place, banded);
        StepWords words = new StepWords(shaped, place);
        return new OutcomeRow(
                Optional.of(place),
                Optional.empty(),
                (place + 1) + "  " + words.name(),
                marked(words.detail(), remarks),
                remarks,
                words.works(),
                stepCells(place, Optional.empty()));
    }

    private static String marked(String detail, List<Fault> remarks) {
        String word = remarks.size() == 1 ? "see remark" : "see " + remarks.size() + " remarks";
        return remarks.isEmpty() ? detail : detail.isEmpty() ? word : detail + ", " + word;
    }

    private static OutcomeRow third(Optional<Integer> place, Third third, List<OutcomeCell> cells) {
        return new OutcomeRow(place, Optional.of(third), third.word(), "", List.of(), true, cells);
    }

    private List<OutcomeCell> stepCells(int place, Optional<Third> third) {
        return Arrays.stream(OutcomeColumn.values())
                .map(column -> shaped.step(place).isPresent() ? cells.of(place, column, third) : OutcomeCell.NONE)
                .toList();
    }

    private List<OutcomeCell> wholeCells(Optional<Third> third) {
        return Arrays.stream(OutcomeColumn.values())
                .map(column -> whole(column, third))
                .toList();
    }

    /** Of the whole: what has been removed in all, how the wall is in the end, and of the rest the step that came out worst. */
    private OutcomeCell whole(OutcomeColumn column, Optional<Third> third) {
        if (third.isPresent() && !column.byThird()) {
            return OutcomeCell.NONE;
        }
        return switch (column) {
            case REMOVED -> removed(third);
            case WORN, TRANSPORTED, DENTINE ->
                last().map(place -> cells.of(place, column, third)).orElse(OutcomeCell.NONE);
            case RESERVE -> worst(column, Comparator.reverseOrder(), "least");
            default -> worst(column, Comparator.naturalOrder(), "greatest");
        };
    }

    private OutcomeCell removed(Optional<Third> third) {
        double sum = made().stream()
                .map(shaped::step)
                .flatMap(Optional::stream)
                .mapToDouble(step -> third.map(in ->
                                Objects.requireNonNullElse(step.removedMm3().get(in), 0.0))
                        .orElse(step.wholeRemovedMm3()))
                .sum();
        return OutcomeCell.of(sum);
    }

    private OutcomeCell worst(OutcomeColumn column, Comparator<Double> worse, String word) {
        return made().stream()
                .map(place -> cells.of(place, column, Optional.empty())
                        .noted("The " + word + " of all steps: step " + (place + 1)))
                .filter(cell -> cell.value().isPresent())
                .max(Comparator.comparing(cell -> cell.value().orElseThrow(), worse))
                .orElse(OutcomeCell.NONE);
    }

    private List<Integer> made() {
        return shaped.places().stream()
                .filter(place -> shaped.step(place).isPresent())
                .toList();
    }

    private Optional<Integer> last() {
        return made().stream().max(Comparator.naturalOrder());
    }

    /** The name of a column's quantity, of a whole step or in a third. */
    static String quantity(OutcomeColumn column, Optional<Third> third) {
        return third.map(in -> WallQuantities.in(in, column.quantity())).orElse(column.quantity());
    }
}
