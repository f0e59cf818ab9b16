package org.taperwright.mechanics.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.taperwright.mechanics.work.Fault;

class CustomOutlineTest {
    private static final Outline SQUARE = Drawn.shape(Drawn.custom(1, -1, 1, 1, -1, 1, -1, -1));

    private static void mended(SectionShape shape, String what) {
        assertThat(Drawn.shape(shape)).isEqualTo(SQUARE);
        assertThat(Drawn.remarks(shape)).singleElement().satisfies(fault -> {
            assertThat(fault.weight()).isEqualTo(Fault.Weight.UNUSUAL);
            assertThat(fault.where()).isEqualTo("points");
            assertThat(fault.what()).isEqualTo(what);
        });
    }

    private static void refused(SectionShape shape, String where, String what) {
        assertThat(Drawn.faults(shape)).singleElement().satisfies(fault -> {
            assertThat(fault.weight()).isEqualTo(Fault.Weight.IMPOSSIBLE);
            assertThat(fault.where()).isEqualTo(where);
            assertThat(fault.what()).isEqualTo(what);
            assertThat(fault.expected()).isNotBlank();
        });
    }

    @Test
    void pointsAreScaledToTheCircleAboutTheAxis() {
        assertThat(SQUARE.segments().get(0).start().distanceTo(Point.polar(0.5, -Math.PI / 4)))
                .isLessThan(1e-15);
    }

    @Test
    void aClosingPointGivenTwiceIsLeftOut() {
        mended(Drawn.custom(1, -1, 1, 1, -1, 1, -1, -1, 1, -1), "the last point repeats the first");
    }

    @Test
    void repeatedPointsAreLeftOut() {
        mended(Drawn.custom(1, -1, 1, -1, 1, 1, -1, 1, -1, 1, -1, -1), "2 points repeat the one before");
    }

    @Test
    void aClockwiseRunIsTurnedRound() {
        SectionShape clockwise = Drawn.custom(-1, -1, -1, 1, 1, 1, 1, -1);
        assertThat(Drawn.shape(clockwise)).isEqualTo(SQUARE);
        assertThat(Drawn.remarks(clockwise)).extracting(Fault::what).containsExactly("the points run clockwise");
    }

    @Test
    void tooFewPointsAreRefused() {
        refused(Drawn.custom(), "points", "0 different points");
        refused(Drawn.custom(1, 0, -1, 0), "points", "2 different points");
        assertThat(Drawn.faults(Drawn.custom(1, 0, 1, 0, 1, 0, 1, 0)))
                .anyMatch(fault -> fault.what().equals("1 different points"));
    }

    @Test
    void tooManyPointsAreRefused() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < 10_001; i++) {
            points.add(Point.polar(1, i * 2 * Math.PI / 10_001));
        }
        refused(Drawn.custom(points), "points", "10001 points");
    }

    @Test
    void aCoordinateThatIsNoNumberIsNamed() {
        refused(
                Drawn.custom(1, -1, Double.NaN, 1, -1, 1),
                "points[1]",
                "the point has a coordinate that is no finite number");
    }

    @Test
    void anOutlineThatCrossesItselfIsRefusedAtTheCrossing() {
        refused(
                Drawn.custom(1, -1, 1, 1, -1, -0.5, -1, 0.5),
                "points",
                "the outline runs into itself near x = " + crossing() + " (in diameters)");
    }

    /** The sides (1, 1) to (-1, -0.5) and (-1, 0.5) to (1, -1) cross at (-1/3, 0), scaled by 0.5 / sqrt 2. */
    private static String crossing() {
        return "-" + Numbers.text(0.5 / Math.sqrt(2) / 3) + ", y = 0";
    }

    @Test
    void anOutlineThatRunsBackOnItselfIsRefused() {
        assertThat(Drawn.faults(Drawn.custom(1, -1, 1, 1, 0, 1, 0, 2, 0, 1, -1, 1, -1, -1)))
                .anyMatch(fault -> fault.what().startsWith("the outline runs into itself"));
    }

    @Test
    void anOutlineBesideTheAxisIsRefused() {
        refused(Drawn.custom(1, 1, 2, 1, 2, 2, 1, 2), "points", "the axis is outside the outline");
    }

    @Test
    void anOutlineWithoutACoreIsRefused() {
        refused(
                Drawn.custom(1, -0.001, 1, 0.001, -1, 0.001, -1, -0.001),
                "points",
                "the core is only 0.001 of the diameter");
    }

    @Test
    void pointsOfAnotherFamilyAreRemarkedAndNotUsed() {
        SectionShape shape = new SectionShape("square", Map.of(), 0, 0, List.of(new Point(7, 7)));
        assertThat(Drawn.shape(shape)).isEqualTo(Drawn.family("square"));
        assertThat(Drawn.remarks(shape))
                .extracting(Fault::what)
                .containsExactly("a section of the family \"square\" has points");
    }
}
