package org.taperwright.shaping.rule;

import java.util.stream.IntStream;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** Which steps work at the end of the canal. */
final class AtTheEnd {
    /** A step this near to the working length is taken to reach it, mm: common practice, no source. */
    private static final double NEAR_MM = 0.5;

    /** Instruments up to this size scout, keep the canal open and recapitulate: common practice, no source. */
    private static final int SCOUTING_SIZE = 15;

    private AtTheEnd() {}

    /** Places of the steps that reach the working length, in order. */
    static int[] steps(ArrangedSequence arranged) {
        double reached = arranged.canal().workingLengthMm() - NEAR_MM;
        return IntStream.range(0, arranged.sequence().steps().size())
                .filter(i -> arranged.sequence().steps().get(i).depthMm() >= reached)
                .toArray();
    }

    /** Whether an instrument is small enough to scout or recapitulate rather than to widen. */
    static boolean scouts(Instrument instrument) {
        return instrument.size() <= SCOUTING_SIZE;
    }
}
