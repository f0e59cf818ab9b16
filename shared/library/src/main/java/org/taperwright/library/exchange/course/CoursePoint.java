package org.taperwright.library.exchange.course;

import java.util.Map;
import java.util.Optional;
import org.taperwright.library.exchange.json.Place;
import org.taperwright.shaping.canal.Opening;
import org.taperwright.shaping.canal.RootOutline;
import org.taperwright.shaping.canal.Vector;

/** A row of a canal's table: where it stands in the file, and its numbers, mm and degrees. */
record CoursePoint(Place place, Map<CourseColumn, Double> values) {
    Vector point() {
        return new Vector(of(CourseColumn.X), of(CourseColumn.Y), values.getOrDefault(CourseColumn.Z, 0.0));
    }

    private double of(CourseColumn column) {
        return values.getOrDefault(column, Double.NaN);
    }

    /** The opening that the row gives, if it gives one; a greater diameter alone is that of a circle. */
    Optional<Opening> opening(double depthMm) {
        Optional<Double> wide = Optional.ofNullable(values.get(CourseColumn.WIDE))
                .or(() -> Optional.ofNullable(values.get(CourseColumn.DIAMETER)));
        return wide.map(there -> new Opening(
                depthMm,
                there,
                values.getOrDefault(CourseColumn.NARROW, there),
                values.getOrDefault(CourseColumn.AZIMUTH, 0.0)));
    }

    /** The root's outline that the row gives, if it gives one. */
    Optional<RootOutline> root(double depthMm) {
        return Optional.ofNullable(values.get(CourseColumn.ROOT_WIDE))
                .map(there -> new RootOutline(
                        depthMm,
                        there,
                        values.getOrDefault(CourseColumn.ROOT_NARROW, there),
                        values.getOrDefault(CourseColumn.ROOT_AZIMUTH, 0.0)));
    }
}
