package org.taperwright.mechanics.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.bench.BenchDesigns;
import org.taperwright.mechanics.bench.BendingResult;
import org.taperwright.mechanics.bench.BendingTest;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

class StrainRemarkTest {
    private final Alloy steel = Alloys.find("stainless-steel").orElseThrow();

    @Test
    void steelStrainedByMoreThanItBearsIsSaidToBreakBefore45Degrees() {
        assertThat(StrainRemark.on(strained(0.6), steel)).hasValueSatisfying(remark -> {
            assertThat(remark.where()).isEqualTo("taper");
            assertThat(remark.what()).contains("bent to 45", "may break before");
            assertThat(remark.expected()).contains(steel.label());
        });
    }

    @Test
    void anOrdinaryFileBearsTheTest() {
        assertThat(StrainRemark.on(bent(0.25, 0.02), steel)).isEmpty();
    }

    /** Shear strain 1.0 at fracture is an equivalent strain of 0.577. */
    private BendingResult strained(double strain) {
        BendingResult bent = bent(0.8, 0.08);
        return new BendingResult(
                bent.momentNmm(),
                bent.forceN(),
                bent.endSlopeDeg(),
                strain,
                bent.strainLevelMm(),
                bent.setDeg(),
                bent.curve(),
                bent.limit());
    }

    private BendingResult bent(double tipMm, double taper) {
        Design design = BenchDesigns.of("square", tipMm, taper);
        return BendingTest.run(design, steel, BladeSections.of(design));
    }
}
