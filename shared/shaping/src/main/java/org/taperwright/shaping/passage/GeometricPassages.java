package org.taperwright.shaping.passage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.canal.CanalGeometry;
import org.taperwright.shaping.sequence.ArrangedSequence;
import org.taperwright.shaping.sequence.SequenceRules;

/**
 * What each step of a sequence does by geometry alone: every instrument stands centred in the canal, its axis on the
 * centreline, so a level x of a tip at depth s stands at depth {@code s - x}. Nothing bends, wears or wanders; the result
 * says where a step is wider than what was there, not what it will remove. Standing: computed.
 */
public final class GeometricPassages {
    private GeometricPassages() {}

    /** The steps' geometry and what the rules remark; no step is computed in an impossible canal. */
    public static GeometricPassage of(ArrangedSequence arranged) {
        List<Fault> remarks = new ArrayList<>();
        for (Fault fault : CanalGeometry.check(arranged.canal())) {
            remarks.add(new Fault(fault.weight(), "canal." + fault.where(), fault.what(), fault.expected()));
        }
        remarks.addAll(SequenceRules.check(arranged));
        return new GeometricPassage(steps(arranged), remarks);
    }

    /** The steps' geometry alone, one for each step, empty where no instrument works; none in an impossible canal. */
    public static List<Optional<StepGeometry>> steps(ArrangedSequence arranged) {
        if (!CanalGeometry.possible(arranged.canal())) {
            return List.of();
        }
        CanalGeometry canal = new CanalGeometry(arranged.canal());
        List<Silhouette> before = new ArrayList<>();
        List<Optional<StepGeometry>> steps = new ArrayList<>();
        for (int i = 0; i < arranged.instruments().size(); i++) {
            Optional<Silhouette> silhouette = arranged.working(i)
                    .map(working -> new Silhouette(
                            working.instrument().design(),
                            canal.depthOfMm(working.step().depthMm())));
            steps.add(silhouette.map(each -> new Widening(canal, before, each).geometry()));
            silhouette.ifPresent(before::add);
        }
        return steps;
    }
}
