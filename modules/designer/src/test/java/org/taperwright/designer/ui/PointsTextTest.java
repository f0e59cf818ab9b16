package org.taperwright.designer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.taperwright.mechanics.section.Point;

class PointsTextTest {
    private static final PointsText.Points TRIANGLE =
            new PointsText.Points(List.of(new Point(0, 1), new Point(-0.5, -1), new Point(0.5, -1)));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0,1\n-0.5,-1\n0.5,-1",
                "x,y\r\n0, 1\r\n-0.5, -1\r\n0.5, -1\r\n",
                "# traced\n0;1\n\n-0.5;-1\n0.5;-1",
                "0\t1\n-0.5\t-1\n0.5\t-1\n0\t1",
                "0 1\n-0.5 -1\n0.5   -1"
            })
    void points_are_read_with_any_usual_separator_heading_or_closing_point(String text) {
        assertThat(PointsText.read(text)).isEqualTo(TRIANGLE);
    }

    @Test
    void a_line_that_is_no_point_is_named_with_its_number() {
        assertThat(PointsText.read("0,1\n-0.5,-1\n0.5;up"))
                .isEqualTo(new PointsText.Refused("Line 3: \u201c0.5;up\u201d is not a point; expected two numbers,"
                        + " x and y, with a comma between."));
    }

    @Test
    void too_few_points_are_refused() {
        assertThat(PointsText.read("0,1\n1,1"))
                .isEqualTo(new PointsText.Refused("Only 2 points; an outline needs at least 3."));
    }

    @Test
    void numbers_that_are_not_finite_are_no_points() {
        assertThat(PointsText.read("0,1\nNaN,2\n3,4\n5,6")).isInstanceOf(PointsText.Refused.class);
    }
}
