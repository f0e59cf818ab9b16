package org.taperwright.shaping.passage.stroke;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.KnownAlloys;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.DesignChecks;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.Canal;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence.Working;
import org.taperwright.shaping.sequence.Sequence;
import org.taperwright.shaping.sequence.Sequences;

/**
 * A sequence whose instruments have been made ready to work: what the same steps need only once, whatever the canal and the constants.
 *
 * @param arranged the sequence
 * @param alloys the alloy of each step's instrument; empty where none works or the step cannot be made
 * @param instruments the instrument of each step; likewise
 * @param faults why; where is "steps[i].field"
 */
public record PreparedSequence(
        ArrangedSequence arranged,
        List<Optional<Alloy>> alloys,
        List<Optional<WorkingInstrument>> instruments,
        List<Fault> faults) {
    public PreparedSequence {
        alloys = List.copyOf(alloys);
        instruments = List.copyOf(instruments);
        faults = List.copyOf(faults);
    }

    /** What an instrument is made ready from: the same serves every step that uses it so. */
    private record Made(Design design, Motion motion) {}

    /** Makes the instruments of a sequence ready. */
    public static PreparedSequence of(ArrangedSequence arranged) {
        List<Optional<Alloy>> alloys = new ArrayList<>();
        List<Optional<WorkingInstrument>> instruments = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        Map<Made, WorkingInstrument> made = new HashMap<>();
        for (int i = 0; i < arranged.instruments().size(); i++) {
            Optional<Working> working = arranged.working(i);
            if (working.isEmpty()) {
                alloys.add(Optional.empty());
                instruments.add(Optional.empty());
                continue;
            }
            Design design = working.get().instrument().design();
            List<Fault> found = impossible(i, design, arranged.alloys());
            faults.addAll(found);
            Optional<Alloy> alloy = found.isEmpty() ? arranged.alloys().find(design.alloy()) : Optional.empty();
            alloys.add(alloy);
            instruments.add(alloy.map(of -> made.computeIfAbsent(
                    new Made(design, working.get().step().motion()),
                    each -> WorkingInstruments.of(each.design(), of, each.motion()))));
        }
        return new PreparedSequence(arranged, alloys, instruments, faults);
    }

    /** The same with other instruments in the steps. */
    public PreparedSequence with(List<Optional<WorkingInstrument>> others) {
        return new PreparedSequence(arranged, alloys, others, faults);
    }

    /** The same in another canal, each step as far from the end of instrumentation as it was. */
    public PreparedSequence in(Canal canal) {
        double further = canal.workingLengthMm() - arranged.canal().workingLengthMm();
        Sequence sequence = Sequences.deeper(arranged.sequence(), further);
        return new PreparedSequence(
                new ArrangedSequence(sequence, canal, arranged.motor(), arranged.instruments(), arranged.alloys()),
                alloys,
                instruments,
                faults);
    }

    /** A fault as one of a step. */
    static Fault in(int index, Fault fault) {
        return new Fault(fault.weight(), "steps[" + index + "]." + fault.where(), fault.what(), fault.expected());
    }

    private static List<Fault> impossible(int index, Design design, KnownAlloys alloys) {
        List<Fault> found = DesignChecks.check(design, alloys).stream()
                .filter(fault -> fault.weight() == Fault.Weight.IMPOSSIBLE)
                .toList();
        found = found.isEmpty() ? BladeSections.faults(design) : found;
        return found.stream()
                .map(fault -> in(
                        index, Fault.impossible("instrument.design." + fault.where(), fault.what(), fault.expected())))
                .toList();
    }
}
