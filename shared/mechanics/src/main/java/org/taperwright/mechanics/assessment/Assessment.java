package org.taperwright.mechanics.assessment;

import java.util.List;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.TwistingResult;
import org.taperwright.mechanics.bench.spread.BendingSpread;
import org.taperwright.mechanics.bench.spread.TwistingSpread;
import org.taperwright.mechanics.cutting.CuttingGeometry;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.fatigue.FatigueResult;
import org.taperwright.mechanics.properties.BladeProfile;
import org.taperwright.mechanics.work.Fault;

/**
 * Everything computed of one design, with the design it came from.
 *
 * @param design the input
 * @param alloy the alloy it names
 * @param remarks unusual but possible things
 * @param stations the sections by station, with properties and edges, in the design's order
 * @param profile along the blade
 * @param bending the bending test
 * @param twisting the twisting test
 * @param cutting the edges at work
 * @param fatigue turning in the usual tube
 */
public record Assessment(
        Design design,
        Alloy alloy,
        List<Fault> remarks,
        List<AssessedSection> stations,
        BladeProfile profile,
        BendingResult bending,
        TwistingResult twisting,
        CuttingGeometry cutting,
        FatigueResult fatigue) {
    public Assessment {
        remarks = List.copyOf(remarks);
        stations = List.copyOf(stations);
    }

    /** The bending test with the alloy's constants drawn; solved on first asking, some 30 ms, and kept for a while. */
    public BendingSpread bendingSpread() {
        return BendingSpread.of(design, alloy, bending);
    }

    /** The twisting test with the alloy's constants drawn; solved on first asking and kept for a while. */
    public TwistingSpread twistingSpread() {
        return TwistingSpread.of(design, alloy, twisting);
    }
}
