package org.taperwright.sequencer.outcome;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.Third;

/**
 * A line of the outcome.
 *
 * @param place the step's place in the sequence, from 0; empty for the whole canal
 * @param third the third it is about; empty for a whole step or the whole canal
 * @param label what it is, in words
 * @param detail a second line of words; may be empty
 * @param remarks what to beware of
 * @param works whether an instrument works in it, or is meant to
 * @param cells one for each column
 */
public record OutcomeRow(
        Optional<Integer> place,
        Optional<Third> third,
        String label,
        String detail,
        List<Fault> remarks,
        boolean works,
        List<OutcomeCell> cells) {
    public OutcomeRow {
        remarks = List.copyOf(remarks);
        cells = List.copyOf(cells);
    }

    /** Whether it stands for a whole step or the whole canal, not for a third of it. */
    public boolean principal() {
        return third.isEmpty();
    }

    /** Whether there is anything to tell under a column, be it that there is no number. */
    public boolean tells(OutcomeColumn column) {
        return works && (principal() || column.byThird());
    }

    /** The cell under a column. */
    public OutcomeCell cell(OutcomeColumn column) {
        return cells.get(column.ordinal());
    }
}
