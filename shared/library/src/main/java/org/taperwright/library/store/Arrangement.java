package org.taperwright.library.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.instrument.Instrument;
import org.taperwright.shaping.instrument.Motor;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Step;

/**
 * A sequence with what it refers to as the library stands.
 *
 * @param sequence the sequence
 * @param canal its canal, absent when none is chosen or it is no longer in the library
 * @param motor its motor, likewise
 * @param instruments one for each step, absent when it uses none or it is no longer in the library
 * @param alloys the alloys that their designs can name
 */
public record Arrangement(
        Sequence sequence,
        Optional<Canal> canal,
        Optional<Motor> motor,
        List<Optional<Instrument>> instruments,
        KnownAlloys alloys) {
    public Arrangement {
        instruments = List.copyOf(instruments);
    }

    /** Looks everything up. */
    public static Arrangement of(Sequence sequence, Snapshot snapshot) {
        return new Arrangement(
                sequence,
                sequence.canal().flatMap(id -> snapshot.thing(id, Canal.class)),
                sequence.motor().flatMap(id -> snapshot.thing(id, Motor.class)),
                sequence.steps().stream()
                        .map(step -> step.uses().flatMap(id -> snapshot.thing(id, Instrument.class)))
                        .toList(),
                snapshot.alloys());
    }

    /** The indices of the steps that use no instrument, or whose instrument is at hand. */
    public List<Integer> complete() {
        List<Integer> complete = new ArrayList<>();
        for (int i = 0; i < instruments.size(); i++) {
            if (instruments.get(i).isPresent() || sequence.steps().get(i).uses().isEmpty()) {
                complete.add(i);
            }
        }
        return complete;
    }

    /** The {@link #complete} steps in the canal, absent without a canal. */
    public Optional<ArrangedSequence> arranged() {
        return canal.map(tried -> {
            List<Step> steps =
                    complete().stream().map(i -> sequence.steps().get(i)).toList();
            List<Optional<Instrument>> found =
                    complete().stream().map(instruments::get).toList();
            Sequence kept = new Sequence(sequence.name(), sequence.canal(), sequence.motor(), steps, sequence.note());
            return new ArrangedSequence(kept, tried, motor, found, alloys);
        });
    }
}
