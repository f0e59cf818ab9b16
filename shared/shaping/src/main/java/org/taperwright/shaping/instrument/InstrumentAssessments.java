package org.taperwright.shaping.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.assessment.AssessmentResult;
import org.taperwright.mechanics.assessment.Assessments;
import org.taperwright.mechanics.comparison.Comparison;
import org.taperwright.mechanics.comparison.ComparisonCell;
import org.taperwright.mechanics.comparison.ComparisonRow;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Reading;
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
     * A comparison with the bands of some columns made wider, those of indices apart. The band of a ratio is made wider for
     * both designs in it: what is wrong in one assumption need not be wrong in the other.
     *
     * @param widenings one for each column
     */
    public static Comparison widened(Comparison comparison, List<Optional<Widening>> widenings) {
        if (widenings.size() != comparison.columns().size()) {
            throw new IllegalArgumentException("one widening or none for each column");
        }
        List<ComparisonRow> rows = comparison.rows().stream()
                .map(row -> widened(row, widenings, comparison.datum()))
                .toList();
        return new Comparison(comparison.columns(), comparison.datum(), rows, comparison.undominated());
    }

    private static ComparisonRow widened(ComparisonRow row, List<Optional<Widening>> widenings, int datum) {
        if (row.metric().standing() == Standing.INDEX) {
            return row;
        }
        List<ComparisonCell> cells = new ArrayList<>();
        for (int i = 0; i < widenings.size(); i++) {
            ComparisonCell cell = row.cells().get(i);
            Reading reading =
                    widenings.get(i).map(wider -> wider.of(cell.reading())).orElse(cell.reading());
            Optional<Band> ratioBand = cell.ratioBand();
            if (i != datum) {
                ratioBand = widened(widened(ratioBand, widenings.get(i)), widenings.get(datum));
            }
            cells.add(new ComparisonCell(reading, cell.ratio(), ratioBand));
        }
        return new ComparisonRow(row.metric(), cells);
    }

    private static Optional<Band> widened(Optional<Band> ratio, Optional<Widening> widening) {
        return widening.isEmpty()
                ? ratio
                : ratio.map(band -> new Band(
                        band.low() / widening.get().factor(),
                        band.high() * widening.get().factor()));
    }
}
