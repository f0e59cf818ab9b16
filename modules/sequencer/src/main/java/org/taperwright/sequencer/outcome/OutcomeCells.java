package org.taperwright.sequencer.outcome;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.quantity.Band;
import org.taperwright.mechanics.quantity.Standing;
import org.taperwright.sequencer.outcome.StepNumbers.Key;
import org.taperwright.shaping.instrument.Drive;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.passage.Third;
import org.taperwright.shaping.passage.spread.BandedQuantity;
import org.taperwright.shaping.passage.spread.ShapingBands;
import org.taperwright.shaping.sequence.InstrumentStep;
import org.taperwright.shaping.sequence.Step;

/** The numbers of each step with their bands, under the names by which the engine knows them. */
final class OutcomeCells {
    private final Shaped shaped;
    private final StepNumbers numbers;
    private final Map<Key, Band> bands = new HashMap<>();
    private final boolean bandsThere;

    OutcomeCells(Shaped shaped, Shaped.Run run, Optional<ShapingBands> found) {
        this.shaped = shaped;
        numbers = run.numbers();
        bandsThere = found.isPresent();
        for (BandedQuantity banded : found.map(ShapingBands::quantities).orElse(List.of())) {
            banded.band().ifPresent(band -> bands.put(Key.of(banded.quantity()), band));
        }
    }

    /** The cell of a step at a place of the sequence that was made. */
    OutcomeCell of(int place, OutcomeColumn column, Optional<Third> third) {
        if (third.isPresent() && !column.byThird()) {
            return OutcomeCell.NONE;
        }
        Key key = new Key(shaped.places().indexOf(place), OutcomeRows.quantity(column, third));
        Optional<Double> value = numbers.find(key);
        boolean needsBand = column.standing() != Standing.COMPUTED && value.isPresent();
        Optional<Band> band = needsBand ? Optional.ofNullable(bands.get(key)) : Optional.empty();
        if (needsBand && bandsThere && band.isEmpty()) {
            return OutcomeCell.NONE.noted("Too many samples give no number, so that it has no band");
        }
        OutcomeCell cell = new OutcomeCell(value, band, needsBand && !bandsThere, "");
        if (column == OutcomeColumn.LIMIT) {
            return limitNmm(place)
                    .map(limit -> cell.times(column.factor() / limit))
                    .orElse(OutcomeCell.NONE);
        }
        return cell.times(column.factor());
    }

    /** The limit set in a powered step, or the most that the motor gives. */
    private Optional<Double> limitNmm(int place) {
        boolean powered = shaped.arrangement()
                .instruments()
                .get(place)
                .map(Instrument::drive)
                .filter(Drive.POWERED::equals)
                .isPresent();
        Step step = shaped.arrangement().sequence().steps().get(place);
        Optional<Double> set = step instanceof InstrumentStep work ? work.torqueNmm() : Optional.empty();
        return powered
                ? set.or(() -> shaped.arrangement()
                                .motor()
                                .map((Motor motor) -> motor.torqueNmm().most()))
                        .filter(limit -> limit > 0)
                : Optional.empty();
    }
}
