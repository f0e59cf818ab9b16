package org.taperwright.mechanics.assessment;

import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.SpaceBending;
import org.taperwright.mechanics.bench.Unsolved;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * The remark on a blade of unequal stiffness that turns so seldom that its bending test depends on how it is clamped;
 * the moment of the test is then a mean.
 */
final class ClampRemark {
    private ClampRemark() {}

    static Optional<Fault> on(Design design, Alloy alloy, BladeSections sections) {
        if (!SpaceBending.matters(design, sections)) {
            return Optional.empty();
        }
        return Optional.of(Fault.unusual(
                "flutes[0].flutesPerMm",
                "the section is stiffer one way than the other and turns seldom over the bent length, so the moment at 45° "
                        + "depends on how the blade is clamped: " + range(design, alloy, sections),
                "three turns or more between 3 mm and the end of the working part; what is shown is the mean"));
    }

    private static String range(Design design, Alloy alloy, BladeSections sections) {
        try {
            double[] spread = SpaceBending.spread(design, alloy, sections);
            return Shown.percent(spread[0]) + " to " + Shown.percent(spread[1]) + " of the mean in the elastic range";
        } catch (Unsolved unsolved) {
            return "by how much is not known, " + unsolved.getMessage();
        }
    }
}
