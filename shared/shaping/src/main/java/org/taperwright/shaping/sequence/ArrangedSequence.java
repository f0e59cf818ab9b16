package org.taperwright.shaping.sequence;

import java.util.ArrayList;
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
 * @param instruments one for each step, in the order of the steps; empty where the step uses none
 * @param alloys the alloys that the instruments' designs can name
 */
public record ArrangedSequence(
        Sequence sequence,
        Canal canal,
        Optional<Motor> motor,
        List<Optional<Instrument>> instruments,
        KnownAlloys alloys) {
    public ArrangedSequence {
        instruments = List.copyOf(instruments);
        if (instruments.size() != sequence.steps().size()) {
            throw new IllegalArgumentException("one instrument for each step");
        }
        for (int i = 0; i < instruments.size(); i++) {
            if (instruments.get(i).isPresent() != sequence.steps().get(i).uses().isPresent()) {
                throw new IllegalArgumentException("an instrument for each step that uses one");
            }
        }
    }

    /**
     * A step in which an instrument works.
     *
     * @param place the step's place from 0
     * @param step the work
     * @param instrument what works
     */
    public record Working(int place, InstrumentStep step, Instrument instrument) {
        /** Where a fault of it stands. */
        public String where() {
            return "steps[" + place + "]";
        }
    }

    /** The step at a place, counted from 0. */
    public Step step(int place) {
        return sequence.steps().get(place);
    }

    /** The work of a step; empty where no instrument works. */
    public Optional<Working> working(int place) {
        return instruments
                .get(place)
                .flatMap(instrument -> step(place)
                        .worked(canal.workingLengthMm(), instrument.design().motion())
                        .map(step -> new Working(place, step, instrument)));
    }

    /** All steps in which an instrument works, in order. */
    public List<Working> workings() {
        List<Working> workings = new ArrayList<>();
        for (int i = 0; i < instruments.size(); i++) {
            working(i).ifPresent(workings::add);
        }
        return workings;
    }

    /** How far a step's instrument or needle goes, mm from the coronal reference point. */
    public double depthMm(int place) {
        return step(place).depthMm(canal.workingLengthMm());
    }

    /** One whose instruments are of alloys that come with the program. */
    public ArrangedSequence(
            Sequence sequence, Canal canal, Optional<Motor> motor, List<Optional<Instrument>> instruments) {
        this(sequence, canal, motor, instruments, KnownAlloys.SHIPPED);
    }
}
