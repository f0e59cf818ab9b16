package org.taperwright.shaping.passage.remark;

import java.util.List;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;
import org.taperwright.shaping.passage.stroke.CanalOutcome;
import org.taperwright.shaping.passage.stroke.LeastDentine;
import org.taperwright.shaping.passage.stroke.ShapedSequence;
import org.taperwright.shaping.sequence.ArrangedSequence;

/** A canal that comes near to the root's surface, or breaks through it. */
public final class ThinDentine implements ShapedRule {
    /** Less than this is remarked, mm. */
    public static final double LEAST_MM = 0.3;

    @Override
    public String id() {
        return "thin-dentine";
    }

    @Override
    public String explanation() {
        return "At least " + Shown.mm(LEAST_MM) + " of dentine is left between canal and root.";
    }

    @Override
    public String source() {
        return "Lim, Stock, Int Endod J 1987;20:33 (from memory, low confidence)";
    }

    @Override
    public List<Fault> check(ArrangedSequence arranged, ShapedSequence shaped) {
        return shaped.canal().flatMap(CanalOutcome::leastDentine).stream()
                .filter(least -> least.thicknessMm() < LEAST_MM)
                .map(ThinDentine::fault)
                .toList();
    }

    private static Fault fault(LeastDentine least) {
        String where = Shown.mm(least.depthMm()) + " below the orifice";
        String what = least.thicknessMm() <= 0
                ? "the canal breaks through the root's outline " + where
                : "only " + Shown.mm(least.thicknessMm()) + " of dentine is left " + where + " (an estimate)";
        return Fault.unusual("canal.root", what, "widen less there; a root's outline is seldom known so well");
    }
}
