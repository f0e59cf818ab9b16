package org.taperwright.shaping.sequence;

import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;

/**
 * A sequence with everything it refers to at hand.
 *
 * @param sequence the sequence
 * @param canal the canal
 * @param motor the motor, if chosen
 * @param instruments one for each step, in the order of the steps
 * @param alloys the alloys that the instruments' designs can name
 */
public record ArrangedSequence(
        Sequence sequence, Canal canal, Optional<Motor> motor, List<Instrument> instruments, KnownAlloys alloys) {
    public ArrangedSequence {
        instruments = List.copyOf(instruments);
        if (instruments.size() != sequence.steps().size()) {
            throw new IllegalArgumentException("one instrument for each step");
        }
    }

    /** One whose instruments are of alloys that come with the program. */
    public ArrangedSequence(Sequence sequence, Canal canal, Optional<Motor> motor, List<Instrument> instruments) {
        this(sequence, canal, motor, instruments, KnownAlloys.SHIPPED);
    }
}
