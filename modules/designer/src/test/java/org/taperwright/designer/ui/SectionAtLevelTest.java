package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class SectionAtLevelTest {
    @Test
    void a_squares_core_reaches_to_the_middle_of_its_sides() {
        SectionAtLevel square = SectionAtLevel.of(SampleDesigns.file(), 3).orElseThrow();

        // Closed form: the sides of a square inscribed in a circle of radius 1/2 are sqrt(2)/4 from its centre.
        assertThat(square.coreRadius()).isCloseTo(Math.sqrt(2) / 4, Offset.offset(1e-12));
        assertThat(square.diameterMm()).isCloseTo(0.25 + 3 * 0.02, Offset.offset(1e-12));
        assertThat(square.edges()).hasSize(4);
    }

    @Test
    void a_squares_rake_and_clearance_are_45_degrees_by_geometry() {
        SectionAtLevel square = SectionAtLevel.of(SampleDesigns.file(), 3).orElseThrow();

        // Closed form: a square's sides stand at 45 degrees to the radius through its corner.
        assertThat(square.edges()).allSatisfy(edge -> {
            assertThat(edge.rakeDeg()).isCloseTo(-45, Offset.offset(0.01));
            assertThat(edge.clearanceDeg()).isCloseTo(45, Offset.offset(0.01));
        });
    }
}
