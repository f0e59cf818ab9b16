package org.taperwright.shaping.rule;

import java.util.List;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;

/** Which steps work at the end of the canal. */
final class AtTheEnd {
    /** A step this near to the working length is taken to reach it, mm: common practice, no source. */
    private static final double NEAR_MM = 0.5;

    /** Instruments up to this size scout, keep the canal open and recapitulate: common practice, no source. */
    private static final int SCOUTING_SIZE = 15;

    private AtTheEnd() {}

    /** The steps whose instrument reaches the working length, in order. */
    static List<Working> workings(ArrangedSequence arranged) {
        double reached = arranged.canal().workingLengthMm() - NEAR_MM;
        return arranged.workings().stream()
                .filter(working -> working.step().depthMm() >= reached)
                .toList();
    }

    /** Whether an instrument is small enough to scout or recapitulate rather than to widen. */
    static boolean scouts(Instrument instrument) {
        return instrument.size() <= SCOUTING_SIZE;
    }
}
