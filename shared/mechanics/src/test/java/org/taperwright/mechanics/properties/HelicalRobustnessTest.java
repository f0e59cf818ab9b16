package org.taperwright.mechanics.properties;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.taperwright.mechanics.properties.helix.HelicalAnalysis;
import org.taperwright.mechanics.properties.helix.HelicalFactors;
import org.taperwright.mechanics.section.Outline;

/** Whatever the section, its factors are numbers within what energy allows. */
class HelicalRobustnessTest {
    @Provide
    Arbitrary<Outline> families() {
        return SomeSections.ofFamilies();
    }

    @Provide
    Arbitrary<Outline> points() {
        return SomeSections.ofPoints();
    }

    @Property(tries = 40)
    void everyFamilysFactorsAreBounded(@ForAll("families") Outline outline) {
        hold(outline);
    }

    @Property(tries = 20)
    void everyOutlineOfPointsFactorsAreBounded(@ForAll("points") Outline outline) {
        hold(outline);
    }

    /**
     * Bars that lie off the axis are coils, softer both ways than a bar on it, so the lower bounds are wide; the upper one
     * on bending is by plane sections that turn as one, with what is held of their thinning.
     */
    private static void hold(Outline outline) {
        if (SectionAnalysis.fault(outline).isPresent()) {
            return;
        }
        SectionProperties section = SectionAnalysis.of(outline);
        HelicalFactors factors = HelicalAnalysis.of(outline, 0.3);
        double most = section.polar() / 2 / section.iMean() * 1.35;
        for (double t : new double[] {0, 0.05, 0.4, 1, 1.7, 2.6, 3.5, 4, 7}) {
            assertThat(factors.bending(t)).as("bending at %s", t).isBetween(0.01, most);
            assertThat(factors.torsion(t)).as("torsion at %s", t).isBetween(0.05, 1e5);
        }
    }
}
