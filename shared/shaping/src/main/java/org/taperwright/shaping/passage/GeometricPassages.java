package org.taperwright.shaping.passage;

import java.util.ArrayList;
import java.util.List;
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

    /** The steps' geometry alone, one for each step; empty in an impossible canal. */
    public static List<StepGeometry> steps(ArrangedSequence arranged) {
        if (!CanalGeometry.possible(arranged.canal())) {
            return List.of();
        }
        CanalGeometry canal = new CanalGeometry(arranged.canal());
        List<Silhouette> before = new ArrayList<>();
        List<StepGeometry> steps = new ArrayList<>();
        for (int i = 0; i < arranged.instruments().size(); i++) {
            double tipDepth = canal.depthOfMm(arranged.sequence().steps().get(i).depthMm());
            Silhouette silhouette = new Silhouette(arranged.instruments().get(i).design(), tipDepth);
            steps.add(new Widening(canal, before, silhouette).geometry());
            before.add(silhouette);
        }
        return steps;
    }
}
