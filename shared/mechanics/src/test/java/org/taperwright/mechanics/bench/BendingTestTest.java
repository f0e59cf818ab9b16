package org.taperwright.mechanics.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.alloy.Alloy;
import org.taperwright.mechanics.alloy.Alloys;
import org.taperwright.mechanics.alloy.Fracture;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.properties.BladeSections;

class BendingTestTest {
    private static BendingResult bent(String family, double tip, double taper, String alloy) {
        Design design = BenchDesigns.of(family, tip, taper);
        Alloy known = Alloys.find(alloy).orElseThrow();
        return BendingTest.run(design, known, BladeSections.of(design));
    }

    /** By von Mises' comparison with twisting: files of the standard's taper do not come near fracture at the clamp. */
    @ParameterizedTest
    @ValueSource(strings = {"stainless-steel", "carbon-steel"})
    void aSteelFileOfTheStandardsTaperIsStrainedByFarLessThanWhatBreaksItInTwisting(String alloy) {
        double breaks = Alloys.find(alloy).orElseThrow().constant(Fracture.SHEAR_STRAIN.name()) / Math.sqrt(3);
        for (double tip : new double[] {0.15, 0.25, 0.40}) {
            for (String family : new String[] {"square", "triangle"}) {
                assertThat(bent(family, tip, 0.02, alloy).greatestStrain())
                        .as("%s, size %s", family, tip)
                        .isBetween(0.01, 0.65 * breaks);
            }
        }
    }

    /** Camps and Pertot, Int Endod J 1995;28:239 (abstract read): no lasting bend in NiTi; steel keeps some. */
    @Test
    void steelKeepsABendAndSuperelasticAlloysDoNot() {
        assertThat(bent("square", 0.25, 0.02, "niti-superelastic").setDeg()).isEmpty();
        assertThat(bent("square", 0.25, 0.02, "stainless-steel").setDeg().orElseThrow())
                .isBetween(1.0, 44.0);
    }

    @Test
    void theMomentRisesWithTheAngle() {
        BendingResult result = bent("square", 0.30, 0.04, "niti-superelastic");
        for (int i = 1; i < result.curve().size(); i++) {
            assertThat(result.curve().get(i).momentNmm())
                    .isGreaterThan(result.curve().get(i - 1).momentNmm());
        }
    }
}
