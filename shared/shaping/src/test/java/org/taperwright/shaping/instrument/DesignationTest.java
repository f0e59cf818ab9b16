package org.taperwright.shaping.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.taperwright.mechanics.design.Design;
import org.taperwright.mechanics.design.Motion;
import org.taperwright.mechanics.design.SizeColour;
import org.taperwright.mechanics.design.TaperSegment;
import org.taperwright.shaping.Given;
import org.taperwright.shaping.instrument.Designation.TaperCourse;

class DesignationTest {
    @ParameterizedTest
    @CsvSource({
        "6,0.02,06/.02",
        "25,0.04,25/.04",
        "30,0.1,30/.10",
        "20,0.025,20/.025",
        "110,0,110/.00",
        "40,-0.01,40/-.01"
    })
    void sizeAndTaperAreWrittenAsTheTradeDoes(int size, double taper, String text) {
        assertThat(Designation.of(Given.hand(size, taper)).text()).isEqualTo(text);
    }

    /** ISO 3630-1 colours, from memory with high confidence: 06 pink, 25 red, 100 yellow. */
    @Test
    void theColourIsTheStandards() {
        assertThat(Designation.of(Given.hand(6, 0.02)).colour()).contains(SizeColour.PINK);
        assertThat(Designation.of(Given.hand(25, 0.06)).colour()).contains(SizeColour.RED);
        assertThat(Designation.of(Given.hand(100, 0.02)).colour()).contains(SizeColour.YELLOW);
    }

    @Test
    void aSizeOutsideTheSeriesHasNoColour() {
        assertThat(Designation.of(Given.hand(17, 0.02)).colour()).isEmpty();
    }

    @Test
    void theCourseOfTheTaperIsSaid() {
        assertThat(course(0.04, 0.04)).isEqualTo(TaperCourse.CONSTANT);
        assertThat(course(0.02, 0.04, 0.06)).isEqualTo(TaperCourse.RISING);
        assertThat(course(0.08, 0.05)).isEqualTo(TaperCourse.FALLING);
        assertThat(course(0.04, 0.06, 0.02)).isEqualTo(TaperCourse.VARYING);
    }

    private static TaperCourse course(double... tapers) {
        List<TaperSegment> segments = new java.util.ArrayList<>();
        for (double taper : tapers) {
            segments.add(new TaperSegment(segments.size() * 4.0, segments.size() * 4.0 + 4, taper));
        }
        Design plain = Given.design(25, 0.02, 75, Motion.ROTATION);
        return Designation.of(new Design(
                        plain.name(),
                        plain.note(),
                        plain.tipDiameterMm(),
                        segments,
                        plain.shaftDiameterMm(),
                        plain.lengthMm(),
                        plain.sections(),
                        plain.flutes(),
                        plain.hand(),
                        plain.tip(),
                        plain.alloy(),
                        plain.making(),
                        plain.motion()))
                .course();
    }
}
