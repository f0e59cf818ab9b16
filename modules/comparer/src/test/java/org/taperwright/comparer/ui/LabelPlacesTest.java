package org.taperwright.comparer.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class LabelPlacesTest {
    private static final Rectangle2D FIGURE = new Rectangle2D.Double(0, 0, 420, 320);

    @RepeatedTest(200)
    void six_labels_cover_neither_each_other_nor_any_point_and_stay_inside(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        List<Point2D> points = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            points.add(new Point2D.Double(20 + random.nextDouble() * 380, 20 + random.nextDouble() * 280));
        }
        LabelPlaces places = new LabelPlaces(FIGURE, points, 9);
        List<Rectangle2D> labels =
                points.stream().map(point -> places.place(point, 150, 16)).toList();

        for (int i = 0; i < labels.size(); i++) {
            assertThat(FIGURE.contains(labels.get(i))).isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(labels.get(i).intersects(labels.get(j))).isFalse();
            }
            for (Point2D point : points) {
                assertThat(labels.get(i).contains(point)).isFalse();
            }
        }
    }

    @Test
    void labels_of_points_on_top_of_each_other_stand_apart() {
        List<Point2D> points = List.of(new Point2D.Double(200, 150), new Point2D.Double(200, 150));
        LabelPlaces places = new LabelPlaces(FIGURE, points, 9);

        Rectangle2D first = places.place(points.get(0), 120, 16);
        Rectangle2D second = places.place(points.get(1), 120, 16);

        assertThat(first.intersects(second)).isFalse();
    }
}
