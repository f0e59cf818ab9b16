package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.mechanics.work.Progress;

/** Assesses catalogue entries: as their designs, with wider bands where a design is only assumed. */
public final class InstrumentAssessments {
    private InstrumentAssessments() {}

    /** The assessment of an entry; empty when its design cannot be computed, for which see {@link Assessments#of}. */
    public static Optional<InstrumentAssessment> of(Instrument instrument, Progress progress) {
        return Assessments.of(instrument.design(), progress) instanceof AssessmentResult.Assessed assessed
                ? Optional.of(new InstrumentAssessment(assessed.assessment(), Widening.of(instrument)))
                : Optional.empty();
    }

    /**
     * A comparison with the bands of some columns made wider, those of indices apart, which have none.
     *
     * @param widenings one for each column
     */
    public static Comparison widened(Comparison comparison, List<Optional<Widening>> widenings) {
        if (widenings.size() != comparison.columns().size()) {
            throw new IllegalArgumentException("one widening or none for each column");
        }
        List<ComparisonRow> rows =
                comparison.rows().stream().map(row -> widened(row, widenings)).toList();
        return new Comparison(comparison.columns(), comparison.datum(), rows, comparison.tradeOff());
    }

    private static ComparisonRow widened(ComparisonRow row, List<Optional<Widening>> widenings) {
        if (row.metric().standing() == Standing.INDEX) {
            return row;
        }
        List<ComparisonCell> cells = new ArrayList<>();
        for (int i = 0; i < widenings.size(); i++) {
            ComparisonCell cell = row.cells().get(i);
            cells.add(widenings
                    .get(i)
                    .map(wider -> new ComparisonCell(wider.of(cell.reading()), cell.ratio(), cell.ratioBand()))
                    .orElse(cell));
        }
        return new ComparisonRow(row.metric(), cells);
    }
}
