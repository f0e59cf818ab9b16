package org.taperwright.mechanics.measured;

import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.bench.TwistingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

/** A bench test of a design in an alloy, asked at any angles. */
interface ComputedCurve {
    /** Moments or torques in N mm at rising angles in degrees. */
    double[] at(double[] anglesDeg);

    static ComputedCurve of(BenchCurve test, Design design, Alloy alloy, BladeSections sections) {
        return switch (test) {
            case BENDING -> angles -> BendingTest.momentsNmm(design, alloy, sections, angles);
            case TWISTING -> angles -> TwistingTest.torquesNmm(design, alloy, sections, angles);
        };
    }
}
