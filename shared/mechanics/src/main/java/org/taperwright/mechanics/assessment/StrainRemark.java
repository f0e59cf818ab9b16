package org.taperwright.mechanics.assessment;

import java.util.Optional;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.quantity.Shown;
import org.taperwright.mechanics.work.Fault;

/**
 * The remark on a bending test whose greatest strain is beyond what the alloy is known to bear: its shear strain at
 * fracture as von Mises' equivalent strain, {@code gamma_f / sqrt 3}. The moment then stands for an unbroken instrument.
 */
final class StrainRemark {
    private StrainRemark() {}

    static Optional<Fault> on(BendingResult bending, Alloy alloy) {
        double most = alloy.constant(Fracture.SHEAR_STRAIN.name()) / Math.sqrt(3);
        return bending.greatestStrain() <= most
                ? Optional.empty()
                : Optional.of(Fault.unusual(
                        "taper",
                        "bent to 45° it would be strained by " + Shown.number(100 * bending.greatestStrain()) + " % at "
                                + Shown.mm(bending.strainLevelMm()) + " from the tip, and may break before",
                        "at most about " + Shown.number(100 * most) + " % for " + alloy.label()));
    }
}
